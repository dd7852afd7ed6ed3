import { readJob } from '@sim/estimate/job.ts';
import { planJob } from '@sim/estimate/plan.ts';
import { holdLife } from '@sim/worker/life.ts';

import type { PlanReply, PlanRequest } from './plan-protocol.ts';

const say = (reply: PlanReply): void => self.postMessage(reply);

const alive = holdLife(self.name);

self.addEventListener('message', async ({ data }: MessageEvent<PlanRequest>) => {
  await alive;
  const { run, units } = data;
  try {
    const reading = readJob(data.job);
    if (!reading.ok) {
      say({ kind: 'refused', run, faults: reading.faults });
      return;
    }
    let told = 0;
    const onProgress = (share: number): boolean => {
      // A hundredth at a time: more messages than that would cost more than the draws.
      if (share >= told + 0.01) {
        told = share;
        say({ kind: 'progress', run, share });
      }
      return false;
    };
    const plan = planJob(reading.value.job, { units, onProgress }, reading.value.assumed);
    say({ kind: 'plan', run, plan });
  } catch (problem) {
    say({ kind: 'failed', run, message: problem instanceof Error ? problem.message : String(problem) });
  }
});
