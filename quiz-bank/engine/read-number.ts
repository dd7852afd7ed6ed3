/** What a typed number turned out to be, or why it can't be read. */
export type NumberReading = { ok: true; value: number; unit: string | null } | { ok: false; sentence: string };

const refuse = (sentence: string): NumberReading => ({ ok: false, sentence });

/**
 * Reads a number as people type it: `12.5`, `12,5`, `1 1/2`, `1-1/2`, `85 %`, `3 mm`. A comma followed by three digits
 * could be a thousand or a decimal, so it is refused rather than guessed.
 */
export function readNumber(text: string): NumberReading {
  const match = /^\s*([^a-z%°"×²³]*?)\s*([a-z%°"×²³ ]*)\s*$/i.exec(text);
  const digits = match?.[1]?.trim() ?? '';
  const unit = match?.[2]?.trim().toLowerCase() ?? '';
  if (digits === '') return refuse('no number is written');
  if (/^-/.test(digits)) return refuse('it is below nought');
  if (/^\d{1,3}[.,]\d{3}$/.test(digits) && digits.includes(','))
    return refuse(`"${digits}" can be a thousand or a decimal; leave the comma out, or write a point`);
  const mixed = /^(?:(\d+)[ -]+)?(\d+)\s*\/\s*(\d+)$/.exec(digits);
  if (mixed) {
    const below = Number(mixed[3]);
    if (below === 0) return refuse('a fraction over nought is no number');
    return { ok: true, value: Number(mixed[1] ?? 0) + Number(mixed[2]) / below, unit: unit || null };
  }
  if (!/^(\d+([.,]\d*)?|[.,]\d+)$/.test(digits)) return refuse(`"${text.trim().slice(0, 30)}" is not a number`);
  const value = Number(digits.replace(',', '.'));
  return value > 1e9 ? refuse('the number is beyond anything in this work') : { ok: true, value, unit: unit || null };
}
