import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { course } from '@lessons/course.ts';
import { outcomes } from '@lessons/outcomes.ts';
import { readRecordFile, upgraded, writeRecordFile } from '@site/storage/record/file.ts';
import { RecordKeeper } from '@site/storage/record/keeper.ts';
import { mergeRecords } from '@site/storage/record/merge.ts';
import { newCard, reviewed } from '@site/storage/record/reviews.ts';
import { finishModule } from '@site/storage/record/actions.ts';
import { emptyRecord, type LearnerRecord } from '@site/storage/record/shape.ts';

import { shelfFake, silent } from './shelf-fake.ts';

const DAY = 24 * 3600 * 1000;
const at = fc.integer({ min: 0, max: 2e12 });
const slug = fc.constantFrom(...course.map((one) => one.slug));
const outcome = fc.constantFrom(...Object.values(outcomes).flat());
const unit = fc.double({ min: 0, max: 1, noNaN: true });

// A prediction or an answer is a fact: its key stands for all of it, as it does in use.
const prediction = fc.record({ n: fc.nat(20), module: slug, guess: unit }).map(({ n }) => ({
  id: `f@${n}`,
  module: course[n % 16]!.slug,
  figure: 'f',
  of: 'share' as const,
  guess: n / 20,
  truth: 0.5,
  at: n,
}));
const modules = fc.uniqueArray(fc.record({ slug, state: fc.constantFrom('begun' as const, 'done' as const), at }), {
  selector: (one) => one.slug,
});
const cards = fc.uniqueArray(
  fc.record({ outcome, due: at, lastReview: at }).map((card) => ({
    ...newCard(card.outcome, card.due),
    lastReview: card.lastReview,
    due: card.lastReview + DAY,
  })),
  { selector: (one) => one.outcome },
);
const anyRecord: fc.Arbitrary<LearnerRecord> = fc.record({
  modules,
  predictions: fc.uniqueArray(prediction, { selector: (one) => one.id }),
  answers: fc.constant([]),
  cards,
});
const sorted = (record: LearnerRecord) =>
  Object.values(record).map((list: object[]) => list.map((one) => JSON.stringify(one)).sort());

describe('merging two records', () => {
  it('loses nothing, whatever the order, and twice is once', () => {
    fc.assert(
      fc.property(anyRecord, anyRecord, (a, b) => {
        const both = mergeRecords(a, b);
        expect(sorted(mergeRecords(b, a))).toEqual(sorted(both));
        expect(sorted(mergeRecords(both, b))).toEqual(sorted(both));
        for (const one of [...a.predictions, ...b.predictions])
          expect(both.predictions.map((held) => held.id)).toContain(one.id);
        for (const one of [...a.modules, ...b.modules].filter((entry) => entry.state === 'done'))
          expect(both.modules.find((held) => held.slug === one.slug)?.state).toBe('done');
      }),
    );
  });
});

describe('the record file', () => {
  it('comes back as it went out', () => {
    fc.assert(
      fc.property(anyRecord, (record) => {
        expect(readRecordFile(writeRecordFile(record))).toEqual({ ok: true, record });
      }),
    );
  });

  it.each([
    ['', 'cut short'],
    ['{"kind":"ridge-to-bed-record","version":1,"record":{"modules":', 'cut short'],
    ['[]', 'not a record of this course'],
    ['null', 'not a record of this course'],
    ['{"kind":"ridge-to-bed-record","version":99,"record":{}}', 'newer edition'],
    ['{"kind":"ridge-to-bed-record","version":0,"record":{}}', 'which version'],
    [
      writeRecordFile({
        ...emptyRecord(),
        predictions: [{ id: 'a', module: 'mixing', figure: 'f', of: 'share', guess: 2, truth: 0, at: 1 }],
      }),
      'predictions[0].guess',
    ],
    [
      writeRecordFile({ ...emptyRecord(), modules: [{ slug: 'nowhere', state: 'done', at: 1 }] } as never),
      'modules[0].slug',
    ],
  ])('refuses %j with a sentence', (text, says) => {
    const reading = readRecordFile(text);
    expect(reading.ok).toBe(false);
    if (!reading.ok) expect(reading.says.join(' ')).toContain(says);
  });

  it('climbs from version to version and stops at a missing step', () => {
    const steps = { 1: (old: unknown) => [old, 'two'], 2: (old: unknown) => [old, 'three'] };
    expect(upgraded('one', 1, 3, steps)).toEqual([['one', 'two'], 'three']);
    expect(upgraded('one', 1, 4, steps)).toBeNull();
  });
});

describe('keeping', () => {
  const entry = { slug: 'mixing', state: 'begun', at: 5 } as const;

  it('holds what a full shelf refuses and writes it with the next that succeeds', async () => {
    const shelf = shelfFake();
    const keeper = new RecordKeeper(silent, shelf);
    shelf.full = true;
    await keeper.add({ modules: [entry] });
    expect(keeper.get()).toMatchObject({ keeping: 'full', record: { modules: [entry] } });
    shelf.full = false;
    await finishModule(keeper, 'combing', 6);
    expect(keeper.get().keeping).toBe('kept');
    expect(shelf.kept.modules.map((one) => one.slug).sort()).toEqual(['combing', 'mixing']);
  });

  it('lasts as long as the page where the browser keeps nothing', async () => {
    const keeper = new RecordKeeper(silent, { ...shelfFake(), open: () => Promise.reject(new Error('forbidden')) });
    await keeper.add({ modules: [entry] });
    expect(keeper.get()).toMatchObject({ keeping: 'memory', record: { modules: [entry] } });
  });

  it('lets a newer page take over and still holds the record', async () => {
    const shelf = shelfFake();
    const keeper = new RecordKeeper(silent, shelf);
    await keeper.add({ modules: [entry] });
    shelf.displace();
    await keeper.add({ modules: [{ ...entry, slug: 'combing' }] });
    expect(keeper.get().keeping).toBe('displaced');
    expect(keeper.get().record.modules).toHaveLength(2);
  });

  it('shows in one tab what another has written', async () => {
    const shelf = shelfFake();
    const hears: (() => void)[] = [];
    const bell = { ring: () => hears.forEach((hear) => hear()), answer: (hear: () => void) => void hears.push(hear) };
    const here = new RecordKeeper(bell, shelf);
    const there = new RecordKeeper(bell, shelf);
    await Promise.all([here.ready, there.ready]);
    await here.add({ modules: [entry] });
    await Promise.resolve();
    expect(there.get().record.modules).toEqual([entry]);
  });
});

describe('a shelf that fails', () => {
  const entry = { slug: 'mixing', state: 'begun', at: 5 } as const;

  it('is opened anew when the browser has closed it, and takes what is added after', async () => {
    const shelf = shelfFake();
    const keeper = new RecordKeeper(silent, shelf);
    await keeper.add({ modules: [entry] });
    shelf.end();
    await Promise.resolve();
    await keeper.add({ modules: [{ ...entry, slug: 'combing' }] });
    expect(keeper.get().keeping).toBe('kept');
    expect(shelf.kept.modules).toHaveLength(2);
  });

  it('leaves all as it was when it would not erase, and says so', async () => {
    const shelf = shelfFake();
    const keeper = new RecordKeeper(silent, shelf);
    await keeper.add({ modules: [entry] });
    shelf.full = true;
    expect(await keeper.erase()).toBe(false);
    expect(keeper.get().record.modules).toEqual([entry]);
    shelf.full = false;
    expect(await keeper.erase()).toBe(true);
    expect(keeper.get().record).toEqual(emptyRecord());
  });

  it('keeps what stands in the page when it can’t be read again', async () => {
    const shelf = shelfFake();
    let ring = (): void => undefined;
    const keeper = new RecordKeeper({ ring: () => undefined, answer: (hear) => void (ring = hear) }, shelf);
    await keeper.add({ modules: [entry] });
    shelf.readAll = () => Promise.reject(new DOMException('closing', 'InvalidStateError'));
    ring();
    await Promise.resolve();
    expect(keeper.get().record.modules).toEqual([entry]);
  });

  it('is given the latest of two cards it refused before, whatever their clocks said', async () => {
    const shelf = shelfFake();
    const keeper = new RecordKeeper(silent, shelf);
    await keeper.ready;
    shelf.full = true;
    const ahead = reviewed(newCard('open-time', 0), 1, 400 * DAY);
    await keeper.add({ cards: [ahead] });
    shelf.full = false;
    const now = reviewed(ahead, 1, 3 * DAY);
    await keeper.add({ cards: [now] });
    expect(keeper.get().record.cards).toEqual([now]);
    expect(shelf.kept.cards).toEqual([now]);
  });
});
