import { readPlateTest, type PlateTest } from '@quiz/records/plate-test.ts';
import { MOST_RECORDS, readRecords, type PullRecord } from '@quiz/records/pull-record.ts';
import type { DeskStore } from '@site/islands/desk/store.ts';

const KEY = 'pulls';
const PLATES = 'plates';
const photoKey = (id: string): string => `photo:${id}`;

/** The hands-on records of the class, the test of its mortar and the photos, kept beside the desk's book. */
export class PullBook {
  #store: DeskStore | null = null;
  records: readonly PullRecord[] = $state.raw([]);
  /** The mortar that the next records are kept with. */
  plates: PlateTest | null = $state.raw(null);
  /** How often the test came from elsewhere than the form: kept before, of another tab, of a file, or erased. */
  platesBrought: number = $state(0);
  lasts: boolean = $state(true);

  async start(store: DeskStore): Promise<void> {
    this.#store = store;
    this.lasts = store.lasting;
    await this.#look();
    store.onChange(() => void this.#look());
  }

  /** @returns false where the book is full: nothing was kept, and nothing older gives way */
  async add(record: PullRecord, photo: Blob | null): Promise<boolean> {
    if (this.records.length >= MOST_RECORDS) return false;
    if (photo) await this.#store?.put(photoKey(record.id), photo);
    await this.#keep([record, ...this.records]);
    return true;
  }

  async remove(id: string): Promise<void> {
    await this.#store?.put(photoKey(id), null);
    await this.#keep(this.records.filter((record) => record.id !== id));
  }

  async setPlates(plates: PlateTest | null): Promise<void> {
    this.plates = plates;
    this.lasts = (await this.#store?.put(PLATES, plates)) ?? false;
  }

  async photo(id: string): Promise<Blob | null> {
    const kept = await this.#store?.get(photoKey(id));
    return kept instanceof Blob ? kept : null;
  }

  /**
   * Joins records of another desk to these; one that is here already stays as it is.
   * @returns how many found no room
   */
  async join(
    records: readonly PullRecord[],
    plates: PlateTest | null,
    photo: (id: string) => Blob | null,
  ): Promise<number> {
    const here = this.records.map(({ id }) => id);
    const fresh = records.filter(({ id }) => !here.includes(id));
    const fit = fresh.slice(0, MOST_RECORDS - here.length);
    for (const { id } of fit) {
      const picture = photo(id);
      if (picture) await this.#store?.put(photoKey(id), picture);
    }
    if (this.plates === null && plates !== null) {
      this.#bring(plates);
      await this.setPlates(plates);
    }
    await this.#keep([...this.records, ...fit]);
    return fresh.length - fit.length;
  }

  /** Forgets what this page still holds after the store was erased. */
  forget(): void {
    this.records = [];
    this.#bring(null);
  }

  /** Takes what is kept, by this tab or another. */
  async #look(): Promise<void> {
    this.records = readRecords(await this.#store?.get(KEY)).records;
    const plates = readPlateTest(await this.#store?.get(PLATES));
    if (JSON.stringify(plates) !== JSON.stringify(this.plates)) this.#bring(plates);
  }

  #bring(plates: PlateTest | null): void {
    this.plates = plates;
    this.platesBrought += 1;
  }

  async #keep(records: readonly PullRecord[]): Promise<void> {
    this.records = records;
    this.lasts = (await this.#store?.put(KEY, [...records])) ?? false;
  }
}
