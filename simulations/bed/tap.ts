import type { Bed } from './bed.ts';
import { borneN } from './lean.ts';
import { press } from './press.ts';

/** A tile setter's mallet, kg (common practice, no published source). */
const MALLET_KG = 0.5;
/** A blow is a push as hard as the bed asks; this is only far beyond any bed, N. */
const HARD_PUSH_N = 1e6;

/**
 * One blow: mallet and tile go on together (so the part m/(m+M) of the energy reaches the bed) until the bed's
 * plastic work has used it up.
 */
export function tapTile(
  bed: Bed,
  blow: { energyJ: number; atX: number; atY: number },
  onShare: (share: number) => void,
): void {
  const { tile } = bed.setup;
  const tileKg = (tile.lengthMm * tile.widthMm * tile.thicknessMm * tile.densityKgM3) / 1e9;
  const energy = (blow.energyJ * MALLET_KG) / (MALLET_KG + tileKg);
  let spent = 0;
  press(
    bed,
    { forceN: HARD_PUSH_N, atX: blow.atX, atY: blow.atY },
    {
      mostSink: () => (1e3 * (energy - spent)) / Math.max(1, borneN(bed) - bed.weightN),
      onStep: (motion) => {
        const fall = motion.sink - motion.slopeX * bed.load.atX - motion.slopeY * bed.load.atY;
        spent += Math.max(0, (borneN(bed) - bed.weightN) * fall * 1e-3);
        onShare(Math.min(1, spent / energy));
        return spent >= 0.99 * energy;
      },
    },
  );
}
