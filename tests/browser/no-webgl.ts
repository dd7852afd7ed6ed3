import type { Page } from '@playwright/test';

/** A browser without WebGL, for the flat pictures, or for what has nothing to do with the picture in depth. */
export const withoutWebGl = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    const { getContext } = HTMLCanvasElement.prototype;
    const flat = function (this: HTMLCanvasElement, kind: string, ...rest: unknown[]): unknown {
      return kind.startsWith('webgl') ? null : Reflect.apply(getContext, this, [kind, ...rest]);
    };
    HTMLCanvasElement.prototype.getContext = flat as typeof getContext;
  });
