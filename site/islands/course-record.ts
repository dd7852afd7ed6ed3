import type { RecordKeeper } from '@site/storage/record/keeper.ts';

/** Presses the ridges of the course path that the learner has begun or done. */
export function showOnPath(keeper: RecordKeeper, words: { begun: string; done: string }): void {
  keeper.subscribe(({ record }) => {
    for (const entry of record.modules) {
      const item = document.querySelector<HTMLElement>(`.path [data-module="${entry.slug}"]`);
      if (!item) continue;
      item.dataset['state'] = entry.state;
      const says = item.querySelector('[data-state-words]');
      if (says) says.textContent = words[entry.state];
    }
  });
}
