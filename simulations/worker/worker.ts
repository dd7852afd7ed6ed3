import { answer } from './answer.ts';
import { holdLife } from './life.ts';
import type { ToWorker } from './protocol.ts';

/** What a dedicated worker has that a page has not. */
interface WorkerScope {
  name: string;
  onmessage: ((event: MessageEvent<ToWorker>) => void) | null;
  postMessage(message: unknown, handOver: Transferable[]): void;
}

const scope = globalThis as unknown as WorkerScope;
const alive = holdLife(scope.name);
scope.onmessage = async (event) => {
  await alive;
  answer(event.data, (reply, handOver) => {
    scope.postMessage(reply, handOver);
  });
};
