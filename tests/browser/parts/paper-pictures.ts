import { inflateSync } from 'node:zlib';

/** A picture inside a PDF. */
export interface PaperPicture {
  width: number;
  height: number;
  /** How many different values its bytes have: one for a blank picture. */
  tones: number;
}

/** Pages of a PDF by its page objects (ISO 32000-1, 7.7.3.3). */
export const pagesOf = (paper: Buffer): number => paper.toString('latin1').match(/\/Type\s*\/Page[^s]/g)?.length ?? 0;

/** The colour pictures of a PDF that are packed without loss (ISO 32000-1, 8.9.5 and 7.4.4), masks left out. */
export function picturesOf(paper: Buffer): PaperPicture[] {
  const text = paper.toString('latin1');
  const found: PaperPicture[] = [];
  for (const { 1: head = '', index } of text.matchAll(
    /<<((?:(?!>>)[\s\S])*\/Subtype\s*\/Image(?:(?!>>)[\s\S])*)>>\s*stream/g,
  )) {
    const number = (name: string): number => Number(new RegExp(`/${name}\\s+(\\d+)`).exec(head)?.[1] ?? 0);
    if (!head.includes('/FlateDecode') || head.includes('/DeviceGray')) continue;
    const from = text.indexOf('stream', index) + 'stream'.length;
    const begin = text[from] === '\r' ? from + 2 : from + 1;
    const bytes = inflateSync(paper.subarray(begin, begin + number('Length')));
    found.push({ width: number('Width'), height: number('Height'), tones: new Set(bytes).size });
  }
  return found;
}
