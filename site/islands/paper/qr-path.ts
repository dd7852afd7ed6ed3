import { encode } from 'uqr';

/** A square code as one path of unit squares, quiet zone included. */
export interface QrPath {
  readonly size: number;
  readonly d: string;
}

/** The square code of a text. @throws RangeError when the text is longer than a code holds */
export function qrPath(text: string): QrPath {
  const { data, size } = encode(text, { ecc: 'M', border: 4 });
  const squares: string[] = [];
  data.forEach((row, y) => row.forEach((dark, x) => dark && squares.push(`M${x} ${y}h1v1h-1z`)));
  return { size, d: squares.join('') };
}
