/** A number read from what a person typed, or why it could not be. */
export type NumberReading = { ok: true; value: number } | { ok: false; why: 'no-number' | 'comma' };

const refused = (why: 'no-number' | 'comma'): NumberReading => ({ ok: false, why });

/**
 * Reads `12`, `12.5`, `12,5`, `1/3`, `1 1/2`. A comma before exactly three figures is refused, because half the world
 * reads `1,200` as twelve hundred and the other half as one and a fifth.
 */
export function readNumber(text: string): NumberReading {
  const trimmed = text.trim();
  if (/^[+-]?\d{1,3}(,\d{3})+(\.\d+)?$/.test(trimmed)) return refused('comma');
  const mixed = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(trimmed);
  if (mixed) {
    const below = Number(mixed[3]);
    return below === 0 ? refused('no-number') : { ok: true, value: Number(mixed[1] ?? 0) + Number(mixed[2]) / below };
  }
  if (!/^[+-]?(\d+([.,]\d*)?|[.,]\d+)$/.test(trimmed)) return refused('no-number');
  return { ok: true, value: Number(trimmed.replace(',', '.')) };
}
