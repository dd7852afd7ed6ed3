import { penOf } from '@sim/view/pen.ts';

/** What a drawing gets: the pen and the canvas's size, device pixels; `scale` is device pixels to a CSS pixel. */
export interface Sheet {
  pen: CanvasRenderingContext2D;
  width: number;
  height: number;
  scale: number;
}

/** What is out of sight waits for the hand to rest, ms. */
const LATER_MS = 250;

const inSight = (canvas: HTMLCanvasElement): boolean => {
  const { top, bottom } = canvas.getBoundingClientRect();
  return bottom > 0 && top < innerHeight;
};

/** Keeps a canvas as sharp as the screen. */
export function sharpCanvas(canvas: HTMLCanvasElement): {
  /** The pen, and the canvas brought to its size on the screen. */
  sheet: () => Sheet | null;
  /**
   * Draws with the page's next picture and whenever the size changes; out of sight a little later, so that what is in
   * sight is not kept waiting. Called inside an effect, so that of changes in quick succession only the last is drawn.
   * @returns what ends it
   */
  drawn: (draw: () => void) => () => void;
} {
  const pen = penOf(canvas);
  return {
    sheet: () => {
      if (!pen) return null;
      const scale = Math.min(2, globalThis.devicePixelRatio || 1);
      const width = Math.max(1, Math.round(canvas.clientWidth * scale));
      const height = Math.max(1, Math.round(canvas.clientHeight * scale));
      if (canvas.width !== width) canvas.width = width;
      if (canvas.height !== height) canvas.height = height;
      return { pen, width, height, scale };
    },
    drawn: (draw) => {
      // An observer reports once when it begins, and then each change.
      let later: ReturnType<typeof setTimeout> | undefined;
      const watch = new ResizeObserver(() => {
        clearTimeout(later);
        if (inSight(canvas)) draw();
        else later = setTimeout(draw, LATER_MS);
      });
      watch.observe(canvas);
      return () => {
        clearTimeout(later);
        watch.disconnect();
      };
    },
  };
}
