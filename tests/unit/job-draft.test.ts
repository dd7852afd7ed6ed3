import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { AREA_BOXES, JOB_BOXES } from '@site/islands/job/catalogue.ts';
import {
  addArea,
  duplicateArea,
  freshDraft,
  moveArea,
  MOST_AREAS,
  removeArea,
  setAreaBoxes,
  setJobBox,
} from '@site/islands/job/draft.ts';
import { change, redo, startHistory, undo } from '@site/islands/job/history.ts';
import { keepDraft, keptDraft } from '@site/islands/job/keep.ts';
import { readBox } from '@site/islands/job/read-box.ts';
import { readNumber } from '@site/islands/job/read-number.ts';
import { switchUnits } from '@site/islands/job/switch-units.ts';
import { placeOf, readForm } from '@site/islands/job/to-job.ts';

const valueOf = (box: keyof typeof AREA_BOXES, text: string, units: 'imperial' | 'metric') => {
  const reading = readBox(AREA_BOXES[box], text, units);
  return reading.state === 'read' ? reading.value : reading;
};

describe('a box is read as a person types', () => {
  test('lengths take the unit written, else the box’s own', () => {
    expect(valueOf('joint', '1/8', 'imperial')).toBeCloseTo(3.175, 10);
    expect(valueOf('joint', '1/8 in', 'metric')).toBeCloseTo(3.175, 10);
    expect(valueOf('joint', '3,2', 'metric')).toBeCloseTo(3.2, 10);
    expect(valueOf('flatnessOver', '10', 'imperial')).toBeCloseTo(3048, 8);
    expect(valueOf('flatnessOver', '3', 'metric')).toBe(3000);
  });
  test('areas are numbers with a unit, or the two sides of a room', () => {
    expect(valueOf('area', '120', 'imperial')).toBeCloseTo(11.1484, 4);
    expect(valueOf('area', '120 sq ft', 'metric')).toBeCloseTo(11.1484, 4);
    expect(valueOf('area', '11,5 m²', 'imperial')).toBeCloseTo(11.5, 10);
    expect(valueOf('area', '10 x 12', 'imperial')).toBeCloseTo(11.1484, 4);
    expect(valueOf('area', '3 m × 4', 'metric')).toBeCloseTo(12, 10);
    for (const text of ['120 square feet', '120 sq. ft', '10 by 12', `10' x 12'`, `12'0" x 10'`, '120 ft^2'])
      expect(valueOf('area', text, 'imperial'), text).toBeCloseTo(11.1484, 4);
    expect(valueOf('area', '11 square metres', 'imperial')).toBe(11);
  });
  test('shares are percentages or fractions', () => {
    expect(valueOf('offset', '33', 'metric')).toBeCloseTo(0.33, 10);
    expect(valueOf('offset', '1/3', 'metric')).toBeCloseTo(1 / 3, 10);
    expect(valueOf('offset', '50 %', 'metric')).toBeCloseTo(0.5, 10);
    expect(valueOf('offset', '0.33', 'metric')).toBeCloseTo(0.33, 10);
    expect(valueOf('offset', '0.5 %', 'metric')).toBeCloseTo(0.005, 10);
  });
  test('every whole number is read in every box that takes numbers, its unit written or not', () => {
    const boxes = [
      [AREA_BOXES.area, ['', ' ft²', ' m2', ' sq ft']],
      [AREA_BOXES.joint, ['', ' in', ' mm']],
      [AREA_BOXES.offset, ['', ' %']],
      [JOB_BOXES.bag, ['', ' lb', ' kg']],
      [JOB_BOXES.temperature, ['', ' °F', 'C']],
      [JOB_BOXES.pace, ['']],
    ] as const;
    for (const [box, unitsOfIt] of boxes)
      for (const unit of unitsOfIt)
        for (let whole = 1; whole <= 130; whole += 1)
          for (const units of ['imperial', 'metric'] as const)
            expect(readBox(box, `${whole}${unit}`, units).state, `${box.path}: ${whole}${unit}`).toBe('read');
  });
  test('what cannot be understood is said, never guessed', () => {
    for (const text of ['abc', '12 parsecs', '1/0', '--3', 'NaN', '1e3', '<b>', '=1+1'])
      expect(readBox(AREA_BOXES.joint, text, 'metric').state).toBe('misread');
    expect(readNumber('1,200')).toEqual({ ok: false, why: 'comma' });
    expect(readBox(AREA_BOXES.area, '1,200', 'imperial')).toEqual({ state: 'misread', why: 'comma' });
    expect(readBox(AREA_BOXES.surface, 'ceiling', 'metric')).toEqual({ state: 'misread', why: 'choice' });
  });
  test('a minus sign is kept for the core to refuse', () => {
    expect(valueOf('joint', '-3', 'metric')).toBe(-3);
  });
});

describe('the form becomes a job', () => {
  test('empty boxes are left to the core; a box not understood is listed, its neighbours still count', () => {
    const draft = setAreaBoxes(freshDraft('metric'), 1, { joint: 'wide', bow: '' });
    const { job, misread } = readForm(draft);
    expect(misread).toEqual([{ area: 1, box: 'joint', why: 'length' }]);
    expect(job).toMatchObject({ standards: 'iso-en', areas: [{ tile: { lengthMm: 600, widthMm: 300 } }] });
    expect(job).not.toHaveProperty('areas[0].tile.measuredBowMm');
    expect(job).not.toHaveProperty('areas[0].jointMm');
  });
  test('a fault of the core finds its box', () => {
    const draft = addArea(freshDraft('metric'));
    expect(placeOf(draft, 'areas[1].tile.lengthMm')).toEqual({ area: 2, box: 'length' });
    expect(placeOf(draft, 'crew.minPerTile')).toEqual({ area: null, box: 'pace' });
    expect(placeOf(draft, 'areas[7].jointMm')).toBeNull();
  });
});

describe('areas', () => {
  test('are copied, moved and taken away; the last one stays', () => {
    let draft = duplicateArea(setAreaBoxes(freshDraft('metric'), 1, { name: 'Hall' }), 1, (name) => `${name} copy`);
    draft = addArea(draft);
    expect(draft.areas.map((area) => area.id)).toEqual([1, 2, 3]);
    expect(draft.areas[1]?.boxes.name).toBe('Hall copy');
    expect(moveArea(draft, 3, -2).areas.map((area) => area.id)).toEqual([3, 1, 2]);
    expect(moveArea(draft, 3, 1)).toBe(draft);
    draft = removeArea(removeArea(draft, 1), 3);
    expect(removeArea(draft, 2).areas).toHaveLength(1);
  });
  test('are at most twenty', () => {
    let draft = freshDraft('metric');
    for (let more = 0; more < MOST_AREAS + 5; more++) draft = addArea(draft);
    expect(draft.areas).toHaveLength(MOST_AREAS);
    expect(duplicateArea(draft, 1, (name) => name)).toBe(draft);
  });
});

describe('the units can be switched at any time', () => {
  test('what was typed keeps its exact meaning, start values become the usual ones', () => {
    const typed = setAreaBoxes(freshDraft('imperial'), 1, { joint: '1/8', area: '10 x 12', width: 'oops' });
    const metric = switchUnits(typed, 'metric');
    expect(metric.areas[0]?.boxes).toMatchObject({
      joint: '1/8 in',
      area: '10 ft × 12 ft',
      length: '600',
      width: 'oops',
    });
  });
  test('a length typed in one system has the same value in the other', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 96 }), fc.constantFrom('joint', 'length', 'flatnessOver'), (parts, box) => {
        const id = box as 'joint';
        const typed = setAreaBoxes(freshDraft('imperial'), 1, { [id]: `${parts}/32` });
        const other = switchUnits(typed, 'metric');
        const same = readBox(AREA_BOXES[id], other.areas[0]?.boxes[id] ?? '', 'metric');
        expect(same).toEqual(readBox(AREA_BOXES[id], `${parts}/32`, 'imperial'));
      }),
    );
  });
});

describe('undo and redo', () => {
  test('a word typed letter by letter is one step', () => {
    let history = startHistory('');
    for (const text of ['H', 'Ha', 'Hall']) history = change(history, text, 'name');
    history = change(history, 'Hall!', 'other');
    expect(undo(history).present).toBe('Hall');
    expect(undo(undo(history)).present).toBe('');
    expect(undo(undo(undo(history))).present).toBe('');
    expect(redo(redo(undo(undo(history)))).present).toBe('Hall!');
  });
  test('going back as often as forward ends where one was', () => {
    fc.assert(
      fc.property(fc.array(fc.integer(), { maxLength: 30 }), fc.nat(30), (steps, back) => {
        let history = startHistory(0);
        for (const step of steps) history = change(history, step);
        const end = history.present;
        for (let k = 0; k < back; k++) history = undo(history);
        for (let k = 0; k < back; k++) history = redo(history);
        expect(history.present).toBe(end);
      }),
    );
  });
});

describe('keeping', () => {
  const shelfOf = (kept: Map<string, string>) => ({
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
    removeItem: (key: string) => void kept.delete(key),
  });
  test('what was typed, refused text included, comes back', () => {
    const kept = new Map<string, string>();
    const draft = setJobBox(setAreaBoxes(freshDraft('imperial'), 1, { joint: 'wide "?' }), 'price', '12,5');
    expect(keepDraft(shelfOf(kept), draft)).toBe(true);
    expect(keptDraft(shelfOf(kept))).toEqual(draft);
  });
  test('a full or forbidden shelf is said, a damaged one is passed over', () => {
    const full = {
      ...shelfOf(new Map()),
      setItem: () => {
        throw new Error('QuotaExceededError');
      },
    };
    expect(keepDraft(full, freshDraft('metric'))).toBe(false);
    expect(keepDraft(null, freshDraft('metric'))).toBe(false);
    expect(keptDraft(shelfOf(new Map([['ridge-to-bed.job', '{"version":9}']])))).toBeNull();
    expect(keptDraft(shelfOf(new Map([['ridge-to-bed.job', 'not json']])))).toBeNull();
  });
});
