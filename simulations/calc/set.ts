import { performance } from 'node:perf_hooks';

import { readSetup } from '../bed/read-setup.ts';
import { runBed } from '../bed/run.ts';
import { mortarWords } from '../rules/mortar-words.ts';
import type { Verb } from './verb.ts';

/** Combs, sets and pulls one tile with the bed solver. */
export const set: Verb = (input) => {
  const reading = readSetup(input, mortarWords());
  if (!reading.ok) return reading;
  const start = performance.now();
  const { result } = runBed(reading.value.setup);
  const elapsedMs = Math.round(performance.now() - start);
  return { ok: true, value: { ...result, elapsedMs, assumed: reading.value.assumed } };
};
