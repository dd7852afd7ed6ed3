import { readJob } from '@sim/estimate/job.ts';
import { planJob } from '@sim/estimate/plan.ts';

import type { PlanReply, PlanRequest } from './plan-protocol.ts';

const say = (reply: PlanReply): void => self.postMessage(reply);

self.addEventListener('message', ({ data }: MessageEvent<PlanRequest>) => {
  const { run, units } = data;
  try {
    const reading = readJob(data.job);
    if (!reading.ok) {
      say({ kind: 'refused', run, faults: reading.faults });
      return;
    }
    const plan = planJob(reading.value.job, { units }, reading.value.assumed);
    say({ kind: 'plan', run, plan });
  } catch (problem) {
    say({ kind: 'failed', run, message: problem instanceof Error ? problem.message : String(problem) });
  }
});
