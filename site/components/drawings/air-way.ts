/** Ridges under an oblong tile from above, and the way the air in the middle has to go. Drawing units, 1 = 2 mm. */
export interface AirWayDrawing {
  width: number;
  height: number;
  ridges: string;
  tile: string;
  way: string;
  label: { x: number; y: number };
}

const SCALE = 0.5;
const MARGIN = 14;
const n = (value: number): string => String(Math.round(value * 10) / 10);

/**
 * @param along which side the ridges run along
 * @param pitchMm distance of the ridges, drawn wider than life so that they can be told apart
 */
export function drawAirWay(
  lengthMm: number,
  widthMm: number,
  along: 'long' | 'short',
  pitchMm: number,
  ridgeMm: number,
): AirWayDrawing {
  const l = lengthMm * SCALE;
  const w = widthMm * SCALE;
  const pitch = pitchMm * SCALE;
  const ridge = ridgeMm * SCALE;
  const x0 = MARGIN;
  const y0 = MARGIN;
  const count = Math.round((along === 'long' ? w : l) / pitch);
  const ridges = Array.from({ length: count }, (_, i) => {
    const at = i * pitch + (pitch - ridge) / 2;
    return along === 'long'
      ? `M${n(x0)} ${n(y0 + at)}h${n(l)}v${n(ridge)}h${n(-l)}z`
      : `M${n(x0 + at)} ${n(y0)}v${n(w)}h${n(ridge)}v${n(-w)}z`;
  }).join('');
  // The lane nearest to the middle.
  const lane = Math.floor(count / 2) * pitch;
  const [cx, cy] = along === 'long' ? [x0 + l / 2, y0 + lane] : [x0 + lane, y0 + w / 2];
  const [ex, ey] = along === 'long' ? [x0 + l + 8, cy] : [cx, y0 + w + 8];
  const tip =
    along === 'long'
      ? `M${n(ex - 8)} ${n(ey - 5)}L${n(ex)} ${n(ey)}L${n(ex - 8)} ${n(ey + 5)}`
      : `M${n(ex - 5)} ${n(ey - 8)}L${n(ex)} ${n(ey)}L${n(ex + 5)} ${n(ey - 8)}`;
  return {
    width: l + 2 * MARGIN,
    height: w + 2 * MARGIN,
    ridges,
    tile: `M${n(x0)} ${n(y0)}h${n(l)}v${n(w)}h${n(-l)}z`,
    way: `M${n(cx)} ${n(cy)}L${n(ex)} ${n(ey)}${tip}`,
    label: along === 'long' ? { x: x0 + l * 0.62, y: cy - 9 } : { x: cx + 9, y: y0 + w * 0.72 },
  };
}
