import { CELL_STATE } from '../../bed/types.ts';
import type { ViewPalette } from '../palette.ts';
import type { Pen } from '../pen.ts';
import { type Profile, uprightIn, type Wall, wallIn } from './profile.ts';
import type { Region } from './region.ts';
import { runsOf } from './runs.ts';
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

/** How far the floor is drawn past the lower edge, so that no edge of it is seen, mm. */
const FLOOR_BEYOND_MM = 1;
/** How far what is drawn goes past the sides, so that no end of it is seen, cells. */
const CELLS_BEYOND = 4;

interface Sheet {
  pen: Pen;
  drawing: SectionDrawing;
  scale: SectionScale;
  /** Whether a step of the section may be seen: what lies far off a close-up's sides costs as much as what is shown. */
  seen: (step: number) => boolean;
  dot: number;
}

/** The runs of what is seen over which something holds. */
const seenRuns = ({ drawing, seen }: Sheet, holds: (step: number) => boolean): [number, number][] =>
  runsOf(drawing.profile.placeMm.length, (step) => seen(step) && holds(step));

/** Where the upper edge of a run ends inside its last cell; nothing where it goes on level to that cell's side. */
type Walls = (step: number, outward: -1 | 1) => Wall | null;
const none: Walls = () => null;

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

/** A path along one edge of the section and back along another, over the cells where `holds` is true. */
function band(
  sheet: Sheet,
  lower: (step: number) => number,
  upper: (step: number) => number,
  holds: (step: number) => boolean,
  walls: Walls = none,
): void {
  const { pen, scale, drawing } = sheet;
  const { placeMm, cellMm } = drawing.profile;
  const to = (at: number, off: number, height: number): [number, number] => [
    scale.x(placeMm[at]! + off),
    scale.y(height),
  ];
  pen.beginPath();
  for (const run of seenRuns(sheet, holds)) {
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
  walls: Walls = none,
): void {
  const { pen, scale, drawing, dot } = sheet;
  const { placeMm, cellMm } = drawing.profile;
  pen.strokeStyle = colour;
  pen.lineWidth = thick * dot;
  pen.lineJoin = 'round';
  pen.beginPath();
  for (const run of seenRuns(sheet, holds))
    crest(run, height, walls, cellMm / 2).forEach(([at, off, high], place) => {
      const x = scale.x(placeMm[at]! + off);
      if (place === 0) pen.moveTo(x, scale.y(high));
      else pen.lineTo(x, scale.y(high));
    });
  pen.stroke();
}

function drawFloor(sheet: Sheet, profile: Profile): void {
  const { drawing, scale } = sheet;
  const { palette } = drawing;
  const all = (): boolean => true;
  // Just past the drawing's edge and no further: a path is worked through as far as it reaches, seen or not.
  const under = scale.lowestMm - FLOOR_BEYOND_MM;
  band(
    sheet,
    () => under,
    (step) => profile.floorMm[step]!,
    all,
  );
  fill(sheet, 'concrete');
  edge(sheet, (step) => profile.floorMm[step]!, all, palette.ink, 1.2);
}

/** A path round the pieces of a region. */
function trace({ pen, scale }: Sheet, { pieces }: Region): void {
  pen.beginPath();
  for (const piece of pieces) {
    piece.forEach(([place, height], n) => {
      if (n === 0) pen.moveTo(scale.x(place), scale.y(height));
      else pen.lineTo(scale.x(place), scale.y(height));
    });
    pen.closePath();
  }
}

/** What leans: its stuff, and its edges where they are given a colour. */
function drawRegion(sheet: Sheet, region: Region, stuff: Stuff, colour?: string): void {
  const { pen, scale, dot } = sheet;
  trace(sheet, region);
  fill(sheet, stuff);
  if (!colour) return;
  pen.strokeStyle = colour;
  pen.lineWidth = dot;
  pen.lineCap = 'round';
  pen.beginPath();
  for (const [from, to] of region.edges) {
    pen.moveTo(scale.x(from[0]), scale.y(from[1]));
    pen.lineTo(scale.x(to[0]), scale.y(to[1]));
  }
  pen.stroke();
}

function drawAir(sheet: Sheet, profile: Profile): void {
  if (profile.leaning) {
    drawRegion(sheet, profile.leaning.air, 'air');
    return;
  }
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
  const upright = uprightIn(profile);
  const has = (step: number): boolean => upright(step) && profile.mortarMm[step]! > profile.floorMm[step]! + 1e-3;
  const walls = wallIn(profile);
  if (profile.leaning) drawRegion(sheet, profile.leaning.mortar, 'mortar', palette.mortarDark);
  band(
    sheet,
    (step) => profile.floorMm[step]!,
    (step) => profile.mortarMm[step]!,
    has,
    walls,
  );
  fill(sheet, 'mortar');
  edge(sheet, (step) => profile.mortarMm[step]!, has, palette.mortarDark, 1, walls);
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
  const { placeMm, cellMm } = drawing.profile;
  const beyond = CELLS_BEYOND * cellMm;
  const seen = (step: number): boolean =>
    placeMm[step]! >= scale.fromMm - beyond && placeMm[step]! <= scale.toMm + beyond;
  const sheet: Sheet = { pen, drawing, scale, seen, dot: drawing.pixelScale ?? 1 };
  pen.clearRect(0, 0, drawing.width, drawing.height);
  drawFloor(sheet, drawing.profile);
  drawMortar(sheet, drawing.profile);
  drawAir(sheet, drawing.profile);
  drawTile(sheet, drawing.profile);
  return scale;
}
