import { defaultActions } from '@sim/bed/defaults.ts';
import { readSetup } from '@sim/bed/read-setup.ts';
import type { BedAction, BedFrame, BedResult, BedSetup } from '@sim/bed/types.ts';
import type { Fault } from '@sim/input/fault.ts';
import type { Cut } from '@sim/view/section/profile.ts';

import { BedProgress } from './bed-run.svelte.ts';
import { wantsStill } from './palette-now.ts';
import { atAGlance, startSetup, withCells } from './start-setup.ts';
import { mortarTold, type Told } from './told.ts';
import type { Tool } from './tool.ts';
import type { Gain } from './why/causes.ts';

/** Where the learner is in the loop. */
export type Stage = 'comb' | 'set' | 'pulled';
/** How the tile is seen once the bed may be looked into. */
export type Look = 'solid' | 'clear';
/** How a pulled tile is held. */
export type Hold = 'down' | 'lifted' | 'turned';

/** An act is shown once over this time. */
const SHOW_MS = 900;

/** A finished bed, as it was kept. */
export interface KeptBed {
  setup: BedSetup;
  combed: BedFrame;
  last: BedFrame;
  result: BedResult;
}

/** Everything the bench knows; components read it and call its methods. */
export class Bench {
  setup = $state.raw<BedSetup>(startSetup());
  /** What was told of the mortar in place of the model's numbers: a test, the weather. */
  told = $state.raw<Told>({});
  stage = $state<Stage>('comb');
  /** The share guessed before the pull, or null while none is given. */
  guess = $state<number | null>(null);
  /** The guess has gone into the learner's record, with what the bed first gave. */
  guessKept = false;
  /** The guess was asked for and not given, or the bed was looked into first. */
  looked = $state(false);
  look = $state<Look>('solid');
  hold = $state<Hold>('turned');
  cut = $state.raw<Cut | null>(null);
  /** The tiles next door are shown, and the step to them is told. */
  neighbours = $state(false);
  tool = $state<Tool>('turn');
  /** A mouse is there: the tool of the step may be in hand at once, since dragging scrolls no page. */
  mouse = false;
  /** Where the trowel is while a hand draws it; null at rest. */
  trowelAt = $state.raw<{ x: number; y: number; alongDeg: number } | null>(null);
  /** The hand's force for pushes and slides to come, N. */
  forceN = $state(defaultActions.press.forceN);
  /** Which picture of the run is shown; null follows the newest. */
  cursor = $state<number | null>(null);
  /** A bed kept to be compared with the one on the bench. */
  kept = $state.raw<KeptBed | null>(null);
  /** This browser draws no three-dimensional picture; the bed is drawn from above, and no tool reaches into it. */
  flat = $state(false);
  /** Takes the three-dimensional picture as it stands; null where there is none of the bed that the figures tell of. */
  snapshot: (() => Promise<ImageBitmap | null>) | null = null;
  /** Draws it at once in the colours of paper and hands it over; false where there is none of that bed. */
  still: ((wide: number, take: (picture: HTMLCanvasElement) => void) => boolean) | null = null;
  /** Where the section is taken, as a share of the half side off the middle, and whether it is drawn close up. */
  sight = $state<{ along: Cut['along']; share: number; close: boolean }>({ along: 'length', share: 0, close: true });
  /** What single changes would have brought, once that has been computed; most first. */
  gains = $state.raw<Gain[]>([]);
  readonly bed = new BedProgress();

  /** The line of the section. */
  readonly sightCut = $derived.by<Cut>(() => {
    const { along, share } = this.sight;
    const { widthMm, lengthMm } = this.setup.tile;
    return { along, atMm: (share * (along === 'length' ? widthMm : lengthMm)) / 2 };
  });
  /** The figures and the map may be shown: the guess is in, or was waived. */
  readonly open = $derived(this.stage === 'pulled' || this.looked);
  /** Place of the shown picture among those of the run. */
  readonly at = $derived(
    this.stage === 'comb' ? 0 : Math.min(this.cursor ?? Infinity, Math.max(0, this.bed.frames.length - 1)),
  );
  readonly frame = $derived<BedFrame | null>(this.bed.frames[this.at] ?? null);
  /** The set-up that the picture and the figures belong to: the one asked for, once its bed is there. */
  readonly shownSetup = $derived<BedSetup>(this.bed.setup ?? this.setup);
  /** The newest picture is shown and the run has ended: figures and picture belong together. */
  readonly settled = $derived(
    this.bed.result !== null && (this.cursor === null || this.cursor >= this.bed.frames.length - 1),
  );

  start(): void {
    void this.#begin();
  }

  async #begin(): Promise<void> {
    if (await this.bed.run(this.setup)) this.#ready();
  }

  /** Nothing moves: what makes the next glances quick is done now. */
  #ready(): void {
    this.bed.warm(atAGlance(this.setup), this.stage === 'comb');
  }

  /** Changes the set-up. `moving`: a slider is under the hand, so a coarse bed is shown first. */
  change(next: Partial<BedSetup>, moving = false): void {
    this.setup = withCells({ ...this.setup, ...next });
    this.cursor = null;
    // A tile that lies there is looked at: one outcome takes the place of the other, and the page stays as it is meanwhile.
    const live = this.stage === 'comb';
    if (moving || !live) this.bed.glance(atAGlance(this.setup), this.setup, live);
    else void this.bed.run(this.setup);
  }

  changePart<P extends 'tile' | 'floor' | 'trowel' | 'comb' | 'mortar'>(
    part: P,
    next: Partial<BedSetup[P]>,
    moving = false,
  ): void {
    this.change({ [part]: { ...this.setup[part], ...next } }, moving);
  }

  /**
   * Changes the set-up if it can be made.
   * @returns why it cannot, or nothing; the bed then stays as it was
   */
  ask(next: Partial<BedSetup>, moving = false): Fault[] {
    const reading = readSetup(withCells({ ...this.setup, ...next }));
    if (!reading.ok) return reading.faults;
    this.change(next, moving);
    return [];
  }

  askPart<P extends 'tile' | 'floor'>(part: P, next: Partial<BedSetup[P]>, moving = false): Fault[] {
    return this.ask({ [part]: { ...this.setup[part], ...next } }, moving);
  }

  /** Takes the mortar as it is told; what a test or a word cannot mean is answered and changes nothing. */
  tell(told: Told, moving = false): Fault[] {
    const reading = mortarTold(this.setup, told);
    if (!reading.ok) return reading.faults;
    this.told = told;
    this.change({ mortar: reading.value.mortar }, moving);
    return [];
  }

  /** Lays the tile: from here on the work is done one act at a time. */
  set(): void {
    this.stage = 'set';
    this.tool = this.handy();
    this.trowelAt = null;
    this.cursor = null;
    this.#ready();
  }

  act(action: BedAction): void {
    if (this.stage === 'comb') this.set();
    // A tile that is worked on again after a lift was put back: the lift is no more its last word.
    this.setup = withCells({
      ...this.setup,
      actions: [...this.setup.actions.filter((one) => one.do !== 'lift'), action],
    });
    this.cursor = null;
    void this.#showWork(this.setup.actions.length - 1);
  }

  /** Runs the bed and then shows the act once as it went: the run itself is done before an eye could follow it. */
  async #showWork(act: number): Promise<void> {
    const { setup } = this;
    if (!(await this.bed.run(setup))) return;
    const { frames } = this.bed;
    const first = frames.findIndex(({ action }) => action === act);
    const last = frames.length - 1;
    if (wantsStill() || first < 1 || first === last) {
      this.#ready();
      return;
    }
    let shown: number | null = null;
    const from = performance.now();
    const step = (now: number): void => {
      // Whoever scrubs or changes something meanwhile has the word.
      if (this.setup !== setup || this.bed.frames !== frames || this.cursor !== shown) return;
      const share = (now - from) / SHOW_MS;
      shown = share >= 1 ? null : first + Math.floor(share * (last - first + 1));
      this.cursor = shown;
      if (shown === null) this.#ready();
      else requestAnimationFrame(step);
    };
    requestAnimationFrame(step);
  }

  dropAct(at: number): void {
    this.change({ actions: this.setup.actions.filter((_, n) => n !== at) });
  }

  replaceActs(actions: BedAction[]): void {
    this.change({ actions });
  }

  /** Pulls the tile, with the guess or (null) without one. */
  pull(guess: number | null): void {
    this.guess = guess;
    this.guessKept = false;
    this.stage = 'pulled';
    this.tool = 'turn';
    this.holdAs('turned');
    this.cursor = null;
    this.#ready();
  }

  /** Holds a pulled tile. The tiles next door, and the step to them, are there only while it lies on its bed. */
  holdAs(hold: Hold): void {
    this.hold = hold;
    if (hold !== 'down') this.neighbours = false;
  }

  peek(): void {
    // After the pull there is nothing left to give away.
    if (this.stage !== 'pulled') this.looked = true;
  }

  /** A clean floor, the same set-up: comb again. */
  again(): void {
    this.stage = 'comb';
    this.guess = null;
    this.looked = false;
    this.cursor = null;
    this.look = 'solid';
    this.tool = this.handy();
  }

  /** The tool one reaches for at this step. */
  handy(): Tool {
    if (!this.mouse || this.stage === 'pulled') return 'turn';
    return this.stage === 'comb' ? 'comb' : 'press';
  }

  /** Puts a whole set-up on the bench, as from a link. */
  put(setup: BedSetup, told: Told = {}): void {
    this.again();
    this.setup = withCells(setup);
    this.told = told;
    this.start();
  }

  /** Keeps the bed as it is, beside the one to come. */
  keep(): void {
    const { frames, result, setup } = this.bed;
    const combed = frames[0];
    const last = frames.at(-1);
    if (combed && last && result && setup) this.kept = { setup, combed, last, result };
  }

  letGo(): void {
    this.kept = null;
  }

  /** Puts the kept bed on the bench and keeps the other. */
  swap(): void {
    const { kept } = this;
    if (!kept) return;
    this.keep();
    this.change(kept.setup);
  }

  close(): void {
    this.bed.close();
  }
}

/** An act as the buttons give it. */
export const plainAct = (kind: BedAction['do']): BedAction => ({ ...defaultActions[kind] });
