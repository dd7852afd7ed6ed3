import type { Bell } from '@site/storage/other-tabs.ts';

import { clearAll, openRecord, putAll, readAll, type RecordDatabase } from './database.ts';
import { mergeRecords } from './merge.ts';
import { emptyRecord, type LearnerRecord } from './shape.ts';

/**
 * `kept`: written to this browser. `memory`: the browser keeps nothing, the record lasts as long as the page. `full`:
 * there is no room; what is not written is held in the page and tried again. `displaced`: a newer page took over.
 */
export type Keeping = 'opening' | 'kept' | 'memory' | 'full' | 'displaced';

export interface Held {
  record: LearnerRecord;
  keeping: Keeping;
}

/** Where the record lies: IndexedDB in a browser; a test hands in its own. */
export interface Shelf {
  open: typeof openRecord;
  readAll: typeof readAll;
  putAll: typeof putAll;
  clearAll: typeof clearAll;
}
const browserShelf: Shelf = { open: openRecord, readAll, putAll, clearAll };

/**
 * Holds the record in the page and writes each change through. What can't be written is never dropped: it stays in
 * the page, is shown, goes into an export, and is written with the next change that succeeds.
 */
export class RecordKeeper {
  private readonly shelf: Shelf;
  private readonly bell: Bell;
  private database: RecordDatabase | null = null;
  private unwritten: LearnerRecord = emptyRecord();
  private now: Held = { record: emptyRecord(), keeping: 'opening' };
  private readonly followers = new Set<(held: Held) => void>();
  readonly ready: Promise<void>;

  constructor(bell: Bell, shelf: Shelf = browserShelf) {
    this.bell = bell;
    this.shelf = shelf;
    this.ready = this.open();
    bell.answer(() => void this.reload());
  }

  get = (): Held => this.now;

  subscribe = (follow: (held: Held) => void): (() => void) => {
    this.followers.add(follow);
    follow(this.now);
    return () => this.followers.delete(follow);
  };

  /** Adds entries (or replaces those of the same key) in the page at once and on the shelf as soon as it can. */
  async add(part: Partial<LearnerRecord>): Promise<void> {
    const added = { ...emptyRecord(), ...part };
    this.unwritten = replaced(this.unwritten, added);
    this.show({ record: replaced(this.now.record, added) });
    await this.ready;
    await this.write();
  }

  /** Takes in another record, a file's for instance. */
  async takeIn(other: LearnerRecord): Promise<void> {
    await this.ready;
    await this.add(mergeRecords(this.now.record, other));
  }

  /**
   * Erases everything, here and on the shelf.
   * @returns false when the shelf would not: all stands as it was
   */
  async erase(): Promise<boolean> {
    await this.ready;
    try {
      if (this.database) await this.shelf.clearAll(this.database);
      else if (this.now.keeping === 'displaced') return false;
    } catch {
      return false;
    }
    this.unwritten = emptyRecord();
    this.show({ record: emptyRecord() });
    this.bell.ring();
    return true;
  }

  private async open(): Promise<void> {
    const displaced = (): void => {
      this.database = null;
      this.show({ keeping: 'displaced' });
    };
    // The browser closed it by itself (short of memory, its data cleared): it is opened anew.
    const ended = (): void => {
      this.database = null;
      void this.open();
    };
    try {
      this.database = await this.shelf.open(displaced, ended);
      const record = await this.shelf.readAll(this.database);
      this.show({ record: replaced(record, this.unwritten), keeping: 'kept' });
    } catch {
      this.database = null;
      this.show({ keeping: 'memory' });
    }
  }

  private async write(): Promise<void> {
    if (!this.database) return;
    const writing = this.unwritten;
    try {
      await this.shelf.putAll(this.database, writing);
      if (this.unwritten === writing) this.unwritten = emptyRecord();
      this.show({ keeping: 'kept' });
      this.bell.ring();
    } catch {
      this.show({ keeping: 'full' });
    }
  }

  private async reload(): Promise<void> {
    if (!this.database) return;
    try {
      const record = await this.shelf.readAll(this.database);
      this.show({ record: replaced(record, this.unwritten) });
    } catch {
      // The shelf can't be read just now: what stands here stays, and the next change tries again.
    }
  }

  private show(change: Partial<Held>): void {
    this.now = { ...this.now, ...change };
    this.followers.forEach((follow) => follow(this.now));
  }
}

/** An entry added now replaces the one of its key, whatever the merge of two devices would say. */
function replaced(record: LearnerRecord, added: LearnerRecord): LearnerRecord {
  const slugs = new Set(added.modules.map((one) => one.slug));
  const due = new Set(added.cards.map((one) => one.outcome));
  return mergeRecords(added, {
    ...record,
    modules: record.modules.filter((one) => !slugs.has(one.slug) || one.state === 'done'),
    cards: record.cards.filter((one) => !due.has(one.outcome)),
  });
}
