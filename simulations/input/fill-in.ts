const isPlain = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * Fills what was not given from the defaults and notes each default taken, by path. A default of null ("not known")
 * is filled in without a note: nothing was assumed by it.
 */
export function fillIn<T extends object>(
  given: object,
  defaults: T,
  path: string,
  assumed: Record<string, unknown>,
): T {
  const from = given as Record<string, unknown>;
  const filled: Record<string, unknown> = { ...from };
  for (const [name, preset] of Object.entries(defaults as Record<string, unknown>)) {
    const at = path === '' ? name : `${path}.${name}`;
    const value = from[name];
    if (isPlain(preset)) filled[name] = fillIn(isPlain(value) ? value : {}, preset, at, assumed);
    else if (value === undefined) {
      filled[name] = preset;
      if (preset !== null) assumed[at] = preset;
    }
  }
  return filled as T;
}
