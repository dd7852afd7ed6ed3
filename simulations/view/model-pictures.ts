/** The pictures of `simulations/bed/MODEL.md`, drawn from what the solver computes. Plain SVG with words for those who do not see it. */
import { actOn } from '../bed/act.ts';
import { type Bed, settle, startBed } from '../bed/bed.ts';
import { defaultSetup } from '../bed/defaults.ts';
import { EMPTY, FULL, OPEN } from '../bed/grid.ts';
import { bedSlope } from '../bed/lean.ts';
import { press, withWeight } from '../bed/press.ts';
import type { BedAction, BedSetup } from '../bed/types.ts';

export interface Picture {
  file: string;
  svg: string;
}

const INK = '#2b2622';
const PAPER = '#f7f2e8';
const MORTAR = '#8d8a84';
const TILE = '#b4552d';
const AIR = '#e9ddc6';
const SHUT_IN = '#3d6b9c';

const two = (value: number): string => String(Math.round(value * 100) / 100);

function framed(width: number, height: number, words: string, inside: string[]): string {
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-label="${words}" font-family="sans-serif" font-size="13" fill="${INK}" shape-rendering="crispEdges">`,
    `<title>${words}</title>`,
    `<rect width="${width}" height="${height}" fill="${PAPER}"/>`,
    ...inside,
    '</svg>',
    '',
  ].join('\n');
}

const label = (x: number, y: number, words: string): string => `<text x="${two(x)}" y="${two(y)}">${words}</text>`;

const push = (forceN: number): BedAction => ({ do: 'press', forceN, atX: 0, atY: 0 });
const stroke = (forceN: number, directionDeg: number, strokeMm: number): BedAction => ({
  do: 'slide',
  forceN,
  directionDeg,
  strokeMm,
  strokes: 1,
  speedMmS: 20,
});

function small(change: (setup: BedSetup) => void = () => undefined): BedSetup {
  const setup = defaultSetup();
  Object.assign(setup.tile, { lengthMm: 120, widthMm: 120 });
  Object.assign(setup.trowel, { widthMm: 10, depthMm: 10, toothMm: 10 });
  setup.cellMm = 1.25;
  change(setup);
  return setup;
}

/** A bed laid under its own weight, then worked. */
function worked(setup: BedSetup, actions: BedAction[]): Bed {
  const bed = startBed(setup);
  press(bed, withWeight(bed, { forceN: 0, atX: 0, atY: 0 }));
  settle(bed);
  for (const action of actions) {
    actOn(bed, action, () => undefined);
    settle(bed);
  }
  return bed;
}

/** The middle row of a bed as a cut: mortar up to the tile's back, leaning as it does, the tile above where it has gone. */
function cut(bed: Bed, left: number, floor: number, scale: number): string[] {
  const { mortar, gap, state, columns, rim, tileRows, tileColumns, cellMm } = bed.grid;
  const row = (rim + Math.floor(tileRows / 2)) * columns;
  const at = (column: number): number => left + (column - rim) * cellMm * scale;
  const aside = bedSlope(bed)?.[0] ?? 0;
  const driftMm = bed.lean ? bed.lean.towards[0] * bed.lean.driftMm : 0;
  const points = [`${two(at(rim))},${floor}`];
  for (let column = rim; column < rim + tileColumns; column += 1) {
    const n = row + column;
    const top = floor - scale * (state[n]! >= FULL ? gap[n]! : Math.min(mortar[n]!, gap[n]!));
    const over = aside * (floor - top);
    points.push(`${two(at(column) + over)},${two(top)}`, `${two(at(column + 1) + over)},${two(top)}`);
  }
  points.push(`${two(at(rim + tileColumns))},${floor}`);
  const back = floor - scale * gap[row + rim]!;
  const side = tileColumns * cellMm * scale;
  return [
    `<polygon points="${points.join(' ')}" fill="${MORTAR}"/>`,
    `<rect x="${two(left + scale * driftMm)}" y="${two(back - 18)}" width="${two(side)}" height="18" fill="${TILE}"/>`,
    `<line x1="${two(left)}" y1="${floor}" x2="${two(left + side)}" y2="${floor}" stroke="${INK}" stroke-width="2"/>`,
  ];
}

/** A run of cells of one colour in a row: from, to, colour. */
type Run = [from: number, to: number, colour: string];

function runsOf(length: number, colourAt: (column: number) => string | null): Run[] {
  const runs: Run[] = [];
  let from = 0;
  for (let column = 1; column <= length; column += 1) {
    const colour = colourAt(from);
    if (column < length && colourAt(column) === colour) continue;
    if (colour) runs.push([from, column, colour]);
    from = column;
  }
  return runs;
}

/** Cells of one kind in a row joined into strips, rows that are alike into one. */
function strips(bed: Bed, left: number, top: number, scale: number, colour: (n: number) => string | null): string[] {
  const { columns, rim, tileColumns, tileRows, cellMm } = bed.grid;
  const side = cellMm * scale;
  const rows = Array.from({ length: tileRows }, (_, row) =>
    runsOf(tileColumns, (column) => colour((row + rim) * columns + rim + column)),
  );
  const out: string[] = [];
  let first = 0;
  for (let row = 1; row <= tileRows; row += 1) {
    if (row < tileRows && JSON.stringify(rows[row]) === JSON.stringify(rows[first])) continue;
    for (const [from, to, fill] of rows[first]!)
      out.push(
        `<rect x="${two(left + from * side)}" y="${two(top + first * side)}" width="${two((to - from) * side)}" height="${two((row - first) * side)}" fill="${fill}"/>`,
      );
    first = row;
  }
  return out;
}

const board = (left: number, top: number, side: number, colour: string): string =>
  `<rect x="${left}" y="${top}" width="${side}" height="${side}" fill="${colour}"/>`;

function contacts(bed: Bed, left: number, top: number, side: number): string[] {
  const { state, label: labels } = bed.grid;
  const scale = side / bed.setup.tile.lengthMm;
  return [
    board(left, top, side, AIR),
    ...strips(bed, left, top, scale, (n) =>
      state[n]! >= FULL ? MORTAR : state[n] === EMPTY && labels[n]! > 1 ? SHUT_IN : null,
    ),
  ];
}

function sections(): Picture {
  const stages: [string, BedAction[]][] = [
    ['laid down', []],
    ['pressed', [push(18)]],
    ['moved 5 mm across', [push(18), stroke(18, 0, 5)]],
  ];
  const inside = stages.flatMap(([words, actions], n) => [
    label(20, 30 + n * 110, words),
    ...cut(worked(small(), actions), 20, 110 + n * 110, 4),
  ]);
  const words =
    'Cut through a bed: laid down, the tile rests on its ridges; pressed, the ridges are lower and wider; moved across, the valleys have closed';
  return { file: 'ridges.svg', svg: framed(520, 350, words, inside) };
}

function leaning(): Picture {
  const shapes = ['square', 'slanted'] as const;
  const stages: [string, BedAction[]][] = [
    ['laid down', []],
    ['pressed with 7 N', [push(7)]],
  ];
  const inside = shapes.flatMap((shape, column) =>
    stages.flatMap(([words, actions], row) => {
      const bed = worked(
        small((setup) => {
          setup.trowel.shape = shape;
        }),
        actions,
      );
      const left = 40 + column * 410;
      const covered = Math.round((100 * bed.load.contactMm2) / bed.load.tileMm2);
      return [
        label(left, 28 + row * 100, `${shape}, ${words}: ${covered} % covered`),
        ...cut(bed, left, 100 + row * 100, 3),
      ];
    }),
  );
  const words =
    'Cuts through two beds under the same push: square ridges are pressed a little lower; slanted ridges of the same size lean over, are pressed lower and wider, and the tile has gone aside the way they lean';
  return { file: 'lean.svg', svg: framed(850, 220, words, inside) };
}

const coarse = (pattern: BedSetup['comb']['pattern'], sideMm: number): BedSetup =>
  small((setup) => {
    Object.assign(setup.tile, { lengthMm: sideMm, widthMm: sideMm });
    setup.comb.pattern = pattern;
    setup.cellMm = 2;
  });

function maps(): Picture {
  const beds: [string, Bed][] = [
    ['straight, pressed', worked(coarse('straight', 120), [push(10)])],
    ['straight, moved across', worked(coarse('straight', 120), [push(10), stroke(10, 0, 5)])],
    ['crossed, moved', worked(coarse('crossed', 120), [push(10), stroke(10, 0, 5)])],
    ['swirl, pressed', worked(coarse('swirl', 240), [push(60)])],
  ];
  const inside = beds.flatMap(([words, bed], n) => [
    label(20 + n * 180, 30, words),
    ...contacts(bed, 20 + n * 180, 42, 160),
  ]);
  const words =
    'Four backs from above, grey where mortar holds and blue where air is shut in: straight ridges pressed leave open lanes, moved across the lanes are narrower, crossed ridges keep shut holes, a swirl shuts some of its lanes in where sweeps meet';
  return { file: 'backs.svg', svg: framed(740, 222, words, inside) };
}

const BANDS = 8;

function roof(): Picture {
  const setup = defaultSetup();
  Object.assign(setup.tile, { lengthMm: 200, widthMm: 100 });
  setup.comb.pattern = 'flat';
  setup.trowel.depthMm = 4;
  setup.mortar.yieldPa = 400;
  setup.cellMm = 2;
  setup.physics = { endTerm: false, weight: false, air: false, viscosity: false };
  const bed = startBed(setup);
  const { pressure, state } = bed.grid;
  // Highest along the ridge of the roof: 2τ/g times half the width.
  const top = ((2 * 400) / 4) * 50;
  const shade = (n: number): string | null => {
    if (state[n] === OPEN) return null;
    const band = Math.min(BANDS - 1, Math.floor((BANDS * pressure[n]!) / top));
    return `hsl(18 60% ${90 - 8 * band}%)`;
  };
  const inside = [
    ...strips(bed, 20, 20, 2, shade),
    label(20, 245, `0 at the edge, ${two(top / 1000)} kPa along the crest; it bears ${two(bed.load.forceN)} N`),
  ];
  const words =
    'The pressure that a full bed of 200 by 100 millimetres can bear, as bands of equal height: a roof with four even slopes, like sand heaped on a board';
  return { file: 'roof.svg', svg: framed(440, 260, words, inside) };
}

export const drawPictures = (): Picture[] => [sections(), leaning(), maps(), roof()];
