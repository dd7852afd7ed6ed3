import { CELL_STATE } from '../../bed/types.ts';
import type { Pen } from '../map/draw-map.ts';
import type { ViewPalette } from '../palette.ts';
import { asideIn, type Profile, type Wall, wallIn } from './profile.ts';
import { sectionScale, type SectionScale, type SectionView } from './scale.ts';
import { stuffPattern, type Stuff } from './textures.ts';

export interface SectionDrawing extends SectionView {
  /** Device pixels. */
  width: number;
  height: number;
  palette: ViewPalette;
  /** Device pixels to a CSS pixel. */
  pixelScale?: number;
}

interface Sheet {
  pen: Pen;
  drawing: SectionDrawing;
  scale: SectionScale;
  dot: number;
}

/** How far what stands at a height over a step lies aside, mm. */
type Aside = (step: number, height: number) => number;
const upright: Aside = () => 0;

/** Where the upper edge of a run ends inside its last cell; nothing where it goes on level to that cell's side. */
type Walls = (step: number, outward: -1 | 1) => Wall | null;
const none: Walls = () => null;

/** How an edge lies and ends. */
interface Shape {
  aside: Aside;
  walls: Walls;
}
const plain: Shape = { aside: upright, walls: none };

/** The upper edge of a run of cells from side to side: cell, place in it and height. */
function crest(
  [first, last]: readonly [number, number],
  upper: (step: number) => number,
  walls: Walls,
  half: number,
): [at: number, off: number, height: number][] {
  const start = walls(first, -1);
  const end = walls(last, 1);
  const points: [number, number, number][] = [start ? [first, start.offMm, start.topMm] : [first, -half, upper(first)]];
  for (let at = start ? first + 1 : first; at <= (end ? last - 1 : last); at++) points.push([at, 0, upper(at)]);
  points.push(end ? [last, end.offMm, end.topMm] : [last, half, upper(last)]);
  return points;
}

/** The runs of cells over which `holds` is true: first and last cell. */
function runs(count: number, holds: (step: number) => boolean): [number, number][] {
  const found: [number, number][] = [];
  for (let step = 0; step < count; step++) {
    if (!holds(step)) continue;
    const first = step;
    while (step + 1 < count && holds(step + 1)) step++;
    found.push([first, step]);
  }
  return found;
}

/** A path along one edge of the section and back along another, over the cells where `holds` is true. */
function band(
  sheet: Sheet,
  lower: (step: number) => number,
  upper: (step: number) => number,
  holds: (step: number) => boolean,
  { aside, walls }: Shape = plain,
): void {
  const { pen, scale, drawing } = sheet;
  const { placeMm, cellMm } = drawing.profile;
  const to = (at: number, off: number, height: number): [number, number] => [
    scale.x(placeMm[at]! + off + aside(at, height)),
    scale.y(height),
  ];
  pen.beginPath();
  for (const run of runs(placeMm.length, holds)) {
    const top = crest(run, upper, walls, cellMm / 2);
    const [first, last] = [top[0]!, top.at(-1)!];
    pen.moveTo(...to(first[0], first[1], lower(first[0])));
    for (const point of top) pen.lineTo(...to(...point));
    pen.lineTo(...to(last[0], last[1], lower(last[0])));
    for (let at = last[0]; at >= first[0]; at--) {
      const inside = at === last[0] ? Math.min(0, last[1]) : at === first[0] ? Math.max(0, first[1]) : 0;
      pen.lineTo(...to(at, inside, lower(at)));
    }
    pen.closePath();
  }
}

/** Fills the path just made. */
function fill(sheet: Sheet, stuff: Stuff): void {
  sheet.pen.fillStyle = stuffPattern(sheet.pen, stuff, sheet.drawing.palette, sheet.dot);
  sheet.pen.fill();
}

function edge(
  sheet: Sheet,
  height: (step: number) => number,
  holds: (step: number) => boolean,
  colour: string,
  thick: number,
  { aside, walls }: Shape = plain,
): void {
  const { pen, scale, drawing, dot } = sheet;
  const { placeMm, cellMm } = drawing.profile;
  pen.strokeStyle = colour;
  pen.lineWidth = thick * dot;
  pen.lineJoin = 'round';
  pen.beginPath();
  for (const run of runs(placeMm.length, holds))
    crest(run, height, walls, cellMm / 2).forEach(([at, off, high], place) => {
      const x = scale.x(placeMm[at]! + off + aside(at, high));
      if (place === 0) pen.moveTo(x, scale.y(high));
      else pen.lineTo(x, scale.y(high));
    });
  pen.stroke();
}

function drawFloor(sheet: Sheet, profile: Profile): void {
  const { palette } = sheet.drawing;
  const all = (): boolean => true;
  band(
    sheet,
    () => -1e4,
    (step) => profile.floorMm[step]!,
    all,
  );
  fill(sheet, 'concrete');
  edge(sheet, (step) => profile.floorMm[step]!, all, palette.ink, 1.2);
}

function drawAir(sheet: Sheet, profile: Profile): void {
  const trapped = (step: number): boolean => profile.state[step] === CELL_STATE.trapped;
  band(
    sheet,
    (step) => profile.mortarMm[step]!,
    (step) => profile.undersideMm[step]!,
    trapped,
  );
  fill(sheet, 'air');
}

function drawMortar(sheet: Sheet, profile: Profile): void {
  const { palette } = sheet.drawing;
  const has = (step: number): boolean => profile.mortarMm[step]! > profile.floorMm[step]! + 1e-3;
  const shape = { aside: asideIn(profile), walls: wallIn(profile) };
  band(
    sheet,
    (step) => profile.floorMm[step]!,
    (step) => profile.mortarMm[step]!,
    has,
    shape,
  );
  fill(sheet, 'mortar');
  edge(sheet, (step) => profile.mortarMm[step]!, has, palette.mortarDark, 1, shape);
}

function drawTile(sheet: Sheet, profile: Profile): void {
  const { palette, thicknessMm } = sheet.drawing;
  const laid = (step: number): boolean => !Number.isNaN(profile.undersideMm[step]!);
  const under = (step: number): number => profile.undersideMm[step]!;
  const glaze = Math.min(0.7, thicknessMm / 6);
  band(sheet, under, (step) => under(step) + thicknessMm, laid);
  fill(sheet, 'clay');
  band(
    sheet,
    (step) => under(step) + thicknessMm - glaze,
    (step) => under(step) + thicknessMm,
    laid,
  );
  sheet.pen.fillStyle = palette.glaze;
  sheet.pen.fill();
  edge(sheet, (step) => under(step) + thicknessMm, laid, palette.ink, 1.2);
  edge(sheet, under, laid, palette.ink, 1.2);
  // A contact that did not take is drawn as a pale seam between bed and tile.
  edge(sheet, under, (step) => profile.state[step] === CELL_STATE.skinned, palette.air, 2.4);
}

/**
 * Draws a section through the bed: floor, mortar, air (shut-in air dotted, open air clear) and the tile above.
 * @param pen a context whose canvas is at least `width` × `height` device pixels; what it held is cleared
 * @returns the scale used, so that the caller states the height factor and places its marks
 */
export function drawSection(pen: Pen, drawing: SectionDrawing): SectionScale {
  const scale = sectionScale(drawing, drawing.width, drawing.height);
  const sheet: Sheet = { pen, drawing, scale, dot: drawing.pixelScale ?? 1 };
  pen.clearRect(0, 0, drawing.width, drawing.height);
  drawFloor(sheet, drawing.profile);
  drawMortar(sheet, drawing.profile);
  drawAir(sheet, drawing.profile);
  drawTile(sheet, drawing.profile);
  return scale;
}
