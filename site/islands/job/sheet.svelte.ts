import type { UnitSystem } from '@sim/units/format.ts';

import type { AreaBoxId, JobBoxId } from './catalogue.ts';
import {
  addArea,
  duplicateArea,
  freshDraft,
  moveArea,
  removeArea,
  setAreaBoxes,
  setJobBox,
  setTitle,
  type Draft,
} from './draft.ts';
import { change, redo, startHistory, undo, type History } from './history.ts';
import { browserShelf, DRAFT_KEY, keepDraft, keptDraft } from './keep.ts';
import { readLink } from './link.ts';
import { switchUnits } from './switch-units.ts';

/** What the page has to say about keeping and opening; its sentences stand in the messages. */
export type Notice = 'kept' | 'notKept' | 'fromLink' | 'brokenLink' | 'otherLink' | 'otherTab';

/** The open job: its draft with undo, kept in this browser as it changes. */
export class Sheet {
  #history: History<Draft> = $state.raw(startHistory(freshDraft('imperial')));
  #notice: Notice | null = $state(null);
  readonly #shelf = browserShelf();

  get draft(): Draft {
    return this.#history.present;
  }
  get notice(): Notice | null {
    return this.#notice;
  }
  get canUndo(): boolean {
    return this.#history.past.length > 0;
  }
  get canRedo(): boolean {
    return this.#history.future.length > 0;
  }

  /** Opens what was kept here, or what the address carries; the link's job is a step that undo takes back. */
  open(units: UnitSystem, hash: string): void {
    const kept = keptDraft(this.#shelf);
    this.#history = startHistory(kept ? switchUnits(kept, units) : freshDraft(units));
    this.openLink(units, hash);
  }

  openLink(units: UnitSystem, hash: string): void {
    const link = readLink(hash);
    if (link.state === 'none') return;
    if (link.state === 'read') this.#take(change(this.#history, switchUnits(link.draft, units)));
    this.#notice = link.state === 'read' ? 'fromLink' : link.state === 'broken' ? 'brokenLink' : 'otherLink';
  }

  /** Another tab kept a newer draft; it is shown only when the person asks for it. */
  otherTabKept(): void {
    this.#notice = 'otherTab';
  }

  takeOtherTab(units: UnitSystem): void {
    const kept = keptDraft(this.#shelf);
    if (kept) this.#take(change(this.#history, switchUnits(kept, units)));
  }

  useUnits(units: UnitSystem): void {
    const draft = switchUnits(this.draft, units);
    if (draft !== this.draft) this.#take({ ...this.#history, present: draft });
  }

  title(text: string): void {
    this.#step(setTitle(this.draft, text), 'title');
  }
  jobBox(box: JobBoxId, text: string, typed: boolean): void {
    this.#step(setJobBox(this.draft, box, text), typed ? box : null);
  }
  areaBoxes(id: number, texts: Partial<Record<AreaBoxId, string>>, typed: boolean): void {
    this.#step(setAreaBoxes(this.draft, id, texts), typed ? `${id}.${Object.keys(texts).join()}` : null);
  }
  add(): void {
    this.#step(addArea(this.draft));
  }
  duplicate(id: number, copyName: (name: string) => string): void {
    this.#step(duplicateArea(this.draft, id, copyName));
  }
  remove(id: number): void {
    this.#step(removeArea(this.draft, id));
  }
  move(id: number, places: number): void {
    this.#step(moveArea(this.draft, id, places));
  }
  startAgain(): void {
    this.#step(freshDraft(this.draft.units));
  }
  undo(units: UnitSystem): void {
    const back = undo(this.#history);
    this.#take({ ...back, present: switchUnits(back.present, units) });
  }
  redo(units: UnitSystem): void {
    const forward = redo(this.#history);
    this.#take({ ...forward, present: switchUnits(forward.present, units) });
  }

  #step(draft: Draft, touched: string | null = null): void {
    this.#take(change(this.#history, draft, touched));
  }

  #take(history: History<Draft>): void {
    this.#history = history;
    this.#notice = keepDraft(this.#shelf, history.present) ? 'kept' : 'notKept';
  }
}

/** Whether a storage event tells of another tab's job. */
export const isOtherTab = (event: StorageEvent): boolean => event.key === DRAFT_KEY && event.newValue !== null;
