import type { ViewPalette } from '@sim/view/palette.ts';
import type { BenchView, BenchViewHooks } from '@sim/view/scene/bench-view.ts';

/**
 * Fetches what draws the bench in three dimensions and opens it on a canvas; the graphics are timed while it comes.
 * Fails where there is no WebGL 2.
 */
export async function openView(
  canvas: HTMLCanvasElement,
  palette: ViewPalette,
  hooks: BenchViewHooks,
): Promise<BenchView> {
  const [{ openBenchView }, took] = await Promise.all([
    import('@sim/view/scene/bench-view.ts'),
    import('@sim/view/scene/fill-speed.ts').then(({ fillMs }) => fillMs()),
  ]);
  return openBenchView(canvas, palette, hooks, took);
}
