/** Sections through a bed as svg paths, in millimetres, y upwards from the floor turned to svg's downwards. */

const n = (value: number): string => String(Math.round(value * 100) / 100);

/** A comb in section: ridges of one width and height at one pitch. All mm. */
export interface Comb {
  ridgeMm: number;
  heightMm: number;
  pitchMm: number;
}

/** A closed rectangle from its lower left corner; `floorY` is where the floor lies in the drawing. */
export const box = (x: number, low: number, width: number, height: number, floorY: number): string =>
  `M${n(x)} ${n(floorY - low)}h${n(width)}v${n(-height)}h${n(-width)}z`;

/** One ridge with the corners that a wet mortar keeps, a tenth of its width. */
function ridge(x: number, width: number, height: number, floorY: number): string {
  const r = Math.min(width, height) * 0.14;
  return (
    `M${n(x)} ${n(floorY)}v${n(-(height - r))}q0 ${n(-r)} ${n(r)} ${n(-r)}h${n(width - 2 * r)}` +
    `q${n(r)} 0 ${n(r)} ${n(r)}v${n(height - r)}z`
  );
}

/** `count` standing ridges from `x0`, each in the middle of its pitch. */
export function standing(comb: Comb, x0: number, count: number, floorY: number): string {
  const inset = (comb.pitchMm - comb.ridgeMm) / 2;
  return Array.from({ length: count }, (_, i) =>
    ridge(x0 + i * comb.pitchMm + inset, comb.ridgeMm, comb.heightMm, floorY),
  ).join('');
}

/**
 * Ridges pressed to coverage `share` (0…1): the same mortar, wider and lower. Returns the path and the bed height.
 * At 1 they have met and the bed is the comb's mean.
 */
export function pressed(comb: Comb, share: number, x0: number, count: number, floorY: number) {
  const height = (comb.ridgeMm * comb.heightMm) / (comb.pitchMm * share);
  const width = comb.pitchMm * share;
  const path = Array.from({ length: count }, (_, i) =>
    bulged(x0 + i * comb.pitchMm + (comb.pitchMm - width) / 2, width, height, floorY, share < 1),
  ).join('');
  return { path, heightMm: height };
}

/** A squeezed ridge bulges at its sides; the bulge is drawn inside the width that touches, so nothing is added. */
function bulged(x: number, width: number, height: number, floorY: number, free: boolean): string {
  if (!free) return box(x, 0, width, height, floorY);
  const b = Math.min(height * 0.35, width * 0.12);
  return (
    `M${n(x)} ${n(floorY)}q${n(-b)} ${n(-height / 2)} 0 ${n(-height)}h${n(width)}` +
    `q${n(b)} ${n(height / 2)} 0 ${n(height)}z`
  );
}

/** The notched edge of a trowel standing in the comb it has just made; teeth reach the floor. */
export function blade(comb: Comb, x0: number, count: number, floorY: number, heightMm: number): string {
  const inset = (comb.pitchMm - comb.ridgeMm) / 2;
  let path = `M${n(x0)} ${n(floorY)}`;
  for (let i = 0; i < count; i += 1)
    path += `h${n(inset)}v${n(-comb.heightMm)}h${n(comb.ridgeMm)}v${n(comb.heightMm)}h${n(inset)}`;
  return `${path}v${n(-heightMm)}h${n(-count * comb.pitchMm)}z`;
}
