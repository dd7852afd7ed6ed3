import type { Shelf } from '@site/storage/record/keeper.ts';
import { mergeRecords } from '@site/storage/record/merge.ts';
import { emptyRecord, type LearnerRecord } from '@site/storage/record/shape.ts';

/** A bell that no other tab hears. */
export const silent = { ring: () => undefined, answer: () => undefined };
/** A shelf in memory that can be told to refuse. */
export function shelfFake(): Shelf & { kept: LearnerRecord; full: boolean; displace: () => void; end: () => void } {
  const fake = {
    kept: emptyRecord(),
    full: false,
    displace: (): void => undefined,
    end: (): void => undefined,
    open: (displaced: () => void, ended: () => void) => {
      fake.displace = displaced;
      fake.end = ended;
      return Promise.resolve({} as never);
    },
    readAll: () => Promise.resolve(fake.kept),
    putAll: (_: unknown, part: Partial<LearnerRecord>) => {
      if (fake.full) return Promise.reject(new DOMException('no room', 'QuotaExceededError'));
      fake.kept = mergeRecords({ ...emptyRecord(), ...part }, fake.kept);
      return Promise.resolve();
    },
    clearAll: () => {
      if (fake.full) return Promise.reject(new DOMException('closing', 'InvalidStateError'));
      return Promise.resolve(void (fake.kept = emptyRecord()));
    },
  };
  return fake;
}
