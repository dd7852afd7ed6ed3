/** The part of a picture in which one bed is drawn, from its lower left corner, CSS pixels. */
export interface Pane {
  x: number;
  y: number;
  wide: number;
  high: number;
}

/**
 * Panes for so many beds in order: from left to right, or from top to bottom where the picture is taller than wide.
 * @param wide high the picture, CSS pixels
 */
export function panesOf(wide: number, high: number, beds: number): Pane[] {
  const count = Math.max(1, beds);
  const tall = high > wide;
  const pane = { wide: tall ? wide : wide / count, high: tall ? high / count : high };
  return Array.from({ length: count }, (_, n) => ({
    x: tall ? 0 : n * pane.wide,
    y: tall ? (count - 1 - n) * pane.high : 0,
    ...pane,
  }));
}

/**
 * Where in its pane a point of the picture lies, as shares from the left and from the top.
 * @param across down the point, CSS pixels from the picture's upper left corner
 */
export function placeInPane(across: number, down: number, { wide, high }: Pane): [number, number] {
  return [(across / wide) % 1, (down / high) % 1];
}
