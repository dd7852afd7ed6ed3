import { MOST_RECORDS, readRecords, type PullRecord } from '@quiz/records/pull-record.ts';
import { openDeskStore, type DeskStore } from '@site/islands/desk/store.ts';

const KEY = 'pulls';
const photoKey = (id: string): string => `photo:${id}`;

/** The hands-on records of the class and their photos, kept beside the desk's book. */
export class PullBook {
  #store: DeskStore | null = null;
  records: readonly PullRecord[] = $state.raw([]);
  lasts: boolean = $state(true);

  async start(): Promise<void> {
    this.#store = await openDeskStore();
    this.lasts = this.#store.lasting;
    this.records = readRecords(await this.#store.get(KEY)).records;
  }

  async add(record: PullRecord, photo: Blob | null): Promise<void> {
    if (photo) await this.#store?.put(photoKey(record.id), photo);
    await this.#keep([record, ...this.records].slice(0, MOST_RECORDS));
  }

  async remove(id: string): Promise<void> {
    await this.#store?.put(photoKey(id), null);
    await this.#keep(this.records.filter((record) => record.id !== id));
  }

  async photo(id: string): Promise<Blob | null> {
    const kept = await this.#store?.get(photoKey(id));
    return kept instanceof Blob ? kept : null;
  }

  async #keep(records: readonly PullRecord[]): Promise<void> {
    this.records = records;
    this.lasts = (await this.#store?.put(KEY, [...records])) ?? false;
  }
}
