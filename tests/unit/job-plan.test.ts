import { describe, expect, test } from 'vitest';

import { readJob } from '@sim/estimate/job.ts';
import { planJob } from '@sim/estimate/plan.ts';
import { isRuleId } from '@sim/rules/rulebook.ts';
import { commonNotches } from '@sim/trowel/common-notches.ts';
import { bladePath } from '@site/islands/job/blade.ts';
import { bagLifts, wholeBelow } from '@site/islands/job/bag-lifts.ts';
import { cautionRules } from '@site/islands/job/cautions.ts';
import { csvRows, csvText, fileName } from '@site/islands/job/csv.ts';
import { AREA_BOXES, areaBoxIds, JOB_BOXES, jobBoxIds } from '@site/islands/job/catalogue.ts';
import { addArea, freshDraft, setAreaBoxes, setJobBox, type Draft } from '@site/islands/job/draft.ts';
import { formFaults } from '@site/islands/job/faults.ts';
import { scaleBins } from '@site/islands/job/histogram.ts';
import { otherwiseOf } from '@site/islands/job/otherwise.ts';
import { planSections } from '@site/islands/job/plan-lines.ts';
import { formPaths, plannableJob } from '@site/islands/job/plannable.ts';
import { readForm } from '@site/islands/job/to-job.ts';
import { choiceWord, misreadWords } from '@site/messages/en/job.ts';
import { plan as words } from '@site/messages/en/plan.ts';

const readOf = (draft: Draft) => {
  const reading = readJob(readForm(draft).job);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.value;
};
const planOf = (draft: Draft) => {
  const { job, assumed } = readOf(draft);
  return { job, plan: planJob(job, { units: draft.units }, assumed) };
};
const faultsOf = (draft: Draft) => {
  const form = readForm(draft);
  const reading = readJob(form.job);
  return formFaults(draft, form.misread, reading.ok ? [] : reading.faults, misreadWords);
};

describe('the form and the core agree', () => {
  test('the job it opens with is one the core plans, in either system', () => {
    for (const units of ['imperial', 'metric'] as const) {
      const { plan } = planOf(freshDraft(units));
      expect(plan.areas[0]?.notch.label).not.toBe('');
      expect(plan.areas[0]?.bags.plan).toBeGreaterThan(0);
    }
  });
  test('every choice of every box is one the core knows', () => {
    for (const id of areaBoxIds)
      for (const choice of AREA_BOXES[id].choices ?? []) {
        const { job } = readForm(setAreaBoxes(freshDraft('metric'), 1, { [id]: choice }));
        expect(readJob(job).ok, `${id} ${choice}`).toBe(true);
        expect(choiceWord(id, choice), `${id} has words for ${choice}`).not.toBe(choice);
      }
    for (const id of jobBoxIds)
      for (const choice of JOB_BOXES[id].choices ?? [])
        expect(choiceWord(id, choice), `${id} has words for ${choice}`).not.toBe(choice);
  });
  test('every field of the core has a box', () => {
    // Each default taken is noted by its path, so that the core itself lists its fields.
    const { assumed } = readOf(freshDraft('metric'));
    const { area, job } = formPaths();
    for (const path of Object.keys(assumed)) {
      const inArea = /^areas\[0\]\.(.*)$/.exec(path);
      expect(inArea ? area : job, path).toContain(inArea?.[1] ?? path);
    }
  });
  test('a default is shown beside the empty box it stands in for', () => {
    const draft = freshDraft('imperial');
    const { assumed } = readOf(draft);
    const shown = otherwiseOf(draft, assumed, choiceWord);
    expect(shown.job.bag).toBe('50 lb');
    expect(shown.job.temperature).toBe('70 °F');
    expect(shown.job.wind).toBe('Still');
    expect(shown.areas[1]?.flatnessOver).toBe('120 in');
  });
});

describe('a refused box', () => {
  test('leaves its own area out and the others in', () => {
    const draft = setAreaBoxes(addArea(freshDraft('metric')), 2, { joint: '-4' });
    const faults = faultsOf(draft);
    expect(faults.areas).toEqual({ 2: { joint: 'Give a number from 0 mm to 50 mm.' } });
    const plannable = plannableJob(draft, readForm(draft).job, faults);
    expect(plannable?.job['areas']).toHaveLength(1);
    expect(readJob(plannable?.job).ok).toBe(true);
  });
  test('speaks in the reader’s units', () => {
    const draft = setAreaBoxes(freshDraft('imperial'), 1, { thickness: '40' });
    expect(faultsOf(draft).areas[1]?.thickness).toMatch(/^Give a number from 3\/32 in to 2 .*in\.$/);
  });
  test('of the job is left out by itself, a maker’s notch as a whole', () => {
    const draft = setJobBox(setJobBox(freshDraft('metric'), 'makerShape', 'square'), 'waste', '500');
    const faults = faultsOf(draft);
    expect(Object.keys(faults.job).sort()).toEqual(['makerDepth', 'makerWidth', 'waste']);
    const plannable = plannableJob(draft, readForm(draft).job, faults);
    expect(readJob(plannable?.job).ok).toBe(true);
    expect(plannable?.job).not.toHaveProperty('wasteShare');
  });
  test('in every area leaves nothing to plan', () => {
    const draft = setAreaBoxes(freshDraft('metric'), 1, { area: '' });
    expect(plannableJob(draft, readForm(draft).job, faultsOf(draft))).toBeNull();
  });
});

describe('the lines of a plan', () => {
  const drafts = [
    freshDraft('imperial'),
    setAreaBoxes(freshDraft('metric'), 1, { material: 'glass', surface: 'wall', exposure: 'interior-wet' }),
    setAreaBoxes(freshDraft('imperial'), 1, { membrane: 'heated-mat', length: '48', width: '24', pattern: 'grid' }),
    setAreaBoxes(freshDraft('imperial'), 1, { material: 'mosaic', piece: '1', length: '12' }),
  ];
  test('each name a rule, or the rules that were weighed', () => {
    for (const draft of drafts) {
      const { plan } = planOf(draft);
      for (const area of plan.areas)
        for (const { lines } of planSections(area, draft.units, words))
          for (const line of lines) {
            expect(line.value, line.id).not.toMatch(/NaN|undefined|Infinity|^$/);
            expect(line.rules.length + (line.decision?.trace.length ?? 0), line.id).toBeGreaterThan(0);
            for (const rule of line.rules) expect(isRuleId(rule)).toBe(true);
          }
    }
  });
  test('become a table whose cells no spreadsheet takes for a formula', async () => {
    const draft = setAreaBoxes(freshDraft('metric'), 1, { name: '=1+1' });
    const text = await csvText(csvRows(planOf(draft).plan, 'metric', words));
    expect(text.startsWith('\uFEFF')).toBe(true);
    expect(text).toContain("'=1+1");
    expect(text).not.toMatch(/(^|,)"?[=+@]/m);
  });
});

describe('cautions', () => {
  test('come with the job that brings them', () => {
    const plain = planOf(freshDraft('imperial'));
    expect(cautionRules(plain.job, plain.plan)).toEqual(
      expect.arrayContaining(['safety.silica', 'safety.cement', 'safety.saw']),
    );
    expect(cautionRules(plain.job, plain.plan)).not.toContain('safety.heat');
    const heated = planOf(setAreaBoxes(freshDraft('metric'), 1, { membrane: 'heated-mat' }));
    expect(cautionRules(heated.job, heated.plan)).toEqual(expect.arrayContaining(['safety.heat', 'safety.chromium']));
  });
  test('weigh the bag against the lifting equation', () => {
    // NIOSH 94-110: 51 lb in the best place; from the floor the height factor is 0.775, so 39.5 lb.
    const pounds = bagLifts(22.68).map(({ lift, limitKg, over }) => [
      lift,
      Math.round((limitKg / 0.45359237) * 10) / 10,
      over,
    ]);
    expect(pounds[0]).toEqual(['best', 51, false]);
    expect(pounds[1]).toEqual(['floor', 39.5, true]);
    // Shown whole and never above: 39.5 lb off the floor is 39, 17.9 kg is 17.
    expect(bagLifts(22.68).map(({ limitKg }) => Math.round(wholeBelow(limitKg, 'imperial') / 0.45359237))).toEqual([
      51, 39, 34, 29,
    ]);
    expect(bagLifts(25).map(({ limitKg }) => wholeBelow(limitKg, 'metric'))).toEqual([23, 17, 15, 13]);
    expect(bagLifts(10).every(({ over }) => !over)).toBe(true);
  });
});

describe('small pictures', () => {
  test('a blade has the notches it is named for, at their size', () => {
    for (const notch of commonNotches) {
      const ys = [...bladePath(notch, 90, 10).matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map((point) => Number(point[2]));
      expect(Math.max(...ys), notch.label).toBeCloseTo(notch.depthMm, 2);
      expect(
        ys.some((y) => Math.abs(y) < 0.01),
        notch.label,
      ).toBe(true);
    }
  });
  test('a histogram counts every draw once', () => {
    const bins = scaleBins([0, 0.049, 0.05, 0.5, 0.999, 1], 20);
    expect(bins.map(({ count }) => count).filter(Boolean)).toEqual([2, 1, 1, 2]);
    expect(bins.at(-1)?.count).toBe(2);
  });
  test('a file name is letters, figures and hyphens', () => {
    expect(fileName('Mill Street: hall / 2', 'x')).toBe('mill-street-hall-2');
    expect(fileName('../../etc', 'x')).toBe('etc');
    expect(fileName('…', 'x')).toBe('x');
  });
});

test('the plan tells how far its draws have come, and stops when told to', () => {
  const { job } = readOf(addArea(freshDraft('imperial')));
  const shares: number[] = [];
  planJob(job, { onProgress: (share) => shares.push(share) < 0 });
  expect(shares.length).toBeGreaterThan(300);
  expect(Math.max(...shares)).toBeLessThan(1);
  expect(shares.some((share) => share > 0.5)).toBe(true);
  expect(() => planJob(job, { onProgress: () => true })).toThrow();
});
