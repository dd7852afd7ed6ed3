/** How much work a picture costs. Chosen by measuring, never by asking what machine it is. */
export interface Quality {
  name: 'light' | 'plain' | 'fine';
  /** Most device pixels to a CSS pixel, at rest and while something moves. */
  pixelRatio: number;
  movingRatio: number;
  /** Side of the shadow map, texels. */
  shadowTexels: number;
  /** Blur of a shadow's edge, texels: a coarse map shows its grain when blurred far. */
  shadowBlur: number;
  /** Most vertices in one bed's mesh. */
  vertices: number;
  /** Longest side of a painted back, texels. */
  paintTexels: number;
  /** Sand in the surface. */
  grain: boolean;
  /** Window and wall mirrored in what is wet. */
  reflections: boolean;
  /** A picture must take less than this, ms, for the next setting up to be tried. */
  upgradeUnderMs: number;
}

/**
 * A setting is kept where a picture takes no longer than this, ms: 60 pictures a second leave 16.7 ms, of which the script
 * may take 4 (`npm run bench` holds it to that).
 */
export const KEPT_UP_TO_MS = 12;

export const QUALITIES: readonly Quality[] = [
  {
    name: 'light',
    pixelRatio: 1,
    movingRatio: 0.7,
    shadowTexels: 768,
    shadowBlur: 1,
    vertices: 32_000,
    paintTexels: 640,
    grain: false,
    reflections: false,
    upgradeUnderMs: 9,
  },
  {
    name: 'plain',
    pixelRatio: 1.5,
    movingRatio: 1.5,
    shadowTexels: 1536,
    shadowBlur: 1.4,
    vertices: 60_000,
    paintTexels: 1024,
    grain: true,
    reflections: true,
    upgradeUnderMs: 9,
  },
  {
    name: 'fine',
    pixelRatio: 2,
    movingRatio: 2,
    shadowTexels: 3072,
    shadowBlur: 2.4,
    vertices: 240_000,
    paintTexels: 1024,
    grain: true,
    reflections: true,
    upgradeUnderMs: 0,
  },
];

/** Pixels drawn for a CSS pixel at rest where edges are not smoothed: brought down to the screen's they look smooth too. */
const UNSMOOTHED_RATIO = 1.5;

/**
 * Device pixels to a CSS pixel.
 * @param screen how many the screen has
 * @param smooth the graphics smooth edges, which a processor that draws by itself has no time for
 */
export function pixelRatio(quality: Quality, { screen, smooth, moving }: PixelsFor): number {
  const still = smooth ? Math.min(screen, quality.pixelRatio) : UNSMOOTHED_RATIO;
  return moving ? Math.min(still, quality.movingRatio) : still;
}

interface PixelsFor {
  screen: number;
  smooth: boolean;
  moving: boolean;
}

/**
 * The setting to use next: the first is the cheapest, so a slow machine never draws a costly picture to find out. One that
 * was tried and is too slow for 60 pictures a second is left again for the one below.
 * @param at the setting measured
 * @param tookMs the time one picture took with it, finished by the graphics
 */
export const nextQuality = (at: Quality, tookMs: number): Quality => {
  if (tookMs > KEPT_UP_TO_MS) return lowerQuality(at);
  const up = QUALITIES[QUALITIES.indexOf(at) + 1];
  return up && tookMs < at.upgradeUnderMs ? up : at;
};

/** Edges are smoothed where the graphics fill their test squares in less than this, ms. */
export const SMOOTH_UNDER_MS = 3;

/** Whether one setting costs less than another. */
export const isLower = (one: Quality, other: Quality): boolean => QUALITIES.indexOf(one) < QUALITIES.indexOf(other);

/** The setting below, or the same where there is none. */
export const lowerQuality = (at: Quality): Quality => QUALITIES[QUALITIES.indexOf(at) - 1] ?? at;

/**
 * A moving picture that comes later than this after the last, ms, is slow: where the graphics were waited for (a screen of
 * 60 pictures a second then left one out), and where it was something else of the page. So many are too slow.
 */
const SLOW_MS = { waited: 25, other: 50 };
const SLOW_IN_ALL = 6;
/** Slow pictures that one quick picture makes up for: a single hitch is none of the setting's. */
const MADE_UP = 2;

/**
 * Watches the pace of pictures while something moves; what is slow adds up over several motions, since one ends soon.
 * @returns a step to call for each picture with its time, ms, or with null at rest, and whether it had to wait for the
 * graphics to finish another; true when the setting must go down
 */
export function paceWatch(): (now: number | null, waited: boolean) => boolean {
  let last: number | null = null;
  let slow = 0;
  return (now, waited) => {
    const mostMs = waited ? SLOW_MS.waited : SLOW_MS.other;
    if (now !== null && last !== null) slow = now - last > mostMs ? slow + 1 : Math.max(0, slow - MADE_UP);
    last = now;
    if (slow < SLOW_IN_ALL) return false;
    slow = 0;
    return true;
  };
}

/** Cells between vertices that keep a mesh within a setting's budget; never so coarse that a ridge is lost. */
export const strideFor = (quality: Quality, cells: number): number =>
  Math.max(1, Math.min(2, Math.ceil(Math.sqrt(cells / quality.vertices))));
