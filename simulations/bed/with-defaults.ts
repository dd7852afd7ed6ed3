const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** What was given over what is usual; each usual value that was used is noted by its path. */
export function withDefaults<T extends object>(
  usual: T,
  given: object,
  path: string,
  assumed: Record<string, unknown>,
): T {
  const values = given as Record<string, unknown>;
  const whole: Record<string, unknown> = { ...values };
  for (const [name, value] of Object.entries(usual)) {
    const here = path === '' ? name : `${path}.${name}`;
    const own = values[name];
    if (isRecord(value)) whole[name] = withDefaults(value, isRecord(own) ? own : {}, here, assumed);
    else if (own === undefined) {
      whole[name] = value;
      assumed[here] = value;
    }
  }
  return whole as T;
}
