import { lowerQuality, nextQuality, paceWatch, QUALITIES } from '@sim/view/scene/quality.ts';
import { describe, expect, test } from 'vitest';

const [light, plain, fine] = QUALITIES as [(typeof QUALITIES)[0], (typeof QUALITIES)[0], (typeof QUALITIES)[0]];

describe('how well a picture is drawn', () => {
  test('goes up by one setting while a picture is quick, and stays where it is not', () => {
    expect(nextQuality(light, 4)).toBe(plain);
    expect(nextQuality(plain, 4)).toBe(fine);
    expect(nextQuality(fine, 4)).toBe(fine);
    expect(nextQuality(light, 30)).toBe(light);
    expect(lowerQuality(fine)).toBe(plain);
    expect(lowerQuality(light)).toBe(light);
  });

  test('goes down after slow pictures in a row while something moves; rests and single hitches do not count', () => {
    const pace = paceWatch();
    const run = (steps: (number | null)[]): boolean[] => {
      let now = 0;
      return steps.map((step) => pace(step === null ? null : (now += step)));
    };
    expect(run(Array.from({ length: 60 }, () => 16))).not.toContain(true);
    expect(run(Array.from({ length: 30 }, (_, n) => (n % 5 === 0 ? 200 : 16)))).not.toContain(true);
    expect(run([...Array.from({ length: 5 }, () => 120), null, ...Array.from({ length: 5 }, () => 120)])).not.toContain(
      true,
    );
    expect(run(Array.from({ length: 8 }, () => 120))).toContain(true);
  });
});
