/** The back of a square tile, side 100, with a bare share drawn two ways. */

const n = (value: number): string => value.toFixed(2);

/** One lump at the corner, as a quarter disc that holds the share. */
export function lumpAtCorner(share: number): string {
  const radius = Math.sqrt((4 * share * 100 * 100) / Math.PI);
  if (radius <= 100) return `M0 0H${n(radius)}A${n(radius)} ${n(radius)} 0 0 1 0 ${n(radius)}z`;
  return `M0 0H100V${n(share * 100)}H0z`;
}

const ACROSS = 5;

/** Twenty-five even discs, none near an edge, that hold the share together. */
export function spreadVoids(share: number): string {
  const pitch = 100 / (ACROSS + 1);
  const radius = Math.min(pitch / 2 - 0.5, Math.sqrt((share * 100 * 100) / (ACROSS * ACROSS * Math.PI)));
  return Array.from({ length: ACROSS * ACROSS }, (_, i) => {
    const x = ((i % ACROSS) + 1) * pitch;
    const y = (Math.floor(i / ACROSS) + 1) * pitch;
    return `M${n(x - radius)} ${n(y)}a${n(radius)} ${n(radius)} 0 1 0 ${n(2 * radius)} 0a${n(radius)} ${n(radius)} 0 1 0 ${n(-2 * radius)} 0z`;
  }).join('');
}
