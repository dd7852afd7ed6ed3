import { readJob } from '../estimate/job.ts';
import { planJob } from '../estimate/plan.ts';
import type { Verb } from './verb.ts';

/** `calc plan`: a job in, its sheet out. The draws themselves are for pictures and stay out of the text. */
export const planVerb: Verb = (input) => {
  const reading = readJob(input);
  if (!reading.ok) return reading;
  const plan = planJob(reading.value.job, {}, reading.value.assumed);
  return {
    ok: true,
    value: {
      ...plan,
      areas: plan.areas.map((area) => ({ ...area, predicted: { ...area.predicted, sorted: undefined } })),
    },
  };
};
