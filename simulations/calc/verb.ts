import type { Reading } from '../input/fault.ts';

/** A verb turns parsed JSON into an answer, or into the faults found. */
export type Verb = (input: unknown) => Reading<unknown>;
