import { bank } from '@quiz/bank.ts';
import { readBook, writeBook } from '@quiz/records/desk-book.ts';
import { readHandInText, writeHandIn, writeHandInFile, type HandIn } from '@quiz/records/hand-in.ts';
import { readDeskFile, writeDeskFile, type DeskFile } from '@quiz/records/desk-file.ts';
import { forecastsOf, predictionsOf } from '@quiz/records/pull-forecast.ts';
import { readRecords } from '@quiz/records/pull-record.ts';
import { writeRound, readRound, type ClassRound } from '@quiz/records/class-round.ts';
import { dueOf, freshCard, mergeCrew, readCrew, writeCrew, type CrewBook } from '@site/islands/crew/card.ts';
import { bedOf, isBedLink, linkOf, type BedTold } from '@site/islands/bench/link.ts';
import { startSetup } from '@site/islands/bench/start-setup.ts';
import { readPaperAddress } from '@site/islands/desk/paper/address.ts';
import { blankArea, blankJob, type Draft } from '@site/islands/job/draft.ts';
import { linkHash, readLink } from '@site/islands/job/link.ts';
import { readDraft, writeDraft } from '@site/islands/job/read-draft.ts';
import { readForm } from '@site/islands/job/to-job.ts';
import { readRoundLink, roundLink } from '@site/islands/rounds/link.ts';
import { openSession, standing, type Session } from '@site/islands/rounds/session.ts';
import { readRecordFile, writeRecordFile } from '@site/storage/record/file.ts';
import { readJob } from '@sim/estimate/job.ts';

import { refused, takenOr, type Outcome, type Reader } from './reader.ts';

const draft: Draft = {
  version: 1,
  units: 'imperial',
  title: 'Tarn Ferry hall',
  job: blankJob(),
  areas: [{ id: 1, boxes: { ...blankArea() } }],
};
const classRound: ClassRound = {
  code: 'TILE-1', bank: bank.version, modules: ['setting'], items: 3, pass: 0.8, perSeat: true, units: 'imperial', due: '2026-11-30',
}; // prettier-ignore
const handIn: HandIn = { round: classRound, seat: 4, name: 'Ada', answers: ['A', '12 1/2', ''], at: 29_000_000 };
const crew: CrewBook = {
  shop: 'Tarn Ferry Tile',
  cards: [{ ...freshCard('2026-11-30'), name: 'Bo', kinds: ['floors'] as never, modules: { setting: '2026-12-01' } }],
};
const record = {
  modules: [{ slug: 'setting', state: 'done', at: 1e12 }],
  predictions: [{ id: 'p1', module: 'setting', figure: 'press', of: 'share', guess: 0.5, truth: 0.8, at: 1e12 }],
  answers: [],
  cards: [],
};
const pulls = [
  {
    id: 'a1', learner: 'Bo', day: '2026-11-30', standards: 'north-america', exposure: 'interior-dry', surface: 'floor',
    material: 'porcelain', lengthMm: 305, widthMm: 305, thicknessMm: 9, predicted: 0.8,
    tiles: [{ columns: 3, rows: 2, marks: '..#.#.', backCoatOnly: false }], photo: false,
  },
]; // prettier-ignore
const session = openSession({ seed: 9, items: 3, mode: 'mixed', modules: ['setting'], units: 'imperial' });

const parsed = (text: string, then: (value: unknown) => Outcome): Outcome => {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return refused();
  }
  return then(value);
};

const useDraft = (one: Draft): unknown => {
  const { job } = readForm(one);
  const reading = readJob(job);
  return reading.ok ? reading.value : reading.faults.length;
};

/** Links after `#`, files taken in and hand-ins. */
export const pageReaders: readonly Reader[] = [
  {
    name: 'link of a bed',
    good: [
      linkOf(startSetup()),
      `${linkOf(startSetup())}&bow=1.2&do=p90_0_0~s90_6_2_0_20&pieces=2_2_3&comb=fan`,
      'bed=1&bow=0&back=ribs_25_1_0_0.3&read=a0_1_0~r0_1_0~f0_0_0&floorread=g0_1~g1_2&weather=30_windy_true_dry&patty=2_50_96&yaw=20',
    ],
    json: false,
    read: (text) => {
      if (!isBedLink(text)) return refused();
      const reading = bedOf(text);
      return reading.ok ? { state: 'taken', value: reading.value } : refused(reading.faults);
    },
    write: ({ setup, told }: BedTold) => linkOf(setup, told),
  },
  {
    name: 'link of a job',
    good: [linkHash(draft)],
    json: false,
    read: (text) => {
      const reading = readLink(text);
      return reading.state === 'read' ? { state: 'taken', value: reading.draft } : refused();
    },
    write: (one: Draft) => linkHash(one),
    use: useDraft,
  },
  {
    name: 'job kept in the browser',
    good: [writeDraft(draft)],
    json: true,
    read: (text) => takenOr(readDraft(text)),
    write: (one: Draft) => writeDraft(one),
    use: useDraft,
  },
  {
    name: 'link of a round',
    good: [roundLink(session)],
    json: false,
    read: (text) => takenOr(readRoundLink(text, 'imperial')),
    write: (one: Session) => roundLink(one),
    use: (one: Session) => standing(one).total,
    mostUses: 300,
  },
  {
    name: "link of a class's round",
    good: [writeRound(classRound)],
    json: false,
    read: (text) => takenOr(readRound(text)),
    write: (one: ClassRound) => writeRound(one),
  },
  {
    name: 'link of printed sheets',
    good: [`#${writeRound(classRound)}.seats12`],
    json: false,
    read: (text) => takenOr(readPaperAddress(text)),
  },
  {
    name: 'hand-in as a line',
    good: [writeHandIn(handIn)],
    json: false,
    read: (text) => {
      const good = readHandInText(text).filter((one) => one.ok);
      return good.length === 0 ? refused() : { state: 'taken', value: good.map(({ handIn: one }) => one) };
    },
    write: (several: HandIn[]) => several.map(writeHandIn).join('\n'),
  },
  {
    name: 'hand-in as a file',
    good: [writeHandInFile(handIn)],
    json: true,
    read: (text) => {
      const [first] = readHandInText(text);
      return first?.ok ? { state: 'taken', value: first.handIn } : refused();
    },
    write: (one: HandIn) => writeHandInFile(one),
  },
  {
    name: "the desk's file",
    good: [
      JSON.stringify(
        writeBook({
          version: 1,
          rounds: [
            { round: classRound, title: 'Monday', seats: ['Ada'], lines: [writeHandIn(handIn)], handIns: [handIn] },
          ],
        }),
      ),
    ],
    json: true,
    read: (text) =>
      parsed(text, (value) => {
        const reading = readBook(value);
        return reading.ok ? { state: 'taken', value: reading.value.book } : refused(reading.faults);
      }),
    write: (book: never) => JSON.stringify(writeBook(book)),
  },
  {
    name: "the whole desk's file",
    good: [
      writeDeskFile({
        book: { version: 1, rounds: [{ round: classRound, title: '', seats: ['Ada'], lines: [], handIns: [] }] },
        records: readRecords(pulls).records,
        plates: { volumeMl: 50, massKg: 2, diameterMm: 96 },
        photos: {},
      }),
    ],
    json: true,
    read: (text) =>
      parsed(text, (value) => {
        const reading = readDeskFile(value);
        if (!reading.ok) return refused(reading.faults);
        return { state: 'taken', value: { ...reading.value, lost: 0 } };
      }),
    write: (desk: DeskFile) => writeDeskFile(desk),
    use: (desk: DeskFile) => [predictionsOf(desk.records), forecastsOf(desk.records)],
  },
  {
    name: 'records of pulled tiles',
    good: [JSON.stringify(pulls)],
    json: true,
    read: (text) =>
      parsed(text, (value) => {
        const { records } = readRecords(value);
        return records.length === 0 ? refused() : { state: 'taken', value: records };
      }),
    write: (records: unknown[]) => JSON.stringify(records),
  },
  {
    name: 'book of crew cards',
    good: [writeCrew(crew)],
    json: true,
    read: (text) => takenOr(readCrew(text)),
    write: (book: CrewBook) => writeCrew(book),
    use: (book: CrewBook) => [mergeCrew(crew, book).cards.length, ...book.cards.map((card) => dueOf(card).length)],
  },
  {
    name: "the learner's record",
    good: [writeRecordFile(record as never)],
    json: true,
    read: (text) => {
      const reading = readRecordFile(text);
      if (reading.ok) return { state: 'taken', value: reading.record };
      return refused(reading.says.map((says) => ({ path: '', problem: says, accepted: 'see the sentence' })));
    },
    write: (one: never) => writeRecordFile(one),
  },
];
