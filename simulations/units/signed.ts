const MINUS = '−';

/**
 * A number printed with the sign of arithmetic, which is as wide as a figure and no hyphen; what prints as nothing has
 * no sign.
 * @param print prints the size, zero or more
 */
export function signed(value: number, print: (size: number) => string): string {
  const text = print(Math.abs(value));
  return value < 0 && /[1-9]/.test(text) ? `${MINUS}${text}` : text;
}
