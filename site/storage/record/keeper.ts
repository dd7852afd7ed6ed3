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
  open: (displaced: () => void) => Promise<RecordDatabase>;
  readAll: typeof readAll;
  putAll: typeof putAll;
  clearAll: typeof clearAll;
}
const browserShelf: Shelf = { open: openRecord, readAll, putAll, clearAll };

/** Tells the other tabs that something changed. */
export interface Bell {
  ring: () => void;
  answer: (hear: () => void) => void;
}

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
    this.unwritten = mergeRecords(added, this.unwritten);
    this.show({ record: replaced(this.now.record, added) });
    await this.ready;
    await this.write();
  }

  /** Takes in another record, a file's for instance. */
  async takeIn(other: LearnerRecord): Promise<void> {
    await this.ready;
    await this.add(mergeRecords(this.now.record, other));
  }

  /** Erases everything, here and on the shelf. */
  async erase(): Promise<void> {
    await this.ready;
    this.unwritten = emptyRecord();
    this.show({ record: emptyRecord() });
    if (this.database) await this.shelf.clearAll(this.database);
    this.bell.ring();
  }

  private async open(): Promise<void> {
    try {
      this.database = await this.shelf.open(() => {
        this.database = null;
        this.show({ keeping: 'displaced' });
      });
      const record = await this.shelf.readAll(this.database);
      this.show({ record: mergeRecords(this.unwritten, record), keeping: 'kept' });
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
    const record = await this.shelf.readAll(this.database);
    this.show({ record: mergeRecords(this.unwritten, record) });
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
