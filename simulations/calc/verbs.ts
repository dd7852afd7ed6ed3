import type { Verb } from './verb.ts';

/** Each verb is loaded only when it is asked for. */
export const verbs: Record<string, () => Promise<Verb>> = {
  set: async () => (await import('./set.ts')).set,
  plan: async () => (await import('./plan.ts')).planVerb,
  judge: async () => (await import('./judge.ts')).judgeVerb,
  round: async () => (await import('./round.ts')).round,
  mark: async () => (await import('./mark.ts')).mark,
};
