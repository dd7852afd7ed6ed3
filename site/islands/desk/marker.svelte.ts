import { writeRound } from '@quiz/records/class-round.ts';
import type { DeskRound } from '@quiz/records/desk-book.ts';
import { lifeName, watchLife } from '@sim/worker/life.ts';

import type { ClassMarks, MarkingReply, MarkingRequest } from './marking-protocol.ts';

/** Marks the open round in a worker; a newer state of it ends the run before. */
export class Marker {
  #worker: Worker | null = null;
  #run = 0;
  marks: ClassMarks | null = $state.raw(null);
  /** Share done while marking, else null. */
  share: number | null = $state(null);
  failed: boolean = $state(false);

  mark(round: DeskRound): void {
    if (this.share !== null) this.end();
    this.#run += 1;
    this.share = 0;
    this.failed = false;
    this.#worker ??= this.#hire();
    const request: MarkingRequest = { run: this.#run, round: writeRound(round.round), lines: [...round.lines] };
    this.#worker.postMessage(request);
  }

  end(): void {
    this.#worker?.terminate();
    this.#worker = null;
    this.share = null;
  }

  #hire(): Worker {
    const name = lifeName();
    const worker = new Worker(new URL('./mark.worker.ts', import.meta.url), { type: 'module', name });
    const lose = (): void => {
      if (worker === this.#worker) this.#lose();
    };
    watchLife(worker, name, lose);
    worker.addEventListener('message', (event: MessageEvent<MarkingReply>) => this.#hear(event.data));
    worker.addEventListener('error', lose);
    return worker;
  }

  /** The worker is of no use any more; the next marking gets a new one. */
  #lose(): void {
    const wasMarking = this.share !== null;
    this.end();
    if (wasMarking) this.#fail();
  }

  #hear(reply: MarkingReply): void {
    if (reply.run !== this.#run) return;
    if (reply.kind === 'progress') this.share = reply.share;
    else if (reply.kind === 'failed') this.#fail();
    else {
      this.marks = reply.marks;
      this.share = null;
    }
  }

  #fail(): void {
    this.share = null;
    this.failed = true;
  }
}
