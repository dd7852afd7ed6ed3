import type { PullBitmap } from '../engine/picture.ts';
import { cellName } from '../engine/letters.ts';
import type { Say } from '../engine/say.ts';
import { wetShares } from '../runs/bitmap.ts';

/** Squares a lettered picture of a tile is ruled into. */
export const RULED = { across: 6, down: 6 } as const;

export interface RuledSquare {
  cell: string;
  wet: number;
}

/** Every square of a ruled picture with the share of it that is wet. */
export const ruledSquares = (pull: PullBitmap): RuledSquare[] =>
  wetShares(pull, RULED).map((wet, at) => ({ cell: cellName(at % RULED.across, Math.floor(at / RULED.across)), wet }));

/** The same in words, for whoever can't see the picture: bare share square by square, to the nearest tenth. */
export const squaresInWords = (pull: PullBitmap, say: Say): string =>
  ruledSquares(pull)
    .map(({ cell, wet }) => say.t('square-bare', { cell, bare: say.share(Math.round((1 - wet) * 10) / 10) }))
    .join(', ');
