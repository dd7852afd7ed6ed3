import { answer } from './answer.ts';
import type { ToWorker } from './protocol.ts';

/** What a dedicated worker has that a page has not. */
interface WorkerScope {
  onmessage: ((event: MessageEvent<ToWorker>) => void) | null;
  postMessage(message: unknown, handOver: Transferable[]): void;
}

const scope = globalThis as unknown as WorkerScope;
scope.onmessage = (event) => {
  answer(event.data, (reply, handOver) => {
    scope.postMessage(reply, handOver);
  });
};
