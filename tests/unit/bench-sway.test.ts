import { defaultActions, defaultSetup } from '@sim/bed/defaults.ts';
import { LIGHT_PALETTE } from '@sim/view/palette.ts';
import { pocketSpot } from '@sim/view/map/mark-pockets.ts';
import { makeAirColumns } from '@sim/view/scene/air-columns.ts';
import { pocketRows } from '@sim/view/shut-in.ts';
import { AT_REST, swayOf } from '@site/islands/bench/sway.ts';
import { Box3, type InstancedMesh } from 'three';
import { describe, expect, test } from 'vitest';

import { drawnFrame } from './view-frames.ts';

const pocket = { xMm: 1, yMm: -0.5, areaMm2: 314.159, gaugePa: 2500 };

describe('the tile while it is worked', () => {
  const frames = [-1, 0, 0, 0, 0, 1, 1, 1].map((action) => drawnFrame(['bb', 'bb'], { action }));
  const setup = {
    ...defaultSetup(),
    actions: [{ ...defaultActions.twist, angleDeg: 2, strokes: 1 }, defaultActions.vibrate],
  };

  test('a twist turns it by its own angle at the most and brings it back; vibration shakes it to and fro', () => {
    const sways = frames.map((_, at) => swayOf(frames, at, setup));
    expect(sways[0]).toEqual(AT_REST);
    // One stroke in four pictures: a quarter, half (the whole angle), three quarters, back.
    expect(sways[2]!.turnDeg).toBeCloseTo(2, 9);
    expect(sways[1]!.turnDeg).toBeCloseTo(2 * Math.SQRT1_2, 9);
    expect(sways[4]).toEqual(AT_REST);
    expect(sways[5]!.shiftMm).toBe(-sways[6]!.shiftMm);
    expect(sways[7]).toEqual(AT_REST);
  });

  test('a push and a slide are not swayed: their place is the solver’s', () => {
    const pushed = { ...setup, actions: [defaultActions.press, defaultActions.slide] };
    expect(frames.map((_, at) => swayOf(frames, at, pushed))).toEqual(frames.map(() => AT_REST));
  });
});

describe('shut-in air', () => {
  test('is told by place from the tile’s own edges, area and pressure (0.363 psi are 2.5 kPa)', () => {
    const tile = { ...defaultSetup().tile, lengthMm: 100, widthMm: 60 };
    expect(pocketRows([pocket], tile, 'metric')).toEqual([
      { number: 1, fromLeft: '51 mm', fromNear: '29.5 mm', area: '3.1 cm²', pressure: '2.5 kPa' },
    ]);
    expect(pocketRows([pocket], tile, 'imperial')[0]?.pressure).toBe('0.36 psi');
  });

  test('stands on the turned map where it lay: left stays left, near is on top', () => {
    const frame = drawnFrame(['bbbb', 'bbbb']);
    const middle = [frame.originMm[0] + 1.5 * frame.cellMm, frame.originMm[1] + 0.5 * frame.cellMm] as const;
    const place = { left: 10, top: 20, width: 400, height: 200 };
    const at = (x: number, y: number): number[] => pocketSpot(frame, place, { ...pocket, xMm: x, yMm: y });
    expect(at(...middle)).toEqual([210, 120]);
    const nearLeft = at(frame.originMm[0], frame.originMm[1]);
    expect(nearLeft).toEqual([60, 70]);
  });

  test('columns are as high as the pressure, 14 mm a kPa', () => {
    const columns = makeAirColumns(LIGHT_PALETTE);
    columns.show([pocket], 20);
    const box = new Box3();
    for (const mesh of columns.group.children as InstancedMesh[]) {
      mesh.computeBoundingBox();
      if (mesh.count > 0 && mesh.boundingBox) box.union(mesh.boundingBox);
    }
    expect(box.min.y).toBeCloseTo(20, 6);
    expect(box.max.y).toBeCloseTo(20 + 2.5 * 14, 6);
    columns.show([], 20);
    expect(columns.group.visible).toBe(false);
    columns.dispose();
  });
});
