import type { Platform } from './platform.ts';
import { type Launch, openStore, type Store } from './xapi.ts';

/** Where our line is kept between visits, as the xAPI State resource names it. */
const STATE = 'ridge-to-bed';

/** What the platform decided before the launch (cmi5 Quartz, section 10). */
interface LaunchData {
  launchMode?: 'Normal' | 'Browse' | 'Review';
  masteryScore?: number;
  contextTemplate?: { contextActivities?: { category?: unknown[] }; extensions?: object };
}

/** What is kept between visits: our line, the page, and what was already said in this registration. */
interface Kept {
  line?: string;
  page?: string;
  said?: Result[];
}

type Result = 'completed' | 'passed';

/** Marks of statements (section 9.6.2): of the profile's own, and of those that the platform's judgement rests on. */
const CMI5 = { id: 'https://w3id.org/xapi/cmi5/context/categories/cmi5' };
const MOVE_ON = { id: 'https://w3id.org/xapi/cmi5/context/categories/moveon' };
/** The pass mark that was set is told with what was passed (section 9.6.3.2). */
const MASTERY = 'https://w3id.org/xapi/cmi5/context/extensions/masteryscore';

/** A time span as ISO 8601 writes it. */
const duration = (milliseconds: number): string => `PT${Math.max(0, Math.round(milliseconds / 10) / 100)}S`;

/** The platform's own context, with our marks beside its. */
const contextOf = ({ contextTemplate = {} }: LaunchData, categories: object[], extensions?: object): object => {
  const { contextActivities = {} } = contextTemplate;
  return {
    ...contextTemplate,
    contextActivities: { ...contextActivities, category: [...(contextActivities.category ?? []), ...categories] },
    ...(extensions && { extensions: { ...contextTemplate.extensions, ...extensions } }),
  };
};

interface Visit {
  readonly store: Store;
  readonly data: LaunchData;
  readonly begun: number;
}

/**
 * Begins a visit: what the platform decided, the learner's own settings (which are to be asked for), what was kept. The
 * first word comes last: a visit that cannot be gone on with is not begun.
 */
async function begin(launch: Launch): Promise<{ visit: Visit; kept: Kept }> {
  const store = await openStore(launch);
  const data = ((await store.kept('LMS.LaunchData')) ?? {}) as LaunchData;
  await store.profile('cmi5LearnerPreferences').catch(() => null);
  const kept = ((await store.kept(STATE)) ?? {}) as Kept;
  await store.say({ verb: 'initialized', context: contextOf(data, [CMI5]) });
  return { visit: { store, data, begun: Date.now() }, kept };
}

/** What is to be said of a result, by its name. */
const sayingOf = (what: Result, { data, begun }: Visit, scaled: number) => {
  const { masteryScore } = data;
  const extensions = what === 'passed' && masteryScore !== undefined ? { [MASTERY]: masteryScore } : undefined;
  return {
    verb: what,
    result: {
      ...(what === 'passed' ? { success: true, score: { scaled } } : { completion: true }),
      duration: duration(Date.now() - begun),
    },
    context: contextOf(data, [CMI5, MOVE_ON], extensions),
  };
};

/**
 * A platform that speaks cmi5 (Quartz, first edition). `completed` and `passed` are said once in a registration, over
 * all visits, as the profile asks; nothing is said to have failed. A platform that only shows the course (launch modes
 * Browse and Review) is told of no result and keeps nothing of it.
 */
export function cmi5Platform(launch: Launch): Platform {
  const said = new Set<Result>();
  let visit: Visit | null = null;
  /** Says it unless it was said before or the last word was; what did not get through may be tried again. */
  const once = async (what: Result, scaled: number, now: Visit): Promise<void> => {
    if (said.has(what) || visit !== now) return;
    said.add(what);
    try {
      await now.store.say(sayingOf(what, now, scaled));
    } catch (problem) {
      said.delete(what);
      throw problem;
    }
  };
  return {
    start: async () => {
      const begun = await begin(launch);
      const { line = '', page = '', said: before = [] } = begun.kept;
      for (const one of before) said.add(one);
      visit = begun.visit;
      return { line, page, learner: JSON.stringify(launch.actor) };
    },
    report: async (report, line, page) => {
      // The page may go, and the visit end, while something is being said.
      const now = visit;
      if (now?.data.launchMode !== 'Normal') return;
      const { masteryScore = 0 } = now.data;
      const scaled = Math.round((report.score ?? 0) * 100) / 100;
      if (report.complete) await once('completed', scaled, now);
      // The platform may ask for more than the package was made with: its mastery score decides.
      if (report.passed && scaled >= masteryScore) await once('passed', scaled, now);
      const kept: Kept = { line, page, said: [...said] };
      await now.store.keep(STATE, kept);
    },
    end: async () => {
      if (!visit) return;
      const { store, data, begun } = visit;
      visit = null;
      const result = { duration: duration(Date.now() - begun) };
      await store.say({ verb: 'terminated', result, context: contextOf(data, [CMI5]) }, true);
    },
  };
}
