/** Ease in and out: slow at both ends, as a hand moves a tile. */
export const eased = (share: number): number => share * share * (3 - 2 * share);

/**
 * A step for `Stage.animate` that runs `draw` from 0 to 1 over a time, eased.
 * @param lastsMs 0 goes straight to the end (readers who want no motion)
 */
export function tween(lastsMs: number, draw: (share: number) => void, done?: () => void): (now: number) => boolean {
  let from: number | null = null;
  let stopped = false;
  const step = (now: number): boolean => {
    if (stopped) return false;
    from ??= now;
    const share = lastsMs <= 0 ? 1 : Math.min(1, (now - from) / lastsMs);
    draw(eased(share));
    if (share < 1) return true;
    stopped = true;
    done?.();
    return false;
  };
  return step;
}
