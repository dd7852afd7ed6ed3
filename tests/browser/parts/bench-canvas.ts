import { LIGHT_PALETTE } from '@sim/view/palette.ts';
import { openBenchView } from '@sim/view/scene/bench-view.ts';

/** The bench's picture on a canvas of its own, with nobody to hear of it. */
export function benchCanvas(widthPx: number, heightPx: number): ReturnType<typeof openBenchView> {
  const canvas = document.createElement('canvas');
  canvas.style.cssText = `width: ${widthPx}px; height: ${heightPx}px`;
  document.body.append(canvas);
  const nothing = (): void => undefined;
  const hooks = { onLost: nothing, onRestored: nothing, onQuality: nothing, onHold: nothing, tool: () => null };
  return openBenchView(canvas, LIGHT_PALETTE, hooks, 0);
}
