import { BedStopped } from '@sim/bed/run.ts';
import type { BedFrame, BedResult, BedSetup } from '@sim/bed/types.ts';
import { createBedRunner, type BedRunner } from '@sim/worker/client.ts';
import { oneByOne } from '@sim/worker/one-by-one.ts';

import { keepFrame, shareFloor } from './frames.ts';
import { GlanceTime } from './glance-time.ts';
import { onceAPicture } from './once-a-picture.ts';
import { waitsForRest } from './waits-for-rest.ts';

/** A slider at rest for this long gets the full run. */
const REST_MS = 220;

/** A worker is quick at glances once one takes no less than this share of the one before; so many are made at the most. */
const AS_QUICK = 0.85;
const MOST_WARMING = 6;

/** A look at a bed under a moving hand. */
interface Glance {
  coarse: BedSetup;
  /** What follows when the hand rests; null for a bed that nobody looks at. */
  full: BedSetup | null;
  /** No tile lies there yet, and the full run shows its pictures as they come. */
  live: boolean;
  /** What comes of it takes long: the floor is shown combed for it at once, and the outcome waits until the hand rests. */
  ahead: boolean;
  /** When it was asked for, ms. */
  at: number;
}

/** How a bed is computed: by which worker, what of it is shown, and whether it is still wanted. */
interface Way {
  runner: BedRunner;
  pictures: 'combed' | 'all';
  /** Its pictures are shown as they come; otherwise the bed before stands until this one is done. */
  live: boolean;
  wanted: () => boolean;
}

/** A floor combed for a bed that has not come about yet. */
interface Combed {
  setup: BedSetup;
  frame: BedFrame;
}

/** What kinds of work a glance takes. */
const workOf = ({ comb, actions }: BedSetup, live: boolean): string =>
  [comb.pattern, ...(live ? [] : actions.map((action) => action.do))].join(' ');

/** One bed under way: its pictures as they come, and what came of it. */
export class BedProgress {
  /** The set-up the pictures belong to. */
  setup = $state.raw<BedSetup | null>(null);
  frames = $state.raw<BedFrame[]>([]);
  result = $state.raw<BedResult | null>(null);
  /** Share done while a run is under way, else null. */
  share = $state<number | null>(null);
  /** What is shown is older than what was asked for last. */
  behind = $state(false);
  /** The floor combed for what was asked for last, where that takes long to come about; what came of the bed before stands. */
  ahead = $state.raw<Combed | null>(null);
  /** Runs begun so far. */
  begun = $state(0);
  /** What went wrong, in the solver's words. */
  problem = $state('');
  #full: BedRunner | null = null;
  /** Glances have a worker of their own: the full run's is ended when the hand moves on, and a new one starts slowly. */
  #quick: BedRunner | null = null;
  #rest: ReturnType<typeof setTimeout> | undefined;
  /** Counts what takes the place of a full run, and what takes the place of a glance. */
  #fullTurn = 0;
  #glanceTurn = 0;
  readonly #glances = oneByOne<Glance>((glance) => this.#look(glance));
  #newest: Glance | null = null;
  /** What the worker of the glances has been made quick at. */
  #quickAt = '';
  readonly #time = new GlanceTime();
  readonly #shown = onceAPicture();

  /**
   * Computes a bed; the latest asked for wins.
   * @param live shows its pictures as they come; otherwise the bed before stands until this one is done
   * @returns the result, or null when another took its place
   */
  run(setup: BedSetup, live = true): Promise<BedResult | null> {
    this.behind = true;
    return this.#run(setup, live);
  }

  async #run(setup: BedSetup, live: boolean): Promise<BedResult | null> {
    this.#forget();
    const turn = this.#fullTurn;
    this.#full ??= createBedRunner();
    const show = await this.#compute(setup, {
      runner: this.#full,
      pictures: 'all',
      live,
      wanted: () => turn === this.#fullTurn,
    });
    const result = show();
    if (turn === this.#fullTurn) this.behind = false;
    return result;
  }

  /**
   * A coarse bed at once, the full one when the hand rests and the coarse one has been seen.
   * @param live only the comb is seen, so nothing more is computed at once; otherwise what the whole work comes to, or,
   * where that takes long on this machine, the floor combed for it
   */
  glance(coarse: BedSetup, full: BedSetup, live = true): void {
    clearTimeout(this.#rest);
    this.#fullTurn += 1;
    this.#full?.cancel();
    this.#newest = { coarse, full, live, ahead: !live && this.#isLong(coarse), at: performance.now() };
    // A full run under way is ended by this, and combing is no run.
    if (live || this.#newest.ahead) this.share = null;
    this.behind = true;
    this.#glances.ask(this.#newest);
  }

  /** Whether what comes of a step is waited for until the hand rests; under a hand that moves on, as at its first step. */
  #isLong(coarse: BedSetup): boolean {
    const before = this.#newest;
    if (before && !before.live && performance.now() - before.at < REST_MS) return before.ahead;
    return waitsForRest(this.#time.of(coarse), coarse, before?.coarse ?? this.setup);
  }

  /**
   * While nothing is under way: beds that nobody sees start the worker of the glances and make it quick at such work.
   * @param live as for a glance
   */
  warm(coarse: BedSetup, live: boolean): void {
    if (this.share === null && this.#quickAt !== workOf(coarse, live))
      this.#glances.ask({
        coarse,
        full: null,
        live,
        ahead: !live && waitsForRest(this.#time.of(coarse), coarse, coarse),
        at: performance.now(),
      });
  }

  /** Runs are quick after some; whoever asks for a bed meanwhile waits for one of them at the most. */
  async #warmUp({ coarse, live, ahead }: Glance, runner: BedRunner): Promise<void> {
    const newest = this.#newest;
    this.#quickAt = workOf(coarse, live);
    if (live || ahead) {
      await runner.comb(coarse);
      return;
    }
    let before = Infinity;
    for (let n = 0; n < MOST_WARMING && newest === this.#newest; n += 1) {
      const from = performance.now();
      await runner.run(coarse, { pictures: 'combed' });
      const took = performance.now() - from;
      this.#time.note(coarse, took, true);
      if (took > AS_QUICK * before) return;
      before = took;
    }
  }

  async #look(glance: Glance): Promise<() => void> {
    const turn = this.#glanceTurn;
    this.#quick ??= createBedRunner();
    const { coarse, full, live } = glance;
    if (!full) {
      await this.#warmUp(glance, this.#quick).catch(() => undefined);
      return () => undefined;
    }
    const wanted = (): boolean => turn === this.#glanceTurn;
    if (glance.ahead) return this.#lookAhead(glance, full, { runner: this.#quick, wanted });
    const show = live
      ? await this.#comb(coarse, this.#quick, wanted)
      : // The way between is looked at when the hand rests.
        await this.#compute(coarse, { runner: this.#quick, pictures: 'combed', live, wanted });
    return () => {
      const isShown = show() !== null;
      if (glance !== this.#newest) return;
      this.behind = false;
      if (isShown) this.#whenAtRest(glance, () => void this.#run(full, live));
    };
  }

  /** Shows the floor combed for a bed; what comes of it follows when the hand rests. */
  async #lookAhead(
    glance: Glance,
    full: BedSetup,
    { runner, wanted }: Pick<Way, 'runner' | 'wanted'>,
  ): Promise<() => void> {
    const combed = await runner.comb(glance.coarse).catch(() => null);
    return () => {
      if (!wanted()) return;
      if (combed) this.ahead = { setup: glance.coarse, frame: combed };
      if (glance !== this.#newest) return;
      this.#whenAtRest(glance, () => void this.#comeAbout(glance.coarse, full));
    };
  }

  /** What comes of a bed that takes long, coarse and then in full; by the worker that a moving hand may end. */
  async #comeAbout(coarse: BedSetup, full: BedSetup): Promise<void> {
    const turn = this.#fullTurn;
    this.#full ??= createBedRunner();
    const wanted = (): boolean => turn === this.#fullTurn;
    const show = await this.#compute(coarse, { runner: this.#full, pictures: 'combed', live: false, wanted });
    const isShown = show() !== null;
    if (!wanted()) return;
    this.behind = false;
    if (isShown) await this.#run(full, false);
  }

  #whenAtRest({ at }: Glance, then: () => void): void {
    this.#rest = setTimeout(then, Math.max(0, REST_MS - (performance.now() - at)));
  }

  /** Combs a floor; what it resolves with shows it and gives its picture, or null when that is not wanted. */
  async #comb(setup: BedSetup, runner: BedRunner, wanted: () => boolean): Promise<() => BedFrame | null> {
    this.problem = '';
    try {
      const frame = await runner.comb(setup);
      return () => {
        if (!wanted()) return null;
        this.setup = setup;
        this.frames = [frame];
        this.result = null;
        this.ahead = null;
        return frame;
      };
    } catch (problem) {
      return () => {
        if (wanted()) this.#fail(problem);
        return null;
      };
    }
  }

  #fail(problem: unknown): void {
    this.result = null;
    this.ahead = null;
    if (!(problem instanceof BedStopped)) this.problem = problem instanceof Error ? problem.message : String(problem);
  }

  /** Computes a bed; what it resolves with shows what came of it and gives the result, or null when that is not wanted. */
  async #compute(setup: BedSetup, { runner, pictures, live, wanted }: Way): Promise<() => BedResult | null> {
    this.share = 0;
    this.begun += 1;
    const own = this.begun;
    this.problem = '';
    let frames: BedFrame[] = [];
    const from = performance.now();
    /** The next may be under way by then: the share is its. */
    const ended = (): void => {
      if (own === this.begun) this.share = null;
    };
    try {
      const run = await runner.run(setup, {
        pictures,
        onFrame: (frame) => {
          if (!wanted()) return;
          frames = keepFrame(frames, shareFloor(frames[0], frame));
          if (!live) return;
          this.#shown.do(() => {
            if (!wanted()) return;
            this.setup = setup;
            this.frames = frames;
            this.result = null;
            this.ahead = null;
            this.behind = false;
          });
        },
        onProgress: (share) => {
          if (wanted()) this.share = share;
        },
      });
      this.#time.note(setup, performance.now() - from, runner === this.#quick);
      return () => {
        if (!wanted()) return null;
        this.#shown.drop();
        frames = keepFrame(frames, shareFloor(frames[0], run.frame));
        this.setup = setup;
        this.frames = frames;
        this.result = run.result;
        this.ahead = null;
        ended();
        return run.result;
      };
    } catch (problem) {
      return () => {
        if (!wanted()) return null;
        ended();
        this.#fail(problem);
        return null;
      };
    }
  }

  /** Whatever was asked for before is asked for no more. */
  #forget(): void {
    clearTimeout(this.#rest);
    this.#shown.drop();
    this.#glances.drop();
    this.#newest = null;
    this.ahead = null;
    this.#fullTurn += 1;
    this.#glanceTurn += 1;
  }

  stop(): void {
    this.#forget();
    // The bed before may still stand; what came of it is no answer to what was asked since.
    if (this.share !== null) this.result = null;
    this.#full?.cancel();
    this.#quick?.cancel();
    this.#quickAt = '';
    this.share = null;
    this.behind = false;
  }

  close(): void {
    this.stop();
    this.#full?.close();
    this.#quick?.close();
    this.#full = null;
    this.#quick = null;
  }
}
