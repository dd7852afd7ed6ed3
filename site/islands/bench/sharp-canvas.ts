/** What a drawing gets: the pen and the canvas's size, device pixels; `scale` is device pixels to a CSS pixel. */
export interface Sheet {
  pen: CanvasRenderingContext2D;
  width: number;
  height: number;
  scale: number;
}

/**
 * Keeps a canvas as sharp as the screen and draws again when its size or what it shows changes.
 * @param draw read inside an effect of the caller; called after each change and each resize
 * @returns `draw` for the caller's effect, and `stop`
 */
export function sharpCanvas(canvas: HTMLCanvasElement): {
  sheet: () => Sheet | null;
  onResize: (draw: () => void) => () => void;
} {
  const pen = canvas.getContext('2d');
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
    onResize: (draw) => {
      const watch = new ResizeObserver(() => draw());
      watch.observe(canvas);
      return () => watch.disconnect();
    },
  };
}
