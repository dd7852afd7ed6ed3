import { CELL_STATE } from '../../bed/types.ts';
import type { Pen } from '../map/draw-map.ts';
import type { ViewPalette } from '../palette.ts';
import { asideIn, type Profile } from './profile.ts';
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

/** A path along one edge of the section and back along another, over the cells where `holds` is true. */
function band(
  sheet: Sheet,
  lower: (step: number) => number,
  upper: (step: number) => number,
  holds: (step: number) => boolean,
  aside: Aside = upright,
): void {
  const { pen, scale, drawing } = sheet;
  const { placeMm, cellMm } = drawing.profile;
  const half = cellMm / 2;
  pen.beginPath();
  for (let step = 0; step < placeMm.length; step++) {
    if (!holds(step)) continue;
    const first = step;
    while (step + 1 < placeMm.length && holds(step + 1)) step++;
    const to = (at: number, off: number, height: number): [number, number] => [
      scale.x(placeMm[at]! + off + aside(at, height)),
      scale.y(height),
    ];
    pen.moveTo(...to(first, -half, lower(first)));
    pen.lineTo(...to(first, -half, upper(first)));
    for (let at = first; at <= step; at++) pen.lineTo(...to(at, 0, upper(at)));
    pen.lineTo(...to(step, half, upper(step)));
    for (let at = step; at >= first; at--) pen.lineTo(...to(at, 0, lower(at)));
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
  aside: Aside = upright,
): void {
  const { pen, scale, drawing, dot } = sheet;
  const { placeMm, cellMm } = drawing.profile;
  pen.strokeStyle = colour;
  pen.lineWidth = thick * dot;
  pen.lineJoin = 'round';
  pen.beginPath();
  let drawingOn = false;
  for (let step = 0; step < placeMm.length; step++) {
    if (!holds(step)) {
      drawingOn = false;
      continue;
    }
    const y = scale.y(height(step));
    const place = placeMm[step]! + aside(step, height(step));
    if (!drawingOn) pen.moveTo(scale.x(place - cellMm / 2), y);
    pen.lineTo(scale.x(place), y);
    if (step + 1 === placeMm.length || !holds(step + 1)) pen.lineTo(scale.x(place + cellMm / 2), y);
    drawingOn = true;
  }
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
  const aside = asideIn(profile);
  band(
    sheet,
    (step) => profile.floorMm[step]!,
    (step) => profile.mortarMm[step]!,
    has,
    aside,
  );
  fill(sheet, 'mortar');
  edge(sheet, (step) => profile.mortarMm[step]!, has, palette.mortarDark, 1, aside);
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
