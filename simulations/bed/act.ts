import { restedYieldPa } from '../mortar/rest.ts';
import { direction } from '../numbers/plain.ts';
import { type Bed, END_TERM, measure } from './bed.ts';
import { borneN } from './lean.ts';
import { press, withWeight } from './press.ts';
import { slide } from './slide.ts';
import { tapTile } from './tap.ts';
import type { BedAction } from './types.ts';

/** Called as an action goes on: the share of it done, and how far the tile stands from its final place, mm. */
export type OnWay = (share: number, offsetMm: [number, number]) => void;

const RADIAN = 0.017453292519943295;

/** At rest the mortar is stiffer than when it is worked. */
function setYield(bed: Bed, yieldPa: number): void {
  if (bed.terms.yieldPa === yieldPa) return;
  bed.terms.yieldPa = yieldPa;
  bed.terms.endPa = bed.setup.physics.endTerm ? END_TERM * yieldPa : 0;
  measure(bed);
}

/** Where the tile stands on stroke `n` of `strokes`, so that the last ends in its place. */
const strokeOffset = (strokes: number, n: number, part: number): number =>
  (strokes - n) % 2 === 1 ? -(1 - part) : -part;

/**
 * Does one action to the bed.
 * @returns the load on the bed while it was done, the tile's weight included, N
 */
export function actOn(bed: Bed, action: BedAction, onWay: OnWay): number {
  const { mortar, tile } = bed.setup;
  const here: [number, number] = [0, 0];
  switch (action.do) {
    case 'press': {
      setYield(bed, bed.slidMm > 0 ? mortar.yieldPa : restedYieldPa(mortar.yieldPa, mortar.ageMin));
      const applied = withWeight(bed, action);
      const from = Math.min(borneN(bed), applied.forceN);
      press(bed, applied, {
        onStep: () => {
          onWay(Math.min(1, (borneN(bed) - from) / (applied.forceN - from)), here);
          return false;
        },
      });
      return applied.forceN;
    }
    case 'slide': {
      setYield(bed, mortar.yieldPa);
      const applied = withWeight(bed, { forceN: action.forceN, atX: 0, atY: 0 });
      const [c, s] = direction(action.directionDeg);
      for (let n = 0; n < action.strokes; n += 1)
        slide(
          bed,
          {
            applied,
            field: { shiftX: c, shiftY: s, turn: 0 },
            pathMm: action.strokeMm,
            speedMmS: action.speedMmS,
          },
          (gone) => {
            const off = strokeOffset(action.strokes, n, gone / action.strokeMm) * action.strokeMm;
            onWay((n + gone / action.strokeMm) / action.strokes, [off * c, off * s]);
            return false;
          },
        );
      return applied.forceN;
    }
    case 'twist': {
      setYield(bed, mortar.yieldPa);
      const applied = withWeight(bed, { forceN: action.forceN, atX: 0, atY: 0 });
      const corner = Math.sqrt(tile.lengthMm * tile.lengthMm + tile.widthMm * tile.widthMm) / 2;
      const path = Math.abs(action.angleDeg) * RADIAN * corner;
      for (let n = 0; n < action.strokes; n += 1)
        slide(
          bed,
          {
            applied,
            field: { shiftX: 0, shiftY: 0, turn: 1 / corner },
            pathMm: path,
            speedMmS: action.speedMmS,
          },
          (gone) => {
            onWay((n + gone / path) / action.strokes, here);
            return false;
          },
        );
      return applied.forceN;
    }
    case 'tap': {
      setYield(bed, bed.slidMm > 0 ? mortar.yieldPa : restedYieldPa(mortar.yieldPa, mortar.ageMin));
      for (let n = 0; n < action.blows; n += 1)
        tapTile(bed, action, (share) => onWay((n + share) / action.blows, here));
      return bed.weightN;
    }
    case 'vibrate': {
      setYield(bed, mortar.yieldPa);
      const applied = withWeight(bed, { forceN: action.forceN, atX: 0, atY: 0 });
      // Below the mortar's yield strain the orbit only bends it (2 %, from memory).
      if (action.amplitudeMm < 0.02 * bed.load.meanGap) {
        press(bed, applied);
        return applied.forceN;
      }
      const speed = 2 * Math.PI * action.amplitudeMm * action.frequencyHz;
      const path = speed * action.seconds;
      slide(
        bed,
        { applied, field: { shiftX: 1, shiftY: 0, turn: 0 }, pathMm: path, speedMmS: speed, round: true },
        (gone) => {
          onWay(gone / path, here);
          return false;
        },
      );
      return applied.forceN;
    }
    case 'lift':
      // Nothing moves before the bed parts; what parts is worked out from the bed as it lies.
      return bed.weightN;
  }
}
