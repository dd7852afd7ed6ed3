import { bank } from '@quiz/bank.ts';
import { readRound } from '@quiz/records/class-round.ts';
import { readHandInLine } from '@quiz/records/hand-in.ts';
import { holdLife } from '@sim/worker/life.ts';

import { markAll } from './mark-all.ts';
import type { MarkingReply, MarkingRequest } from './marking-protocol.ts';

const say = (reply: MarkingReply): void => self.postMessage(reply);

const alive = holdLife(self.name);

self.addEventListener('message', async ({ data }: MessageEvent<MarkingRequest>) => {
  await alive;
  const { run } = data;
  const round = readRound(data.round);
  try {
    if (!round) throw new Error('The round could not be read.');
    const handIns = data.lines.map(readHandInLine).flatMap((reading) => (reading.ok ? [reading.handIn] : []));
    say({
      kind: 'marks',
      run,
      marks: markAll(bank, round, handIns, (share) => say({ kind: 'progress', run, share })),
    });
  } catch (problem) {
    say({ kind: 'failed', run, message: problem instanceof Error ? problem.message : String(problem) });
  }
});
