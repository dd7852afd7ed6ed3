import type { Plan } from '@sim/estimate/plan-types.ts';
import { lifeName, watchLife } from '@sim/worker/life.ts';
import type { UnitSystem } from '@sim/units/format.ts';

import type { PlanReply, PlanRequest } from './plan-protocol.ts';

/** Long enough that a word is typed to its end, short enough that the sheet feels alive. */
const PAUSE_MS = 250;
/** After this a bar and a way out are shown. */
const PATIENCE_MS = 500;

export type PlannerState = 'idle' | 'working' | 'cancelled' | 'failed';

/** Works out plans in a worker, the latest job only: a newer one ends the run before it. */
export class Planner {
  #worker: Worker | null = null;
  #run = 0;
  #pause: ReturnType<typeof setTimeout> | null = null;
  #patience: ReturnType<typeof setTimeout> | null = null;
  #last: { key: string; job: unknown; units: UnitSystem } | null = null;

  plan: Plan | null = $state.raw(null);
  state: PlannerState = $state('idle');
  share: number = $state(0);
  /** The run has lasted long enough to show a bar. */
  slow: boolean = $state(false);

  /** Asks for the plan of a job; the same job again is not worked out twice. */
  ask(job: unknown, units: UnitSystem): void {
    const key = JSON.stringify([job, units]);
    if (key === this.#last?.key) return;
    this.#last = { key, job, units };
    this.#wait(PAUSE_MS);
  }

  /** Nothing can be planned: a run under way is of no use. */
  none(): void {
    this.#last = null;
    this.#stop();
    this.state = 'idle';
  }

  cancel(): void {
    this.#stop();
    this.state = 'cancelled';
  }

  again(): void {
    if (this.#last) this.#wait(0);
  }

  end(): void {
    this.#stop();
  }

  #wait(pause: number): void {
    if (this.#pause) clearTimeout(this.#pause);
    this.#pause = setTimeout(() => this.#start(), pause);
  }

  #start(): void {
    if (!this.#last) return;
    if (this.state === 'working') this.#stop();
    this.#worker ??= this.#hire();
    this.#run += 1;
    this.state = 'working';
    this.share = 0;
    this.#patience = setTimeout(() => (this.slow = true), PATIENCE_MS);
    const { job, units } = this.#last;
    this.#worker.postMessage({ run: this.#run, job, units } satisfies PlanRequest);
  }

  #hire(): Worker {
    const name = lifeName();
    const worker = new Worker(new URL('./plan.worker.ts', import.meta.url), { type: 'module', name });
    const lose = (): void => {
      if (worker === this.#worker) this.#lose();
    };
    watchLife(worker, name, lose);
    worker.addEventListener('message', (event: MessageEvent<PlanReply>) => this.#hear(event.data));
    worker.addEventListener('error', lose);
    return worker;
  }

  /** The worker is of no use any more; the next plan gets a new one. */
  #lose(): void {
    const wasWorking = this.state === 'working';
    this.#worker?.terminate();
    this.#worker = null;
    if (wasWorking) this.#settle('failed');
  }

  #hear(reply: PlanReply): void {
    if (reply.run !== this.#run) return;
    if (reply.kind === 'progress') {
      this.share = reply.share;
      return;
    }
    if (reply.kind === 'plan') this.plan = reply.plan;
    this.#settle(reply.kind === 'plan' || reply.kind === 'refused' ? 'idle' : 'failed');
  }

  #settle(state: PlannerState): void {
    if (this.#patience) clearTimeout(this.#patience);
    this.slow = false;
    this.state = state;
  }

  /** A plan is one long sum: ending its worker is the only way to end it at once. */
  #stop(): void {
    if (this.#pause) clearTimeout(this.#pause);
    this.#settle(this.state);
    if (this.state !== 'working') return;
    this.#worker?.terminate();
    this.#worker = null;
  }
}
