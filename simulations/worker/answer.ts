import { combOnly, runBed } from '../bed/run.ts';
import type { BedFrame } from '../bed/types.ts';
import { buffersOf, type FromWorker, PROTOCOL, type ToWorker } from './protocol.ts';

/** Progress is told in steps of this share. */
const PROGRESS_STEP = 0.02;

/** Does what a message asks and posts what comes of it; apart from the worker so that it can be tested without one. */
export function answer(message: ToWorker, post: (reply: FromWorker, handOver: ArrayBuffer[]) => void): void {
  const { id, setup } = message;
  if (message.protocol !== PROTOCOL) {
    post({ kind: 'failed', id, says: 'The page and its worker are of different versions; reload the page.' }, []);
    return;
  }
  let told = -1;
  const send = (frame: BedFrame): void => {
    post({ kind: 'frame', id, frame }, buffersOf(frame));
  };
  try {
    if (message.kind === 'comb') {
      const frame = combOnly(setup);
      post({ kind: 'combed', id, frame }, buffersOf(frame));
      return;
    }
    const run = runBed(setup, {
      ...(message.pictures === 'all' && { onFrame: send }),
      ...(message.pictures === 'combed' && { onCombed: send }),
      onProgress: (share) => {
        // The end is told however little came since the share told last.
        if (share >= told + PROGRESS_STEP || (share === 1 && told < 1)) {
          told = share;
          post({ kind: 'progress', id, share }, []);
        }
        return false;
      },
    });
    post({ kind: 'done', id, run }, buffersOf(run.frame));
  } catch (problem) {
    post({ kind: 'failed', id, says: problem instanceof Error ? problem.message : String(problem) }, []);
  }
}
