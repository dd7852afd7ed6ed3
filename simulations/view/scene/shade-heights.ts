/** What a height field looks like under light: heights for the vertices, and a texel of shading for each cell. */
export interface ShadedField {
  columns: number;
  rows: number;
  cellMm: number;
  /** mm, row-major, as the frame's arrays. */
  heights: Float32Array;
  /** RGBA a cell: slope to the right, slope away, openness to the sky, presence; each 0…255. */
  shade: Uint8Array;
}

export function emptyField(columns: number, rows: number, cellMm: number): ShadedField {
  const cells = columns * rows;
  return { columns, rows, cellMm, heights: new Float32Array(cells), shade: new Uint8Array(cells * 4) };
}

/** Reach of the darkening in a valley, mm: about half the pitch of a common notch. */
const VALLEY_MM = 6;
/** A valley as deep as its reach keeps this share of the sky's light. */
const DEEPEST = 0.38;

/** Box blur along rows, then columns, by running sums: the cost does not grow with the radius. */
function blurred(heights: Float32Array, columns: number, rows: number, radius: number): Float32Array {
  const across = new Float32Array(heights.length);
  const out = new Float32Array(heights.length);
  const pass = (
    from: Float32Array,
    to: Float32Array,
    count: number,
    lines: number,
    step: number,
    next: number,
  ): void => {
    for (let line = 0; line < lines; line++) {
      const start = line * next;
      let sum = 0;
      for (let k = -radius; k <= radius; k++) sum += from[start + Math.min(count - 1, Math.max(0, k)) * step]!;
      for (let k = 0; k < count; k++) {
        to[start + k * step] = sum / (2 * radius + 1);
        sum += from[start + Math.min(count - 1, k + radius + 1) * step]!;
        sum -= from[start + Math.max(0, k - radius) * step]!;
      }
    }
  };
  pass(heights, across, columns, rows, 1, columns);
  pass(across, out, rows, columns, columns, 1);
  return out;
}

/**
 * Fills the shading of a field from its heights.
 * @param present 1 where there is something to draw; cells at 0 are left out by the shader
 */
export function shadeHeights(field: ShadedField, present: Uint8Array | null): void {
  const { columns, rows, cellMm, heights, shade } = field;
  const radius = Math.max(1, Math.round(VALLEY_MM / cellMm));
  const mean = blurred(heights, columns, rows, radius);
  for (let row = 0; row < rows; row++) {
    const below = Math.max(0, row - 1) * columns;
    const above = Math.min(rows - 1, row + 1) * columns;
    for (let column = 0; column < columns; column++) {
      const cell = row * columns + column;
      const left = row * columns + Math.max(0, column - 1);
      const right = row * columns + Math.min(columns - 1, column + 1);
      const slopeRight = (heights[right]! - heights[left]!) / (2 * cellMm);
      const slopeAway = (heights[above + column]! - heights[below + column]!) / (2 * cellMm);
      const long = 1 / Math.sqrt(1 + slopeRight * slopeRight + slopeAway * slopeAway);
      const sunk = Math.max(0, mean[cell]! - heights[cell]!) / VALLEY_MM;
      const at = cell * 4;
      shade[at] = 127.5 - 127.5 * slopeRight * long;
      shade[at + 1] = 127.5 - 127.5 * slopeAway * long;
      shade[at + 2] = 255 * Math.max(DEEPEST, 1 - sunk * 1.5);
      shade[at + 3] = present && present[cell] === 0 ? 0 : 255;
    }
  }
}
