/** Reliefs against plain geometry, and a back with hollows, bare and buttered, in the solver. */
import { defaultRelief, defaultSetup } from '@sim/bed/defaults.ts';
import { layTile, combBed } from '@sim/bed/fill.ts';
import { runBed } from '@sim/bed/run.ts';
import { type BedSetup, CELL_STATE, type ReliefSetup } from '@sim/bed/types.ts';
import { backOf, meanReliefMm, reliefField } from '@sim/tile/relief.ts';
import { describe, expect, it } from 'vitest';

const shapes = ['ribs', 'grid', 'dots'] as const;
const relief = (shape: ReliefSetup['shape'], over: Partial<ReliefSetup> = {}): ReliefSetup => ({
  ...defaultRelief(),
  shape,
  raisedShare: 0.4,
  depthMm: 1.5,
  ...over,
});

describe('the mean depth of a relief', () => {
  // Plain geometry, 25 mm apart, 10 mm wide, 1.5 mm deep: ribs 1.5 × 0.6, both ways 1.5 × 0.6², dots 1.5 (1 − π 0.4²/4).
  it.each([
    ['ribs', 0.9],
    ['grid', 0.54],
    ['dots', 1.3115],
  ] as const)('%s: %d mm', (shape, mm) => {
    expect(meanReliefMm(relief(shape))).toBeCloseTo(mm, 4);
  });

  it.each(shapes)('%s: is what the field holds, turned or not', (shape) => {
    for (const directionDeg of [0, 90, 27]) {
      const field = reliefField(relief(shape, { directionDeg }), 1);
      let [sum, count] = [0, 0];
      for (let x = -249.5; x < 250; x += 1)
        for (let y = -249.5; y < 250; y += 1) {
          sum += field(x, y);
          count += 1;
        }
      expect(Math.abs(sum / count / meanReliefMm(relief(shape)) - 1)).toBeLessThan(directionDeg === 27 ? 0.01 : 0.003);
    }
  });
});

describe('a coat on a relief', () => {
  it.each(shapes)('%s: of the mean depth lies flush, and more lies even over it', (shape) => {
    const told = relief(shape);
    const { recess, coat } = backOf({ relief: told, reliefMm: 0 }, meanReliefMm(told) + 0.5, 1);
    for (const [x, y] of [
      [0, 0],
      [12.5, 12.5],
      [3, 9],
    ] as const)
      expect(coat(x, y) - recess(x, y)).toBeCloseTo(0.5, 12);
  });

  it('half of it fills every hollow by half', () => {
    const told = relief('ribs');
    const { recess, coat } = backOf({ relief: told, reliefMm: 0 }, meanReliefMm(told) / 2, 1);
    expect(recess(0, 12.5)).toBe(1.5);
    expect(coat(0, 12.5)).toBeCloseTo(0.75, 12);
    expect(coat(0, 0)).toBe(0);
  });
});

/** A hand-sized tile on ridges too low for the relief. */
function setup(told: ReliefSetup | null, butterMm: number): BedSetup {
  const base = defaultSetup();
  Object.assign(base.tile, { lengthMm: 200, widthMm: 150 }, told && { relief: told });
  base.trowel = { ...base.trowel, widthMm: 6.35, depthMm: 6.35, toothMm: 6.35 };
  base.butterMm = butterMm;
  base.actions = [{ do: 'press', forceN: 100, atX: 0, atY: 0 }];
  return base;
}

describe('the bed under a relief', () => {
  it.each(shapes)(
    '%s: bare it covers less than filled and comes down into the ridges, and the bare spots lie in the hollows',
    (shape) => {
      const told = relief(shape);
      const bare = runBed(setup(told, 0));
      const filled = runBed(setup(told, meanReliefMm(told)));
      expect(bare.result.coverage).toBeLessThan(filled.result.coverage);
      // Air in the hollows holds it up: 0.45, 0.39 and 0.96 of the mean depth in steps a tenth as long (model).
      expect(bare.result.tileHeightMm).toBeLessThan(filled.result.tileHeightMm - meanReliefMm(told) / 3);
      expect(bare.result.massError).toBeLessThan(1e-9);
      const field = reliefField(told, bare.frame.cellMm);
      const { frame } = bare;
      const mean = { bonded: 0, open: 0 };
      const count = { bonded: 0, open: 0 };
      frame.state.forEach((state, n) => {
        const name = state === CELL_STATE.bonded ? 'bonded' : state === CELL_STATE.open ? 'open' : null;
        if (!name) return;
        const x = frame.originMm[0] + (n % frame.columns) * frame.cellMm;
        const y = frame.originMm[1] + Math.floor(n / frame.columns) * frame.cellMm;
        mean[name] += field(x, y);
        count[name] += 1;
      });
      expect(mean.open / count.open).toBeGreaterThan(mean.bonded / count.bonded);
    },
  );

  it.each(shapes)(
    '%s: with no air to hold it up, pressed full, it lies lower by the depth a coat would fill',
    (shape) => {
      const told = relief(shape);
      // Full but for 2 % both hold the same combed mortar, so what differs is the relief's mean depth (mass alone).
      const full = (butterMm: number) => {
        const setUp = setup(told, butterMm);
        setUp.physics = { ...setUp.physics, air: false };
        setUp.actions = [{ do: 'press', forceN: 150, atX: 0, atY: 0 }];
        return runBed(setUp).result;
      };
      const [bare, filled] = [full(0), full(meanReliefMm(told))];
      for (const { coverage } of [bare, filled]) expect(coverage).toBeGreaterThan(0.97);
      const lower = filled.tileHeightMm - bare.tileHeightMm;
      expect(Math.abs(lower / meanReliefMm(told) - 1)).toBeLessThan(0.03);
    },
  );

  it('touches first where the back stands proud', () => {
    const told = setup(relief('ribs', { directionDeg: 0 }), 0);
    const grid = combBed(told);
    layTile(grid, told);
    let least = Infinity;
    let deepest = -Infinity;
    for (let row = grid.rim; row < grid.rim + grid.tileRows; row += 1)
      for (let column = grid.rim; column < grid.rim + grid.tileColumns; column += 1) {
        least = Math.min(least, grid.gap[row * grid.columns + column]!);
        deepest = Math.max(deepest, grid.gap[row * grid.columns + column]!);
      }
    expect(deepest - least).toBeCloseTo(1.5, 9);
  });
});
