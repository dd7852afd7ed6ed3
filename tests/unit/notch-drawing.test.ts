import { describe, expect, it } from 'vitest';

import { commonNotches } from '@sim/trowel/common-notches.ts';
import { meanBedMm, ridgeAreaMm2 } from '@sim/trowel/notch.ts';
import { notchById } from '@site/lessons/worked/notch.ts';
import { drawNotch } from '@site/islands/figures/notch-drawing.ts';

/** Area of closed straight-sided paths, in drawing units squared. */
function area(path: string): number {
  return path
    .split('z')
    .filter((part) => part !== '')
    .map((part) =>
      part
        .slice(1)
        .split('L')
        .map((pair) => pair.split(' ').map(Number) as [number, number]),
    )
    .reduce((sum, points) => {
      const twice = points.reduce((s, [x, y], i) => {
        const [nx, ny] = points[(i + 1) % points.length] as [number, number];
        return s + x * ny - nx * y;
      }, 0);
      return sum + Math.abs(twice) / 2;
    }, 0);
}
const PER_MM2 = 36;

describe('the notch drawing is to scale', () => {
  it.each(commonNotches.map((one) => [one.label, one] as const))(
    '%s: ridges have the area the notch leaves',
    (_, one) => {
      const trowel = { ...one, angleDeg: 60, wearMm: 0 };
      const drawing = drawNotch(trowel, 2.4);
      const ridges = drawing.ridges.split('z').length - 1;
      expect(area(drawing.ridges) / PER_MM2 / ridges / ridgeAreaMm2(trowel)).toBeCloseTo(1, 1.5);
    },
  );

  it('draws the two equal pairs with beds of one height', () => {
    const height = (id: string): number => {
      const drawing = drawNotch({ ...notchById(id), angleDeg: 60, wearMm: 0 }, 2.4);
      const top = Number(/V([\d.]+)H/.exec(drawing.bed)?.[1]);
      return drawing.floorY - top;
    };
    // Arithmetic of the trade: ½ · 3/16 on both, and ½ · 1/2 on both, times the sine of the angle.
    expect(height('1-4-3-16-in-v')).toBeCloseTo(height('3-16-3-16-in-square'), 1);
    expect(height('1-4-1-2-in-square')).toBeCloseTo(height('1-2-1-2-in-square'), 1);
    expect(height('1-2-1-2-in-square') / 6).toBeCloseTo(
      meanBedMm({ ...notchById('1-2-1-2-in-square'), angleDeg: 60, wearMm: 0 }),
      1,
    );
  });

  it('opens a worn notch at the worn edge and marks what is gone', () => {
    const drawing = drawNotch({ ...notchById('1-4-1-4-in-square'), angleDeg: 45, wearMm: 1.5 }, 2.4);
    expect(drawing.worn).not.toBe('');
    expect(drawing.blade).not.toMatch(/NaN/);
  });
});
