import type { BedSetup } from '@sim/bed/types.ts';

/** A glance slower than those before counts for so much of what the next is reckoned to take: a machine may be busy for once. */
const SLOWER_BY = 0.3;

/** Cells of a run, which its time goes with. */
const cellsOf = ({ tile, cellMm }: BedSetup): number => (tile.lengthMm * tile.widthMm) / (cellMm * cellMm);

/** Reckons how long a glance takes on this machine, by those before it. */
export class GlanceTime {
  /** What a cell takes, ms; 0 while nothing is known. */
  #cellMs = 0;

  /**
   * Notes what a run took.
   * @param isWarm its worker had done such work before; another's time counts only where it is the quickest so far
   */
  note(setup: BedSetup, ms: number, isWarm: boolean): void {
    const cellMs = ms / cellsOf(setup);
    if (this.#cellMs === 0 || cellMs < this.#cellMs) this.#cellMs = cellMs;
    else if (isWarm) this.#cellMs += SLOWER_BY * (cellMs - this.#cellMs);
  }

  /** What a glance at this bed is reckoned to take, ms; 0 while nothing is known. */
  of(setup: BedSetup): number {
    return this.#cellMs * cellsOf(setup);
  }
}
