import { type core, safeParse } from 'zod/mini';

import { faultsOf, type Reading } from './fault.ts';

/** Reads a value by a schema; every fault is named by field, with what was wrong and what is accepted. */
export function read<S extends core.$ZodType>(schema: S, input: unknown): Reading<core.output<S>> {
  const result = safeParse(schema, input);
  return result.success
    ? { ok: true, value: result.data }
    : { ok: false, faults: faultsOf(result.error.issues, input) };
}

/** Reads a JSON text by a schema; null where it is no JSON or not what the schema tells. */
export function readText<S extends core.$ZodType>(schema: S, text: string): core.output<S> | null {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return null;
  }
  const reading = read(schema, value);
  return reading.ok ? reading.value : null;
}
