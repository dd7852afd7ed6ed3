import type { CombPattern, TrowelSetup } from '../../simulations/bed/types.ts';

/** A pulled tile as a small bitmap, row by row from the tile's upper left, one bit a cell (1: mortar transferred). */
export interface PullBitmap {
  columns: number;
  rows: number;
  /** Hexadecimal, four cells a digit, each row padded to whole digits. */
  bits: string;
}

/**
 * What a question shows, as data; the page draws it, to scale. Every picture carries words that say the same; where
 * these would be long (readings, a map), `long` has them for whoever can't see the picture.
 */
export type Picture =
  | { kind: 'trowel'; trowel: TrowelSetup; words: string }
  | { kind: 'ridges'; trowel: TrowelSetup; bedMm: number | null; words: string }
  | {
      kind: 'pull';
      lengthMm: number;
      widthMm: number;
      pull: PullBitmap;
      lettered: boolean;
      words: string;
      long: string;
    }
  | { kind: 'pulls'; lengthMm: number; widthMm: number; pulls: PullBitmap[]; words: string; long: string }
  | {
      kind: 'comb';
      lengthMm: number;
      widthMm: number;
      pattern: CombPattern;
      directionDeg: number;
      pitchMm: number;
      lettered: boolean;
      words: string;
    }
  | { kind: 'heights'; columns: number; rows: number; heights: string[]; words: string; long: string }
  | { kind: 'gap'; lengthMm: number; bowMm: number; bedMm: number; words: string }
  | { kind: 'layers'; layers: string[]; words: string };
