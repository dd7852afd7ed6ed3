import { openDB, type DBSchema, type IDBPDatabase } from 'idb';

import { shelfName } from '@site/storage/shelf.ts';

import type { Answer, LearnerRecord, ModuleEntry, Prediction, RecordStore, ReviewCard } from './shape.ts';

/** Raised with every change of the stores below; `upgrade` brings older ones along. */
const DATABASE_VERSION = 1;
const NAME = 'ridge-to-bed';

interface Tables extends DBSchema {
  modules: { key: string; value: ModuleEntry };
  predictions: { key: string; value: Prediction };
  answers: { key: string; value: Answer };
  cards: { key: string; value: ReviewCard };
}
export type RecordDatabase = IDBPDatabase<Tables>;

const keyPaths: Record<RecordStore, string> = {
  modules: 'slug',
  predictions: 'id',
  answers: 'id',
  cards: 'outcome',
};

/**
 * Opens the record's database, making or upgrading its stores.
 * @param displaced called when a newer page in another tab needs this one to let go
 * @param ended called when the browser closed the database by itself
 * @throws when the browser keeps nothing (private windows of some, storage forbidden)
 */
export function openRecord(displaced: () => void, ended: () => void): Promise<RecordDatabase> {
  return openDB<Tables>(shelfName(NAME), DATABASE_VERSION, {
    upgrade(database) {
      for (const store of Object.keys(keyPaths) as RecordStore[])
        if (!database.objectStoreNames.contains(store)) database.createObjectStore(store, { keyPath: keyPaths[store] });
    },
    blocking(_current, _next, event) {
      (event.target as IDBDatabase).close();
      displaced();
    },
    terminated: ended,
  });
}

/** Everything that is kept. */
export async function readAll(database: RecordDatabase): Promise<LearnerRecord> {
  const [modules, predictions, answers, cards] = await Promise.all([
    database.getAll('modules'),
    database.getAll('predictions'),
    database.getAll('answers'),
    database.getAll('cards'),
  ]);
  return { modules, predictions, answers, cards };
}

/** Puts entries into their stores in one transaction: all of them or none. */
export async function putAll(database: RecordDatabase, part: Partial<LearnerRecord>): Promise<void> {
  const stores = (Object.keys(part) as RecordStore[]).filter((store) => (part[store]?.length ?? 0) > 0);
  if (stores.length === 0) return;
  const change = database.transaction(stores, 'readwrite');
  const puts: Promise<unknown>[] = [change.done];
  try {
    for (const store of stores) for (const entry of part[store] ?? []) puts.push(change.objectStore(store).put(entry));
    // Closed at once: a change that is still open when the page goes is thrown away.
    change.commit();
  } catch (problem) {
    // A put that is refused at once leaves the ones before it standing unless the whole is called off.
    change.abort();
    await Promise.allSettled(puts);
    throw problem;
  }
  await Promise.all(puts);
}

/** Empties every store. */
export async function clearAll(database: RecordDatabase): Promise<void> {
  const stores = Object.keys(keyPaths) as RecordStore[];
  const change = database.transaction(stores, 'readwrite');
  await Promise.all([...stores.map((store) => change.objectStore(store).clear()), change.done]);
}
