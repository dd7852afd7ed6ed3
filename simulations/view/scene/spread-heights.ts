/**
 * Heights for a mesh whose vertices stand two cells apart: each is the mean of the cells round it (a tent of 1, 2, 1 along
 * either axis), so that a ridge's wall stands where it is on the whole. Read off at every second cell alone, a wall aslant
 * to the grid would jump from vertex to vertex like the teeth of a saw.
 * @param heights mm, row by row
 * @param into as many, overwritten
 */
export function spreadHeights(heights: Float32Array, columns: number, rows: number, into: Float32Array): void {
  const along = new Float32Array(heights.length);
  for (let row = 0; row < rows; row += 1) {
    const start = row * columns;
    for (let column = 0; column < columns; column += 1) {
      const left = heights[start + Math.max(0, column - 1)]!;
      const right = heights[start + Math.min(columns - 1, column + 1)]!;
      along[start + column] = 0.25 * left + 0.5 * heights[start + column]! + 0.25 * right;
    }
  }
  for (let row = 0; row < rows; row += 1) {
    const below = Math.max(0, row - 1) * columns;
    const above = Math.min(rows - 1, row + 1) * columns;
    for (let column = 0; column < columns; column += 1) {
      const here = along[row * columns + column]!;
      into[row * columns + column] = 0.25 * along[below + column]! + 0.5 * here + 0.25 * along[above + column]!;
    }
  }
}
