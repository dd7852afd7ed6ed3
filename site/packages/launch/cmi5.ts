import Cmi5 from '@xapi/cmi5';

import type { Platform } from './platform.ts';

/** Where our line is kept between visits, as the xAPI State resource names it. */
const STATE = 'ridge-to-bed';

/** Whether this page was opened by a platform that speaks cmi5: it then carries the launch parameters. */
export const isCmi5Launch = (): boolean => Cmi5.isCmiAvailable;

const CATEGORY = { id: 'https://w3id.org/xapi/cmi5/context/categories/cmi5' };

/** A time span as ISO 8601 writes it. */
const duration = (milliseconds: number): string => `PT${Math.max(0, Math.round(milliseconds / 10) / 100)}S`;

/**
 * The last statement, sent by the page as it goes. The library's own request would be dropped with the page; one that
 * is kept alive is not.
 */
async function sayTerminated(cmi5: Cmi5): Promise<void> {
  const { activityId, actor, registration, endpoint } = cmi5.getLaunchParameters();
  const { contextActivities, ...context } = cmi5.getLaunchData().contextTemplate;
  const statement = {
    id: crypto.randomUUID(),
    actor,
    verb: { id: 'http://adlnet.gov/expapi/verbs/terminated', display: { en: 'terminated' } },
    object: { objectType: 'Activity', id: activityId },
    result: { duration: duration(Date.now() - cmi5.getInitializedDate().getTime()) },
    context: {
      ...context,
      registration,
      contextActivities: { ...contextActivities, category: [...(contextActivities?.category ?? []), CATEGORY] },
    },
    timestamp: new Date().toISOString(),
  };
  await fetch(`${endpoint.replace(/\/$/, '')}/statements`, {
    method: 'POST',
    keepalive: true,
    headers: {
      'Content-Type': 'application/json',
      'X-Experience-API-Version': '1.0.3',
      Authorization: `Basic ${cmi5.getAuthToken()}`,
    },
    body: JSON.stringify(statement),
  });
}

/** What is kept between visits: our line, the page, and what was already said in this registration. */
interface Kept {
  line?: string;
  page?: string;
  said?: Saying[];
}

type Saying = 'completed' | 'passed';

/**
 * A platform that speaks cmi5 (Quartz, first edition). `completed` and `passed` are said once in a registration, over
 * all visits, as the profile asks; nothing is said to have failed. A platform that only shows the course (launch modes
 * Browse and Review) is told of no result and keeps nothing of it.
 */
export function cmi5Platform(cmi5: Cmi5 = Cmi5.instance): Platform {
  const said = new Set<Saying>();
  let ended = false;
  const state = () => {
    const { activityId, actor, registration } = cmi5.getLaunchParameters();
    return { activityId, agent: actor, registration, stateId: STATE };
  };
  /** Says it unless it was said before; what did not get through may be tried again. */
  const once = async (what: Saying, say: () => Promise<unknown>): Promise<void> => {
    if (said.has(what)) return;
    said.add(what);
    try {
      await say();
    } catch (problem) {
      said.delete(what);
      throw problem;
    }
  };
  return {
    start: async () => {
      await cmi5.initialize();
      const learner = JSON.stringify(cmi5.getLaunchParameters().actor);
      try {
        const kept = await cmi5.xapi?.getState(state());
        const { line = '', page = '', said: before = [] } = (kept?.data ?? {}) as Kept;
        for (const one of before) said.add(one);
        return { line, page, learner };
      } catch {
        return { line: '', page: '', learner }; // nothing was kept yet
      }
    },
    report: async (report, line, page) => {
      const { launchMode, masteryScore = 0 } = cmi5.getLaunchData();
      if (ended || launchMode !== 'Normal') return;
      const scaled = Math.round((report.score ?? 0) * 100) / 100;
      if (report.complete) await once('completed', () => cmi5.complete());
      // The platform may ask for more than the package was made with: its mastery score decides.
      if (report.passed && scaled >= masteryScore) await once('passed', () => cmi5.pass({ scaled }));
      const kept: Kept = { line, page, said: [...said] };
      await cmi5.xapi?.setState({ ...state(), state: { ...kept } });
    },
    end: async () => {
      if (ended) return;
      ended = true;
      await sayTerminated(cmi5);
    },
  };
}
