import * as z from 'zod/mini';

/** A number in a closed range; `unit` is the word after the range in the refusal ("mm", "N", …; empty for none). */
export function numberFrom(least: number, most: number, unit = '') {
  const error = `give a number from ${least} to ${most}${unit === '' ? '' : ` ${unit}`}`;
  return z.number({ error }).check(z.gte(least, { error }), z.lte(most, { error }));
}

/** A whole number in a closed range. */
export function wholeFrom(least: number, most: number) {
  const error = `give a whole number from ${least} to ${most}`;
  return z.int({ error }).check(z.gte(least, { error }), z.lte(most, { error }));
}

/** One word of a closed list. */
export function oneOf<const T extends readonly [string, ...string[]]>(words: T) {
  return z.enum(words, { error: `accepted are ${words.join(', ')}` });
}

/** Text of a bounded length. */
export function textUpTo(most: number) {
  const error = `give text of at most ${most} characters`;
  return z.string({ error }).check(z.maxLength(most, { error }));
}

/** True or false. */
export const yesOrNo = () => z.boolean({ error: 'give true or false' });

/** A list with a bounded count. */
export function listOf<T extends z.ZodMiniType>(item: T, least: number, most: number) {
  const error = `give a list of ${least} to ${most}`;
  return z.array(item, { error }).check(z.minLength(least, { error }), z.maxLength(most, { error }));
}
