import { openDB, type IDBPDatabase, type IDBPObjectStore } from 'idb';

import { tabBell } from '@site/storage/other-tabs.ts';

/**
 * Where the desk keeps its book and its photos: the browser's own database, or, where that is closed, the memory of
 * this page. Nothing here has an address to send to.
 */
export interface DeskStore {
  /** Whether it lasts beyond this page. */
  readonly lasting: boolean;
  get: (key: string) => Promise<unknown>;
  /** @returns false when it could not be kept (storage full or closed) */
  put: (key: string, value: unknown) => Promise<boolean>;
  /** @returns false when the browser would not erase it */
  eraseAll: () => Promise<boolean>;
  /** Calls back when another tab of the desk has changed what is kept. */
  onChange: (call: () => void) => void;
}

const NAME = 'ridge-to-bed.desk';
const TABLE = 'book';
type Table = IDBPObjectStore<unknown, [typeof TABLE], typeof TABLE, 'readwrite'>;

function memoryStore(): DeskStore {
  const kept = new Map<string, unknown>();
  return {
    lasting: false,
    get: (key) => Promise.resolve(kept.get(key)),
    put: (key, value) => {
      kept.set(key, value);
      return Promise.resolve(false);
    },
    eraseAll: () => {
      kept.clear();
      return Promise.resolve(true);
    },
    onChange: () => undefined,
  };
}

function lastingStore(database: IDBPDatabase): DeskStore {
  const others = tabBell(NAME);
  const done = async (change: Promise<unknown>): Promise<boolean> => {
    try {
      await change;
      others.ring();
      return true;
    } catch {
      return false;
    }
  };
  /** Closed at once: a change that is still open when the page goes, by a reload a moment later, is thrown away. */
  const inOneGo = async (change: (table: Table) => Promise<unknown>): Promise<void> => {
    const going = database.transaction(TABLE, 'readwrite');
    const changed = change(going.store);
    going.commit();
    await Promise.all([changed, going.done]);
  };
  return {
    lasting: true,
    get: (key) => database.get(TABLE, key) as Promise<unknown>,
    put: (key, value) => done(inOneGo((table) => table.put(value, key))),
    eraseAll: () => done(inOneGo((table) => table.clear())),
    onChange: others.answer,
  };
}

/** Opens the desk's store; falls back to memory and never fails. */
export async function openDeskStore(): Promise<DeskStore> {
  try {
    const database = await openDB(NAME, 1, { upgrade: (fresh) => void fresh.createObjectStore(TABLE) });
    return lastingStore(database);
  } catch {
    return memoryStore();
  }
}
