import { roundFaults, writeRound, type ClassRound } from '@quiz/records/class-round.ts';
import { cleanName } from '@quiz/records/clean-text.ts';
import { collect, MOST_HAND_INS, type Dropped, type Refused, type Taken } from '@quiz/records/collect.ts';
import { readBook, writeBook, MOST_ROUNDS, type DeskBook, type DeskRound } from '@quiz/records/desk-book.ts';
import { writeHandIn } from '@quiz/records/hand-in.ts';

import type { DeskStore } from './store.ts';

const BOOK = 'book';
/** Where a book goes that this edition can't read, so that the next save does not write over it. */
const UNREAD = 'book.unread';

export type DeskNotice =
  'kept' | 'notKept' | 'someLost' | 'fullDesk' | 'unread' | 'photosLeft' | 'badFile' | 'erased' | 'notErased' | null;

/** The instructor's book: rounds set, seats, hand-ins; kept in this browser as it changes. */
export class Desk {
  #store: DeskStore | null = null;
  #taking: Promise<void> = Promise.resolve();
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
    const kept = await store.get(BOOK);
    const reading = readBook(kept);
    if (reading.ok) {
      this.book = reading.value.book;
      if (reading.value.lost > 0) this.notice = 'someLost';
    } else if (kept !== undefined) {
      await store.put(UNREAD, kept);
      this.notice = 'unread';
    }
    if (!store.lasting) this.notice = 'notKept';
    // What can't be read just now leaves the page as it is.
    store.onChange(() => void this.#look().catch(() => undefined));
    this.ready = true;
  }

  /** Takes over what another tab has kept, with the same round open. */
  async #look(): Promise<void> {
    const kept = await this.#store?.get(BOOK);
    const reading = readBook(kept);
    const line = this.current && writeRound(this.current.round);
    this.book = reading.ok ? reading.value.book : { version: 1, rounds: [] };
    this.open = Math.max(
      0,
      this.book.rounds.findIndex((one) => writeRound(one.round) === line),
    );
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
    if (this.book.rounds.length >= MOST_ROUNDS) {
      this.notice = 'fullDesk';
      return false;
    }
    const fresh: DeskRound = {
      round,
      title: cleanName(title),
      seats: Array.from({ length: seats }, () => ''),
      handIns: [],
      lines: [],
    };
    this.open = 0;
    await this.#keep({ ...this.book, rounds: [fresh, ...this.book.rounds] });
    return true;
  }

  async nameSeat(seat: number, name: string): Promise<void> {
    await this.#change((round) => ({ ...round, seats: round.seats.map((old, at) => (at === seat - 1 ? name : old)) }));
  }

  /** Takes hand-ins into the open round; the good ones count, each bad one is named. */
  take(dropped: readonly Dropped[]): Promise<void> {
    const line = this.current && writeRound(this.current.round);
    if (line !== null) this.#taking = this.#taking.then(() => this.#takeInto(line, dropped));
    return this.#taking;
  }

  /** One go after another, each into the round it was given to, whichever is open when it ends. */
  async #takeInto(line: string, dropped: readonly Dropped[]): Promise<void> {
    const round = this.book.rounds.find((one) => writeRound(one.round) === line);
    if (!round) return;
    this.share = 0;
    const { taken, refused } = await collect(dropped, round.round, round.handIns, (share) => (this.share = share));
    this.share = null;
    this.taken = taken;
    this.refused = refused;
    const rounds = this.book.rounds.map((now) =>
      writeRound(now.round) === line
        ? {
            ...now,
            handIns: [...now.handIns, ...taken.map(({ handIn }) => handIn)],
            lines: [...now.lines, ...taken.map(({ handIn }) => writeHandIn(handIn))],
          }
        : now,
    );
    await this.#keep({ ...this.book, rounds });
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

  /**
   * Joins a saved book: rounds this desk lacks are added, hand-ins it lacks join their round.
   * @returns how many of both found no room
   */
  async join(book: DeskBook): Promise<number> {
    let left = 0;
    const rounds = [...this.book.rounds];
    for (const theirs of book.rounds) {
      const at = rounds.findIndex((one) => writeRound(one.round) === writeRound(theirs.round));
      const ours = rounds[at];
      if (!ours) {
        if (rounds.length < MOST_ROUNDS) rounds.push(theirs);
        else left += 1;
        continue;
      }
      const fresh = theirs.lines.flatMap((line, k) =>
        ours.lines.includes(line) ? [] : [{ line, handIn: theirs.handIns[k] }],
      );
      const fit = fresh.slice(0, MOST_HAND_INS - ours.lines.length);
      left += fresh.length - fit.length;
      rounds[at] = {
        ...ours,
        lines: [...ours.lines, ...fit.map(({ line }) => line)],
        handIns: [...ours.handIns, ...fit.flatMap(({ handIn }) => (handIn ? [handIn] : []))],
      };
    }
    await this.#keep({ ...this.book, rounds });
    return left;
  }

  /** @returns false when the browser would not: all stands as it was */
  async eraseAll(): Promise<boolean> {
    if ((await this.#store?.eraseAll()) === false) {
      this.notice = 'notErased';
      return false;
    }
    this.book = { version: 1, rounds: [] };
    this.refused = [];
    this.taken = [];
    this.notice = 'erased';
    return true;
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
