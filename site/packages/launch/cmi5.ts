import Cmi5 from '@xapi/cmi5';

import type { Platform } from './platform.ts';

/** Where our line is kept between visits, as the xAPI State resource names it. */
const STATE = 'ridge-to-bed';

/** Whether this page was opened by a platform that speaks cmi5: it then carries the launch parameters. */
export const isCmi5Launch = (): boolean => Cmi5.isCmiAvailable;

/**
 * A platform that speaks cmi5 (Quartz, first edition). `completed` and `passed` are said once each, as the profile
 * asks; nothing is said to have failed.
 */
export function cmi5Platform(cmi5: Cmi5 = Cmi5.instance): Platform {
  let completed = false;
  let passed = false;
  let ended = false;
  const state = () => {
    const { activityId, actor, registration } = cmi5.getLaunchParameters();
    return { activityId, agent: actor, registration, stateId: STATE };
  };
  return {
    start: async () => {
      await cmi5.initialize();
      try {
        const kept = await cmi5.xapi?.getState(state());
        const { line = '', page = '' } = (kept?.data ?? {}) as { line?: string; page?: string };
        return { line, page };
      } catch {
        return { line: '', page: '' }; // nothing was kept yet
      }
    },
    report: async (report, line, page) => {
      if (ended) return;
      await cmi5.xapi?.setState({ ...state(), state: { line, page } });
      if (report.complete && !completed) {
        completed = true;
        await cmi5.complete();
      }
      if (report.passed && !passed) {
        passed = true;
        await cmi5.pass({ scaled: Math.round((report.score ?? 0) * 100) / 100 });
      }
    },
    end: async () => {
      if (ended) return;
      ended = true;
      await cmi5.terminate();
    },
  };
}
