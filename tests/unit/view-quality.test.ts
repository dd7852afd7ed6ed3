import { isLower, lowerQuality, nextQuality, paceWatch, pixelRatio, QUALITIES } from '@sim/view/scene/quality.ts';
import { describe, expect, test } from 'vitest';

const [light, plain, fine] = QUALITIES as [(typeof QUALITIES)[0], (typeof QUALITIES)[0], (typeof QUALITIES)[0]];

/** What the watch says for pictures so many ms apart (null: at rest), which waited for the graphics or not. */
function paceOver(steps: (number | null)[], waited = false): boolean[] {
  const pace = paceWatch();
  let now = 0;
  return steps.map((step) => pace(step === null ? null : (now += step), waited));
}

describe('how well a picture is drawn', () => {
  test('goes up by one setting while a picture is quick, and stays where it is not', () => {
    expect(nextQuality(light, 4)).toBe(plain);
    expect(nextQuality(plain, 4)).toBe(fine);
    expect(nextQuality(fine, 4)).toBe(fine);
    expect(nextQuality(light, 30)).toBe(light);
    expect(nextQuality(plain, 11)).toBe(plain);
    expect(nextQuality(fine, 11)).toBe(fine);
    expect(lowerQuality(fine)).toBe(plain);
    expect(lowerQuality(light)).toBe(light);
  });

  test('is left again for the one below where 60 pictures a second are too many for it', () => {
    expect(nextQuality(plain, 14)).toBe(light);
    expect(nextQuality(fine, 14)).toBe(plain);
    expect(isLower(plain, fine)).toBe(true);
    expect(isLower(fine, fine)).toBe(false);
  });

  test('ends at one that a card of any speed draws 60 times a second, where there is one', () => {
    // What a picture takes goes up from setting to setting, by as much as it may.
    for (let cardMs = 0.5; cardMs < 12; cardMs *= 1.3)
      for (const dearer of [1, 1.5, 3, 6]) {
        const takes = (at: typeof light): number => cardMs * dearer ** QUALITIES.indexOf(at);
        let at = light;
        for (let next = nextQuality(at, takes(at)); next !== at; next = nextQuality(at, takes(at))) {
          const down = isLower(next, at);
          at = next;
          if (down) break;
        }
        expect(takes(at), `${cardMs} ms, ${dearer} times dearer`).toBeLessThanOrEqual(1000 / 60 - 4);
      }
  });

  test('has as many pixels as the screen, fewer while something moves slowly, and more where edges are not smoothed', () => {
    const at = (quality: typeof light, screen: number, smooth: boolean, moving: boolean): number =>
      pixelRatio(quality, { screen, smooth, moving });
    expect(at(fine, 1, true, false)).toBe(1);
    expect(at(fine, 3, true, true)).toBe(2);
    expect(at(plain, 2, true, true)).toBe(1.5);
    for (const screen of [1, 2]) {
      expect(at(light, screen, true, false)).toBe(1);
      expect(at(light, screen, true, true)).toBeLessThan(1);
      expect(at(light, screen, false, true)).toBe(at(light, screen, true, true));
      expect(at(light, screen, false, false)).toBeGreaterThan(1);
    }
  });

  test('goes down after slow pictures in a row while something moves; rests and single hitches do not count', () => {
    expect(paceOver(Array.from({ length: 60 }, () => 16))).not.toContain(true);
    expect(paceOver(Array.from({ length: 30 }, (_, n) => (n % 5 === 0 ? 200 : 16)))).not.toContain(true);
    // Two short motions with a rest between: time at rest is not slow, what was slow in both counts.
    const motion = Array.from({ length: 5 }, () => 120);
    expect(paceOver([60_000, null, 60_000, null])).not.toContain(true);
    expect(paceOver(motion)).not.toContain(true);
    expect(paceOver([...motion, null, ...motion])).toContain(true);
    expect(paceOver(Array.from({ length: 8 }, () => 120))).toContain(true);
  });

  test('goes down where the graphics are waited for and a screen of 60 pictures a second shows 30, not where the page had other work', () => {
    const thirty = Array.from({ length: 30 }, () => 33);
    expect(paceOver(thirty, true)).toContain(true);
    expect(paceOver(thirty, false)).not.toContain(true);
    // A screen of 120 that leaves one out still shows 60.
    expect(
      paceOver(
        Array.from({ length: 60 }, () => 17),
        true,
      ),
    ).not.toContain(true);
    // Two of three in time.
    expect(
      paceOver(
        Array.from({ length: 60 }, (_, n) => (n % 3 === 0 ? 33 : 17)),
        true,
      ),
    ).not.toContain(true);
  });
});
