import { describe, expect, test } from 'vitest';

import { isRuleId } from '@sim/rules/rulebook.ts';
import {
  dueOf,
  freshCard,
  mergeCrew,
  MODULE_ORDER,
  readCrew,
  writeCrew,
  type CrewCard,
} from '@site/islands/crew/card.ts';
import { sayCheck } from '@site/islands/crew/say-check.ts';
import { CHECKS, EVERYONE, WORK, WORK_KINDS, workFor } from '@site/islands/crew/work.ts';

const card: CrewCard = {
  name: 'Jo Lind',
  start: '2026-11-30',
  kinds: ['wet', 'heated'],
  modules: { mixing: '2026-12-02' },
  checks: { mix: { by: 'A. Foreman', on: '2026-12-03' } },
};

describe('the work of a helper', () => {
  test('every kind adds to what everyone learns, each thing once and in the course’s order', () => {
    for (const kind of WORK_KINDS) {
      const work = workFor([kind], MODULE_ORDER);
      expect(work.modules).toEqual(expect.arrayContaining([...EVERYONE.modules]));
      expect(work.modules).toEqual(MODULE_ORDER.filter((id) => work.modules.includes(id)));
      expect(new Set(work.checks).size).toBe(work.checks.length);
      for (const rule of work.cautions) expect(isRuleId(rule)).toBe(true);
    }
    expect(workFor(['heated'], MODULE_ORDER).cautions).toContain('safety.heat');
    expect(workFor([...WORK_KINDS], MODULE_ORDER).modules).toEqual(MODULE_ORDER);
  });
  test('every check belongs to some work, and its figures come from the rules', () => {
    const used = new Set([EVERYONE, ...Object.values(WORK)].flatMap((work) => work.checks));
    expect([...used].sort()).toEqual([...CHECKS].sort());
    for (const check of CHECKS) expect(sayCheck(check)).not.toMatch(/[{}]/);
    expect(sayCheck('set-and-pull')).toContain('3 tiles');
    expect(sayCheck('wet-pull')).toContain('95 %');
  });
});

describe('what is due', () => {
  test('comes in order, without what is done, and what was signed comes again', () => {
    const due = dueOf(card);
    expect(due.map(({ by }) => by)).toEqual(due.map(({ by }) => by).sort());
    expect(due).not.toContainEqual(expect.objectContaining({ kind: 'module', id: 'mixing' }));
    expect(due).toContainEqual({ kind: 'again', id: 'mix', by: '2027-03-03' });
    expect(due).not.toContainEqual(expect.objectContaining({ kind: 'check', id: 'mix' }));
  });
  test('cannot be counted without a day', () => {
    expect(dueOf(freshCard(''))).toEqual([]);
    expect(dueOf({ ...card, start: '2026-99-99' })).toEqual([]);
  });
});

describe('cards are kept and carried', () => {
  test('as they were', () => {
    const book = { shop: 'Mill Street Tile', cards: [card] };
    expect(readCrew(writeCrew(book))).toEqual(book);
  });
  test('what is no book of cards is refused whole', () => {
    for (const bad of [
      '',
      '{}',
      '[]',
      '{"ridgeToBed":"crew","version":2}',
      writeCrew({ shop: 'x', cards: [{ ...card, kinds: ['roofs' as 'wet'] }] }),
      writeCrew({ shop: 'x', cards: [{ ...card, start: '<b>' }] }),
    ])
      expect(readCrew(bad), bad).toBeNull();
  });
  test('two books of one helper keep both sets of signatures', () => {
    const theirs: CrewCard = {
      ...card,
      kinds: ['large'],
      modules: { setting: '2026-12-09' },
      checks: { comb: { by: 'B', on: '2026-12-10' } },
    };
    const { cards } = mergeCrew({ shop: 'A', cards: [card] }, { shop: 'B', cards: [theirs, freshCard('2026-12-01')] });
    expect(cards).toHaveLength(2);
    expect(cards[0]).toMatchObject({
      kinds: ['wet', 'large', 'heated'],
      modules: { mixing: '2026-12-02', setting: '2026-12-09' },
    });
    expect(Object.keys(cards[0]?.checks ?? {}).sort()).toEqual(['comb', 'mix']);
  });
});
