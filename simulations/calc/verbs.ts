import type { Reading } from '../input/fault.ts';

/** A verb turns parsed JSON into an answer, or into the faults found. */
export type Verb = (input: unknown) => Reading<unknown>;

/** Each verb is loaded only when it is asked for. */
export const verbs: Record<string, () => Promise<Verb>> = {
  set: async () => (await import('./set.ts')).set,
  plan: async () => (await import('./plan.ts')).planVerb,
};
