import { judgePull, readPull } from '../judge/judge.ts';
import type { Verb } from './verb.ts';

/** `calc judge`: what was found on lifted tiles in, pass or fail out, with each limit and the likely causes. */
export const judgeVerb: Verb = (input) => {
  const reading = readPull(input);
  if (!reading.ok) return reading;
  return { ok: true, value: judgePull(reading.value.pull, {}, reading.value.assumed) };
};
