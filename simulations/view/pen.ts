/** A canvas 2-D context, on a page or off it. */
export type Pen = CanvasRenderingContext2D | OffscreenCanvasRenderingContext2D;

/**
 * The pen of a still drawing, worked by the processor: it is done at once, where the graphics would first finish the
 * pictures they have in hand, and the page would wait for them.
 * @returns null where the browser gives none
 */
export const penOf = (canvas: HTMLCanvasElement): CanvasRenderingContext2D | null =>
  canvas.getContext('2d', { willReadFrequently: true });
