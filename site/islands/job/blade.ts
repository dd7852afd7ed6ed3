import { pitchMm, type Notch } from '@sim/trowel/notch.ts';
import { ridgeOutline } from '@sim/trowel/profile.ts';

const figure = (value: number): string => String(Math.round(value * 1000) / 1000);

/**
 * The outline of a trowel's blade held upright, teeth down, in mm: y runs down, teeth end at `depthMm`. The notches are
 * the ridges they leave at 90°, so the drawing and the solver share one geometry.
 * @param widthMm how much of the blade is drawn
 * @param backMm steel drawn above the notches
 * @returns the `d` of an SVG path
 */
export function bladePath(notch: Notch, widthMm: number, backMm: number): string {
  const outline = ridgeOutline({ ...notch, angleDeg: 90, wearMm: 0 });
  const pitch = pitchMm(notch);
  const bottom = notch.depthMm;
  // Whole notches, centred, so that both ends of the drawing are teeth.
  const count = Math.max(1, Math.floor((widthMm - Math.max(notch.toothMm, pitch * 0.1)) / pitch));
  const first = widthMm / 2 - ((count - 1) * pitch) / 2;
  const points: string[] = [`M0 ${figure(-backMm)}`, `L0 ${figure(bottom)}`];
  for (let k = 0; k < count; k++)
    for (const [across, up] of outline) points.push(`L${figure(first + k * pitch + across)} ${figure(bottom - up)}`);
  points.push(`L${figure(widthMm)} ${figure(bottom)}`, `L${figure(widthMm)} ${figure(-backMm)}`, 'Z');
  return points.join('');
}
