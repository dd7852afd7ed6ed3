import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { outcomes } from '@lessons/outcomes.ts';
import { finishModule, keepAnswer } from '@site/storage/record/actions.ts';
import { dueCards, minutesFor, MOST_A_DAY } from '@site/storage/record/due.ts';
import { readRecordFile, writeRecordFile } from '@site/storage/record/file.ts';
import { RecordKeeper } from '@site/storage/record/keeper.ts';
import { newCard, reviewed } from '@site/storage/record/reviews.ts';

import { shelfFake, silent } from './shelf-fake.ts';

const DAY = 24 * 3600 * 1000;
const unit = fc.double({ min: 0, max: 1, noNaN: true });

describe('a clock that was moved', () => {
  const learned = [1, 1, 1].reduce((card, points) => reviewed(card, points, card.due), newCard('open-time', 400 * DAY));
  const last = learned.lastReview!;

  it('does not break a review: every answer is kept with a card of plain numbers', async () => {
    await fc.assert(
      fc.asyncProperty(fc.double({ min: -400, max: 4000, noNaN: true }), unit, async (days, points) => {
        const at = last + days * DAY;
        const card = reviewed(learned, points, at);
        expect(Object.values(card).every((value) => typeof value !== 'number' || Number.isFinite(value))).toBe(true);
        expect(card.lastReview).toBe(Math.trunc(at));
        expect(card.due).toBeGreaterThan(at);
        const keeper = new RecordKeeper(silent, shelfFake());
        await keeper.add({ cards: [learned] });
        const answer = { module: 'mixing', outcome: 'open-time', template: 't', seed: 1, slot: 0 } as const;
        await keepAnswer(keeper, { ...answer, points, ideas: [], from: 'review', at });
        expect(keeper.get().record.answers).toHaveLength(1);
        expect(readRecordFile(writeRecordFile(keeper.get().record))).toMatchObject({ ok: true });
      }),
    );
  });

  it('asks now what a clock that ran ahead put off for years, once', () => {
    const ahead = reviewed(learned, 1, last + 3000 * DAY);
    const now = last + 2 * DAY;
    expect(dueCards([ahead], now)).toEqual([ahead]);
    expect(dueCards([reviewed(ahead, 1, now)], now + 60_000)).toEqual([]);
  });

  it('asks now the outcomes of a module that was done while the clock ran ahead', async () => {
    const keeper = new RecordKeeper(silent, shelfFake());
    await finishModule(keeper, 'mixing', 900 * DAY);
    expect(dueCards(keeper.get().record.cards, 10 * DAY)).toHaveLength(outcomes.mixing.length);
    expect(dueCards(keeper.get().record.cards, 900 * DAY)).toHaveLength(0);
  });

  it('keeps a module done, and takes no card for late that another device wrote a little ahead', () => {
    const minutes = 5 * 60_000;
    expect(dueCards([reviewed(learned, 1, last + DAY)], last + DAY - minutes)).toEqual([]);
  });
});

describe('reviews', () => {
  it('brings a right answer back later than a wrong one, and the same answers on the same days', () => {
    const card = newCard('open-time', 0);
    const after = (points: number[]) => points.reduce((held, one) => reviewed(held, one, held.due), card);
    expect(after([1, 1, 1]).due).toBeGreaterThan(after([1, 1, 0]).due);
    expect(after([1, 0.5, 1])).toEqual(after([1, 0.5, 1]));
    expect(after([1, 1, 1, 1]).due).toBeGreaterThan(7 * DAY);
  });

  it('survives being written down between reviews', () => {
    const once = reviewed(newCard('open-time', 0), 1, 1000);
    expect(reviewed(JSON.parse(JSON.stringify(once)) as typeof once, 1, once.due)).toEqual(reviewed(once, 1, once.due));
  });

  it('brings a finished module’s outcomes up on the next day', async () => {
    const keeper = new RecordKeeper(silent, shelfFake());
    await finishModule(keeper, 'mixing', 0);
    const { cards: held } = keeper.get().record;
    expect(dueCards(held, DAY - 1)).toHaveLength(0);
    expect(
      dueCards(held, DAY)
        .map((card) => card.outcome)
        .sort(),
    ).toEqual([...outcomes.mixing].sort());
    expect(minutesFor(4)).toBe(6);
  });

  it('keeps a sitting short', () => {
    const many = Object.values(outcomes)
      .flat()
      .map((id) => newCard(id, 0));
    expect(dueCards(many, 1)).toHaveLength(MOST_A_DAY);
  });

  it('schedules an answer’s outcome and keeps the answer', async () => {
    const keeper = new RecordKeeper(silent, shelfFake());
    const answer = {
      module: 'mixing',
      outcome: 'part-bag',
      template: 't',
      seed: 1,
      slot: 0,
      points: 0,
      ideas: ['x'],
      from: 'check',
      at: 9,
    } as const;
    await keepAnswer(keeper, { ...answer, ideas: [...answer.ideas] });
    expect(keeper.get().record.answers).toHaveLength(1);
    expect(keeper.get().record.cards[0]).toMatchObject({ outcome: 'part-bag', lastReview: 9 });
  });

  it('schedules what else the question examined, where that comes back already', async () => {
    const keeper = new RecordKeeper(silent, shelfFake());
    await finishModule(keeper, 'what-the-ridges-are-for', 0);
    const answer = { module: 'mixing', outcome: 'part-bag', template: 't', seed: 1, slot: 0, points: 1 } as const;
    const due = outcomes['what-the-ridges-are-for'];
    await keepAnswer(keeper, { ...answer, ideas: [], from: 'review', at: 2 * DAY }, [due[0]!, 'open-time']);
    const card = (id: string) => keeper.get().record.cards.find((one) => one.outcome === id);
    expect(card(due[0]!)?.due).toBeGreaterThan(2 * DAY);
    expect(card(due[1]!)?.due).toBe(DAY);
    expect(card('open-time')).toBeUndefined();
  });
});
