import { runBed } from '@sim/bed/run.ts';
import { defaultActions, defaultSetup } from '@sim/bed/defaults.ts';
import type { BedSetup } from '@sim/bed/types.ts';
import { lippageSeen } from '@sim/view/lippage-seen.ts';
import { backOf, plainBack } from '@sim/view/back-of.ts';
import { hollowBack, tileFace } from '@sim/view/scene/tile-shape.ts';
import { describe, expect, test } from 'vitest';

const usual = defaultSetup();
const setup: BedSetup = {
  ...usual,
  tile: { ...usual.tile, lengthMm: 200, widthMm: 150, bowLengthMm: 0.6, twistMm: 0.4 },
  floor: { bowLengthMm: 0.5, bowWidthMm: 0 },
  trowel: { ...usual.trowel, widthMm: 6, depthMm: 6, toothMm: 6 },
  actions: [{ ...defaultActions.press, forceN: 60, atX: 60, atY: -40 }],
  cellMm: 1,
};
const relief = { shape: 'ribs', pitchMm: 24, depthMm: 1, directionDeg: 0, raisedShare: 0.4 } as const;

describe('the back as it is drawn', () => {
  test('warp and tilt worked out anew are what the frame holds, off-centre push, humped floor and all', () => {
    const { frame } = runBed(setup);
    const held = backOf(frame);
    // The same tile told by its ribs of no depth worth naming takes the other way to the same back.
    const anew = plainBack({ ...setup.tile, relief: { ...relief, depthMm: 1e-9 } }, frame);
    for (const [x, y] of [
      [-80, -60],
      [80, -60],
      [0, 0],
      [-80, 60],
      [75, 55],
    ] as const)
      expect(anew(x, y)).toBeCloseTo(held(x, y), 1);
  });

  test('ribs stand in the back and not in the face, and make no lippage', () => {
    const flat: BedSetup = {
      ...setup,
      floor: { bowLengthMm: 0, bowWidthMm: 0 },
      tile: { ...setup.tile, bowLengthMm: 0, twistMm: 0, relief },
      actions: [{ ...defaultActions.press, forceN: 200 }],
    };
    const { frame } = runBed(flat);
    const plain = plainBack(flat.tile, frame);
    const heights = (face: 'top' | 'back'): number[] => {
      const back = face === 'back' ? hollowBack(flat.tile, plain) : plain;
      const places = tileFace(flat.tile, back, face).getAttribute('position');
      return Array.from({ length: places.count }, (_, n) => places.getY(n));
    };
    const spread = (list: number[]): number => Math.max(...list) - Math.min(...list);
    expect(spread(heights('top'))).toBeLessThan(0.05);
    expect(spread(heights('back'))).toBeGreaterThan(0.9);
    expect(lippageSeen(frame, flat.tile)).toBeLessThan(0.05);
  });
});
