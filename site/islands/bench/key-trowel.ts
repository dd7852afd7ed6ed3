import type { Bench } from './bench.svelte.ts';
import { onSlab } from './on-slab.ts';
import { keptStroke, readStroke, type Spot } from './stroke.ts';

/** The trowel led by keys: not taken up, held over the floor, or down and drawing. */
export type TrowelKeys = 'rest' | 'held' | 'down';

const STEP_MM = 15;
const FINE_MM = 4;
const WAYS: Record<string, Spot> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/**
 * Combing by keys: Enter takes the trowel up, puts it down and lifts it off again, arrows move it (with Shift in small
 * steps), Escape puts it back. The bed is combed along the way it went, as under a hand.
 */
export class KeyTrowel {
  state: TrowelKeys = 'rest';
  #spots: Spot[] = [];
  readonly #bench: Bench;

  constructor(bench: Bench) {
    this.#bench = bench;
  }

  /** @returns false for a key that is not the trowel's */
  key(key: string, fine: boolean): boolean {
    if (this.#bench.stage !== 'comb' || this.#bench.tool !== 'comb') this.state = 'rest';
    else if (key === 'Enter') return this.#next();
    if (this.state === 'rest') return false;
    if (key === 'Escape') return this.#putBack();
    const way = WAYS[key];
    if (!way) return false;
    this.#move(way, fine ? FINE_MM : STEP_MM);
    return true;
  }

  #at(): Spot {
    const { trowelAt, setup } = this.#bench;
    return trowelAt ? [trowelAt.x, trowelAt.y] : [-0.4 * setup.tile.lengthMm, -0.4 * setup.tile.widthMm];
  }

  #stand([x, y]: Spot, alongDeg: number): void {
    this.#bench.trowelAt = { x, y, alongDeg };
  }

  #next(): true {
    const { comb } = this.#bench.setup;
    if (this.state === 'rest') {
      this.state = 'held';
      this.#stand(this.#at(), this.#bench.trowelAt?.alongDeg ?? comb.directionDeg);
    } else if (this.state === 'held') {
      this.state = 'down';
      this.#spots = [this.#at()];
    } else {
      this.state = 'rest';
      this.#comb(false);
    }
    return true;
  }

  #putBack(): true {
    this.state = 'rest';
    this.#spots = [];
    this.#bench.trowelAt = null;
    return true;
  }

  #move([right, away]: Spot, stepMm: number): void {
    const [x, y] = this.#at();
    const to: Spot = [x + right * stepMm, y + away * stepMm];
    if (!onSlab(to, this.#bench.setup.tile)) return;
    this.#stand(to, (Math.atan2(away, right) * 180) / Math.PI);
    if (this.state !== 'down') return;
    this.#spots.push(to);
    this.#comb(true);
  }

  #comb(moving: boolean): void {
    const path = keptStroke(this.#spots);
    const stroke = readStroke(path);
    if (stroke) this.#bench.changePart('comb', { pattern: 'drawn', path, directionDeg: stroke.directionDeg }, moving);
  }
}
