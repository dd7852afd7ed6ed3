import { roundFaults, writeRound, type ClassRound } from '@quiz/records/class-round.ts';
import { cleanName } from '@quiz/records/clean-text.ts';
import { collect, type Dropped, type Refused, type Taken } from '@quiz/records/collect.ts';
import { readBook, writeBook, MOST_ROUNDS, type DeskBook, type DeskRound } from '@quiz/records/desk-book.ts';
import { writeHandIn } from '@quiz/records/hand-in.ts';

import type { DeskStore } from './store.ts';

const BOOK = 'book';

export type DeskNotice = 'kept' | 'notKept' | 'someLost' | 'photosLeft' | 'badFile' | 'erased' | null;

/** The instructor's book: rounds set, seats, hand-ins; kept in this browser as it changes. */
export class Desk {
  #store: DeskStore | null = null;
  book: DeskBook = $state.raw({ version: 1, rounds: [] });
  open: number = $state(0);
  notice: DeskNotice = $state(null);
  ready: boolean = $state(false);
  /** What the last intake refused, and whose names were cleaned. */
  refused: readonly Refused[] = $state.raw([]);
  taken: readonly Taken[] = $state.raw([]);
  share: number | null = $state(null);

  get current(): DeskRound | null {
    return this.book.rounds[this.open] ?? null;
  }

  async start(store: DeskStore): Promise<void> {
    this.#store = store;
    const reading = readBook(await store.get(BOOK));
    if (reading.ok) {
      this.book = reading.value.book;
      if (reading.value.lost > 0) this.notice = 'someLost';
    }
    if (!store.lasting) this.notice = 'notKept';
    this.ready = true;
  }

  /** Sets a round; one with the same line is opened again with what it holds. */
  async set(round: ClassRound, title: string, seats: number): Promise<boolean> {
    if (roundFaults(round).length > 0) return false;
    const line = writeRound(round);
    const at = this.book.rounds.findIndex((one) => writeRound(one.round) === line);
    if (at >= 0) {
      this.open = at;
      return true;
    }
    const fresh: DeskRound = {
      round,
      title: cleanName(title),
      seats: Array.from({ length: seats }, () => ''),
      handIns: [],
      lines: [],
    };
    this.open = 0;
    await this.#keep({ ...this.book, rounds: [fresh, ...this.book.rounds].slice(0, MOST_ROUNDS) });
    return true;
  }

  async nameSeat(seat: number, name: string): Promise<void> {
    await this.#change((round) => ({ ...round, seats: round.seats.map((old, at) => (at === seat - 1 ? name : old)) }));
  }

  /** Takes hand-ins into the open round; the good ones count, each bad one is named. */
  async take(dropped: readonly Dropped[]): Promise<void> {
    const round = this.current;
    if (!round) return;
    this.share = 0;
    const { taken, refused } = await collect(dropped, round.round, round.handIns, (share) => (this.share = share));
    this.share = null;
    this.taken = taken;
    this.refused = refused;
    await this.#change((now) => ({
      ...now,
      handIns: [...now.handIns, ...taken.map(({ handIn }) => handIn)],
      lines: [...now.lines, ...taken.map(({ handIn }) => writeHandIn(handIn))],
    }));
  }

  /** Takes one hand-in out again, after two came from one seat. */
  async drop(at: number): Promise<void> {
    await this.#change((now) => ({ ...now, handIns: now.handIns.toSpliced(at, 1), lines: now.lines.toSpliced(at, 1) }));
  }

  async removeRound(): Promise<void> {
    const rounds = this.book.rounds.toSpliced(this.open, 1);
    this.open = 0;
    await this.#keep({ ...this.book, rounds });
  }

  /** Joins a saved book: rounds this desk lacks are added, hand-ins it lacks join their round. @returns whether it lasts */
  async join(book: DeskBook): Promise<boolean> {
    const rounds = [...this.book.rounds];
    for (const theirs of book.rounds) {
      const at = rounds.findIndex((one) => writeRound(one.round) === writeRound(theirs.round));
      const ours = rounds[at];
      if (!ours) {
        rounds.push(theirs);
        continue;
      }
      const fresh = theirs.lines.flatMap((line, k) =>
        ours.lines.includes(line) ? [] : [{ line, handIn: theirs.handIns[k] }],
      );
      rounds[at] = {
        ...ours,
        lines: [...ours.lines, ...fresh.map(({ line }) => line)],
        handIns: [...ours.handIns, ...fresh.flatMap(({ handIn }) => (handIn ? [handIn] : []))],
      };
    }
    await this.#keep({ ...this.book, rounds: rounds.slice(0, MOST_ROUNDS) });
    return this.notice === 'kept';
  }

  async eraseAll(): Promise<void> {
    await this.#store?.eraseAll();
    this.book = { version: 1, rounds: [] };
    this.refused = [];
    this.taken = [];
    this.notice = 'erased';
  }

  async #change(how: (round: DeskRound) => DeskRound): Promise<void> {
    const rounds = this.book.rounds.map((round, at) => (at === this.open ? how(round) : round));
    await this.#keep({ ...this.book, rounds });
  }

  async #keep(book: DeskBook): Promise<void> {
    this.book = book;
    const kept = await this.#store?.put(BOOK, writeBook(book));
    this.notice = kept === true ? 'kept' : 'notKept';
  }
}
