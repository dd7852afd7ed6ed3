import { CELL_STATE, type BedFrame } from '@sim/bed/types.ts';
import { leaningOf } from '@sim/view/leaning.ts';
import { backLeaning, floorLeaning, widened } from '@sim/view/scene/leaning.ts';
import type { LeaningCut } from '@sim/view/section/leaning-cut.ts';
import { figuresOf, profileOf, uprightIn, type Cut } from '@sim/view/section/profile.ts';
import { regionOf, type Point, type Region } from '@sim/view/section/region.ts';
import { sectionScale } from '@sim/view/section/scale.ts';
import { wallsOn } from '@sim/view/section/walls.ts';
import { describeSection } from '@sim/view/words/describe-bed.ts';
import { describe, expect, test } from 'vitest';

import { drawnFrame } from './view-frames.ts';

const RADIANS = Math.PI / 180;

/** Straight ridges of a comb: their way, width, pitch and height, mm, and how they lean, run over rise. */
interface Ridges {
  directionDeg: number;
  wideMm: number;
  pitchMm: number;
  highMm: number;
  lean: number;
}

const CELL = 1.25;
/** Cells to each side: odd, so that a line of cells passes through the middle. */
const SIDE = 81;
const REACH = (SIDE * CELL) / 2;

/** Share of a unit square about 0 in which x·a + y·b < t, by the areas of right triangles. */
function below(a: number, b: number, t: number): number {
  const [long, short] = [Math.abs(a), Math.abs(b)].sort((one, other) => other - one) as [number, number];
  if (short < 1e-9) return Math.min(1, Math.max(0, t / long + 0.5));
  const square = (x: number): number => Math.max(0, x) ** 2;
  const [half, part] = [(long + short) / 2, (long - short) / 2];
  return (square(t + half) - square(t + part) - square(t - part) + square(t - half)) / (2 * long * short);
}

/** Across straight ridges: the unit vector they lean along. */
const normalOf = ({ directionDeg }: Ridges): [number, number] => [
  -Math.sin(directionDeg * RADIANS),
  Math.cos(directionDeg * RADIANS),
];

/** A square bed of straight ridges, one of them through the middle; laid under a level tile that touches their tops, or combed only. */
function ridgedFrame(ridges: Ridges, laid: boolean): BedFrame {
  const { wideMm, pitchMm, highMm, lean } = ridges;
  const [nx, ny] = normalOf(ridges);
  const frame = drawnFrame(Array.from({ length: SIDE }, () => (laid ? 'o' : '.').repeat(SIDE)));
  for (let cell = 0; cell < SIDE * SIDE; cell++) {
    const x = ((cell % SIDE) + 0.5) * CELL - REACH;
    const y = (Math.floor(cell / SIDE) + 0.5) * CELL - REACH;
    const off = nx * x + ny * y;
    let share = 0;
    for (let n = Math.floor(off / pitchMm) - 1; n <= Math.ceil(off / pitchMm) + 1; n++)
      share +=
        below(nx, ny, (n * pitchMm + wideMm / 2 - off) / CELL) - below(nx, ny, (n * pitchMm - wideMm / 2 - off) / CELL);
    frame.mortarMm[cell] = highMm * share;
    if (share >= 0.5 && laid) frame.state[cell] = CELL_STATE.bonded;
  }
  return {
    ...frame,
    cellMm: CELL,
    originMm: [CELL / 2 - REACH, CELL / 2 - REACH],
    gapMm: frame.gapMm.fill(laid ? highMm : NaN),
    tileHeightMm: laid ? highMm : NaN,
    leanSlope: [lean * nx, lean * ny],
  };
}

/** Places at which a section's outline passes a height, and heights at which it passes a place; in order. */
const passing = ({ edges }: Region, value: number, through: 0 | 1): number[] =>
  edges
    .filter(([a, b]) => a[through] < value !== b[through] < value)
    .map(([a, b]) => {
      const share = (value - a[through]) / (b[through] - a[through]);
      return a[(1 - through) as 0 | 1] + share * (b[(1 - through) as 0 | 1] - a[(1 - through) as 0 | 1]);
    })
    .sort((one, other) => one - other);

const areaOf = ({ pieces }: Region): number =>
  pieces.reduce(
    (sum, piece) =>
      sum +
      Math.abs(
        piece.reduce((twice, [x, z], n) => {
          const [nextX, nextZ] = piece[(n + 1) % piece.length]!;
          return twice + x * nextZ - nextX * z;
        }, 0),
      ) /
        2,
    0,
  );

const cutOf = (frame: BedFrame, cut: Cut): LeaningCut => profileOf(frame, cut).leaning!;

const HALF_INCH = { wideMm: 12.7, pitchMm: 25.4, highMm: 9, lean: 0.5 };
const PRESSED = { wideMm: 19, pitchMm: 25.4, highMm: 6, lean: 1.1 };

describe('a cut through leaning ridges', () => {
  // A ridge is the strip |n·P − k·pitch| < w/2 of the columns, slid by σ·(z − z₀) along n. In the plane y = c its walls
  // stand where n_x·x + n_y·c − σ·(z − z₀) = k·pitch ± w/2.
  test.each([
    [HALF_INCH, 90],
    [HALF_INCH, 70],
    [HALF_INCH, 45],
    [HALF_INCH, 30],
    [PRESSED, 120],
    [PRESSED, 20],
    [PRESSED, 155],
  ])('walls stand where the plane meets them, at every height: %o combed at %d°', (shape, directionDeg) => {
    const ridges = { ...shape, directionDeg };
    const [nx, ny] = normalOf(ridges);
    for (const laid of [true, false])
      for (const atMm of [0, 10 * CELL]) {
        const cut = cutOf(ridgedFrame(ridges, laid), { along: 'length', atMm });
        for (const z of [0.1, 0.45, 0.7, 0.96].map((share) => share * shape.highMm)) {
          // The tile's own edge, from which ridges are cut off, leans too.
          const within = REACH - 3 * CELL - Math.abs(shape.lean * nx) * shape.highMm;
          const walls = Array.from({ length: 41 }, (_, n) => n - 20)
            .flatMap((n) => [n * shape.pitchMm - shape.wideMm / 2, n * shape.pitchMm + shape.wideMm / 2])
            .map((wall) => (wall + shape.lean * (z - shape.highMm) - ny * atMm) / nx)
            .filter((x) => Math.abs(x) < within)
            .sort((one, other) => one - other);
          const seen = passing(cut.mortar, z, 1).filter((x) => Math.abs(x) < within);
          expect(seen).toHaveLength(walls.length);
          // To a fiftieth of a cell, square to the wall.
          seen.forEach((x, n) => expect(Math.abs((x - walls[n]!) * nx)).toBeLessThan(0.02 * CELL));
        }
      }
  });

  test('along a ridge the plane leaves it by its foot or its top, at a height that the lean gives', () => {
    const frame = ridgedFrame({ ...HALF_INCH, directionDeg: 0 }, true);
    // 2.5 mm inside the ridge's wall on the side it leans to: the wall passes the plane at z = z₀ − (12.7/2 − 3.75)/0.5.
    const overhead = cutOf(frame, { along: 'length', atMm: 3 * CELL });
    const foot = HALF_INCH.highMm - (HALF_INCH.wideMm / 2 - 3 * CELL) / HALF_INCH.lean;
    expect(passing(overhead.mortar, 0.3, 0)).toEqual([expect.closeTo(foot, 5)]);
    expect(passing(overhead.mortar, -20.3, 0)).toEqual([expect.closeTo(foot, 5)]);
    expect(areaOf(overhead.mortar)).toBeCloseTo((HALF_INCH.highMm - foot) * 2 * REACH, 3);
    // On the other side of the ridge, in the lane at the back: the ridge's lower part stands there, under air.
    const below = cutOf(frame, { along: 'length', atMm: -8 * CELL });
    const top = HALF_INCH.highMm - (8 * CELL - HALF_INCH.wideMm / 2) / HALF_INCH.lean;
    expect(below.tallestMm).toBeCloseTo(top, 5);
    expect(passing(below.mortar, 0.3, 0)).toEqual([expect.closeTo(top, 5)]);
  });

  test('ridges that wobble: along them the cut shows how they pass through it', () => {
    // Ridges along x whose middle lies at 8·sin(x/15); in the plane y = c a wall passes where
    // c − σ·(z − z₀) = 8·sin(x/15) ± w/2.
    const { wideMm, highMm, lean } = HALF_INCH;
    const middle = (x: number): number => 8 * Math.sin(x / 15);
    const frame = ridgedFrame({ ...HALF_INCH, pitchMm: 200, directionDeg: 0 }, true);
    for (let cell = 0; cell < SIDE * SIDE; cell++) {
      const x = ((cell % SIDE) + 0.5) * CELL - REACH;
      const y = (Math.floor(cell / SIDE) + 0.5) * CELL - REACH;
      let share = 0;
      for (let n = 0; n < 16; n++) {
        const off = y - middle(x + ((n + 0.5) / 16 - 0.5) * CELL);
        const held = (wall: number): number => Math.min(1, Math.max(0, (wall - off) / CELL + 0.5));
        share += (held(wideMm / 2) - held(-wideMm / 2)) / 16;
      }
      frame.mortarMm[cell] = highMm * share;
    }
    const atMm = 2 * CELL;
    const cut = cutOf(frame, { along: 'length', atMm });
    for (const x of [-41.3, -30.2, -11.7, 0.2, 8.9, 23.4, 40.1]) {
      const walls = [-1, 1]
        .map((side) => highMm + (atMm - middle(x) + (side * wideMm) / 2) / lean)
        .filter((z) => z > 0 && z < highMm);
      const seen = passing(cut.mortar, x, 0);
      expect(seen).toHaveLength(walls.length);
      // The net is straight between cells, the ridge is round: to a twentieth of a cell, square to the wall.
      seen.forEach((z, n) => expect(Math.abs(z - walls[n]!) * lean).toBeLessThan(0.05 * CELL));
    }
  });

  test('the same ridges cut along the width, turned by a quarter, give the same section', () => {
    const one = cutOf(ridgedFrame({ ...PRESSED, directionDeg: 35 }, true), { along: 'length', atMm: 5 * CELL });
    const turned = cutOf(ridgedFrame({ ...PRESSED, directionDeg: 125 }, true), { along: 'width', atMm: -5 * CELL });
    expect(areaOf(turned.mortar)).toBeCloseTo(areaOf(one.mortar), 4);
    expect(turned.ridges).toBe(one.ridges);
  });

  test('a lean across changes no ridge’s share of the section', () => {
    // What a plane loses at one wall it wins at the other: over whole pitches the area is w/pitch of the gap.
    const { wideMm, pitchMm, highMm } = PRESSED;
    const cut = cutOf(ridgedFrame({ ...PRESSED, directionDeg: 30 }, true), { along: 'length', atMm: 0 });
    expect(areaOf(cut.mortar) / (2 * REACH * highMm)).toBeCloseTo(wideMm / pitchMm, 1);
    expect(cut.acrossMm).toBeCloseTo(PRESSED.lean * Math.cos(30 * RADIANS) * highMm, 9);
  });

  test('shut-in air is the lane’s shape between two ridges', () => {
    const frame = ridgedFrame({ ...PRESSED, directionDeg: 90 }, true);
    frame.state.forEach((state, cell) => {
      if (state === CELL_STATE.open) frame.state[cell] = CELL_STATE.trapped;
    });
    const { air, mortar } = cutOf(frame, { along: 'length', atMm: 0 });
    expect(areaOf(air) + areaOf(mortar)).toBeCloseTo(2 * REACH * PRESSED.highMm, 1);
    expect(cutOf(ridgedFrame({ ...PRESSED, directionDeg: 90 }, true), { along: 'length', atMm: 0 }).air.pieces).toEqual(
      [],
    );
  });

  test('where the mortar has parted, what stands is the ridge under the tear', () => {
    const frame = ridgedFrame({ ...PRESSED, directionDeg: 90 }, true);
    const half = frame.mortarMm.map((height) => height / 2);
    const cut: Cut = { along: 'length', atMm: 0 };
    const { leaning } = profileOf(frame, cut, half);
    expect(leaning!.tallestMm).toBeCloseTo(PRESSED.highMm / 2, 5);
    const low = 0.3 * PRESSED.highMm;
    // Where the wall's own cell lies lower the tear is lower too, but not by a cell.
    const whole = passing(cutOf(frame, cut).mortar, low, 1);
    passing(leaning!.mortar, low, 1).forEach((x, n) => expect(Math.abs(x - whole[n]!)).toBeLessThan(CELL));
  });
});

describe('what stands by a leaning section', () => {
  test('words: bond and air along the back, ridges as the cut meets them, and that they lean out of it', () => {
    const frame = ridgedFrame({ ...HALF_INCH, directionDeg: 0 }, true);
    const inLane = profileOf(frame, { along: 'length', atMm: -8 * CELL });
    const figures = figuresOf(inLane);
    // At the back the line lies in a lane, but a ridge's lower part stands in the plane.
    expect([figures.bondedShare, figures.openRuns, figures.ridges]).toEqual([0, 1, 1]);
    expect(figures.tallestMm).toBeCloseTo(HALF_INCH.highMm - (8 * CELL - HALF_INCH.wideMm / 2) / HALF_INCH.lean, 5);
    const said = describeSection(inLane, 'metric').join(' ');
    expect(said).toContain('0 % of the line is bonded');
    expect(said).toContain('lean out of this cut');
    expect(said).toContain('than at the tile’s back, where bond and air are told');
    // Square across nothing leans out of the cut, and of a comb alone no bond is told.
    const across = profileOf(ridgedFrame({ ...HALF_INCH, directionDeg: 90 }, true), { along: 'length', atMm: 0 });
    expect(describeSection(across, 'metric').join(' ')).not.toContain('lean out');
    const comb = profileOf(ridgedFrame({ ...HALF_INCH, directionDeg: 0 }, false), { along: 'length', atMm: 0 });
    expect(describeSection(comb, 'metric').join(' ')).toMatch(/than at the crests\.$/);
  });

  test('ridges are counted as an upright cut counts them', () => {
    for (const directionDeg of [90, 60, 40]) {
      const ridges = { ...HALF_INCH, directionDeg };
      const leaning = ridgedFrame(ridges, true);
      const upright = { ...leaning };
      delete upright.leanSlope;
      const cut: Cut = { along: 'length', atMm: 0 };
      const [one, other] = [leaning, upright].map((frame) => figuresOf(profileOf(frame, cut)));
      // The ends of the tile may hold a part of a ridge more at another height.
      expect(Math.abs(one!.ridges - other!.ridges)).toBeLessThanOrEqual(1);
      expect(one!.tallestMm).toBeCloseTo(other!.tallestMm, 5);
      expect([one!.bondedShare, one!.openRuns, one!.gap]).toEqual([other!.bondedShare, other!.openRuns, other!.gap]);
    }
  });

  test('the scale leaves room for a ridge that stands only beside the line', () => {
    const profile = profileOf(ridgedFrame({ ...HALF_INCH, directionDeg: 0 }, false), {
      along: 'length',
      atMm: -8 * CELL,
    });
    expect(Math.max(...profile.mortarMm)).toBe(0);
    const scale = sectionScale({ profile, thicknessMm: 6 }, 800, 300);
    expect(scale.y(profile.leaning!.tallestMm)).toBeGreaterThanOrEqual(0);
  });

  test('squeeze-up beside a laid tile stands upright, a comb leans whole', () => {
    const laid = profileOf(drawnFrame(['.bo.'], { leanSlope: [0.5, 0] }), { along: 'length', atMm: 0 });
    expect([0, 1, 2, 3].map(uprightIn(laid))).toEqual([true, false, false, true]);
    const comb = drawnFrame(['....'], { leanSlope: [0.5, 0], tileHeightMm: NaN });
    expect([0, 3].map(uprightIn(profileOf(comb, { along: 'length', atMm: 0 })))).toEqual([false, false]);
    const plain = profileOf(drawnFrame(['.bo.']), { along: 'length', atMm: 0 });
    expect([plain.leaning, uprightIn(plain)(1)]).toEqual([null, true]);
  });
});

describe('walls and regions', () => {
  test('a wall stands where the mortar of its cells ends, square to the line or over two cells', () => {
    expect(wallsOn([0, 0, 0.25, 1, 1, 1])).toEqual([{ at: 2.25, up: true, lowMm: 0, highMm: 1 }]);
    expect(wallsOn([4, 4, 3, 1, 0, 0])).toEqual([{ at: 2.5, up: false, lowMm: 0, highMm: 4 }]);
    // A coat between ridges is no ridge; a slope has no wall; nor has what is not there.
    expect(wallsOn([1, 1, 1, 4, 4, 4])).toEqual([{ at: 2.5, up: true, lowMm: 1, highMm: 4 }]);
    expect(wallsOn([4, 3.8, 3.6, 3.4, 3.2])).toEqual([]);
    expect(wallsOn([NaN, NaN, 4, 4, NaN])).toEqual([]);
  });

  test('a half of a net under a slanting border is half its area, and its edge is that border', () => {
    const net: Point[][] = [0, 1, 2, 3].map((x) => [0, 1, 2, 3].map((z): Point => [x, z]));
    const region = regionOf(
      net,
      net.map((column) => Float64Array.from(column, ([x, z]) => 1.5 + x / 2 - 0.75 - z)),
    );
    // Under the line z = 0.75 + x/2 over 0…3: 3 × 0.75 + 9/4.
    expect(areaOf(region)).toBeCloseTo(4.5, 12);
    for (const edge of region.edges) for (const [x, z] of edge) expect(z).toBeCloseTo(0.75 + x / 2, 12);
    const all = regionOf(
      net,
      net.map((column) => new Float64Array(column.length)),
    );
    expect([areaOf(all), all.edges]).toEqual([9, []]);
  });
});

describe('the picture of a leaning bed', () => {
  const laid = drawnFrame(['.bo'], { leanSlope: [0.5, -0.2] });

  test('what touches the tile is at its place; of a comb the crests are', () => {
    expect(leaningOf(laid)).toEqual({ slope: [0.5, -0.2], atMm: laid.tileHeightMm });
    const comb = drawnFrame(['...'], { leanSlope: [0.5, 0], tileHeightMm: NaN });
    comb.mortarMm.set([0, 7, 3]);
    expect(leaningOf(comb)?.atMm).toBe(7);
    expect(leaningOf(drawnFrame(['.bo']))).toBeNull();
    expect([floorLeaning(drawnFrame(['.bo'])), backLeaning(drawnFrame(['.bo']))]).toEqual([null, null]);
  });

  test('under a tile the ridges lean, beside it nothing does', () => {
    expect([...floorLeaning(laid)!.leans]).toEqual([0, 1, 1]);
  });

  test('a ridge parts into two that fit: the piece on the back leans as it did, and hangs down against its lean', () => {
    const floor = floorLeaning(laid)!;
    const back = backLeaning(laid)!;
    const gap = laid.tileHeightMm;
    const taken = 0.4 * gap;
    const aside = ({ slope, atMm }: { slope: [number, number]; atMm: number }, height: number): number[] =>
      slope.map((run) => run * (height - atMm));
    // The tear, counted from the floor and from the back.
    aside(floor, gap - taken).forEach((off, axis) => expect(aside(back, taken)[axis]).toBeCloseTo(off, 12));
    // Its root is where the solver counted the contact, so the paint on the back lies under it.
    for (const off of aside(back, 0)) expect(off).toBeCloseTo(0, 12);
  });

  test('a flank is drawn down to its foot in the cell beside the ridge', () => {
    expect([...widened(Uint8Array.of(0, 0, 0, 0, 1, 0, 0, 0, 0), 3, 1)]).toEqual([0, 1, 0, 1, 1, 1, 0, 1, 0]);
    expect([...widened(Uint8Array.of(0, 0, 0, 0, 1, 0, 0, 0, 0), 3, 2)]).toEqual(Array(9).fill(1));
  });
});
