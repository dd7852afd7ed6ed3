import { course, type ModuleSlug } from '@lessons/course.ts';
import { outcomes, type OutcomeId } from '@lessons/outcomes.ts';
import type { LearnerRecord } from '@site/storage/record/shape.ts';

/** What a platform is told, and what it keeps for us between visits. */
export interface Progress {
  /** Modules done, of those in the package. */
  readonly done: readonly ModuleSlug[];
  /** Latest points of each outcome that was asked, 0…1. */
  readonly points: Readonly<Partial<Record<OutcomeId, number>>>;
}

export const allModules: readonly ModuleSlug[] = course.map(({ slug }) => slug);
const allOutcomes = Object.values(outcomes).flat() as OutcomeId[];

export const noProgress: Progress = { done: [], points: {} };

/** The progress that a record shows: what is done, and each outcome's latest answer. */
export function progressOf(record: Pick<LearnerRecord, 'modules' | 'answers'>): Progress {
  const latest = new Map<OutcomeId, { at: number; points: number }>();
  for (const { outcome, at, points } of record.answers)
    if (at >= (latest.get(outcome)?.at ?? -Infinity)) latest.set(outcome, { at, points });
  return {
    done: allModules.filter((slug) => record.modules.some((one) => one.slug === slug && one.state === 'done')),
    points: Object.fromEntries([...latest].map(([outcome, { points }]) => [outcome, points])),
  };
}

/** Two progresses as one: done in either is done; this visit's points stand before an earlier visit's. */
export const joined = (earlier: Progress, now: Progress): Progress => ({
  done: allModules.filter((slug) => earlier.done.includes(slug) || now.done.includes(slug)),
  points: { ...earlier.points, ...now.points },
});

/** What to report of the modules in a package. */
export interface Report {
  /** Share of the modules that are done, 0…1. */
  readonly completion: number;
  /** Mean of the latest points over the outcomes asked, 0…1; null before the first answer. */
  readonly score: number | null;
  readonly complete: boolean;
  /** All done and the pass mark reached. */
  readonly passed: boolean;
}

/** @param pass the pass mark, 0…1 */
export function reportOf(progress: Progress, modules: readonly ModuleSlug[], pass: number): Report {
  const done = modules.filter((slug) => progress.done.includes(slug)).length;
  const asked = modules
    .flatMap((slug) => outcomes[slug] as readonly OutcomeId[])
    .flatMap((id) => progress.points[id] ?? []);
  const score = asked.length === 0 ? null : asked.reduce((sum, one) => sum + one, 0) / asked.length;
  const complete = done === modules.length;
  return {
    completion: done / Math.max(1, modules.length),
    score,
    complete,
    passed: complete && (score ?? 0) >= pass - 1e-9,
  };
}

/** SCORM 1.2 keeps 4096 characters of suspend data and no more (CMIString4096). */
export const MOST_SUSPENDED = 4096;
const MARK = 'rtb1';

/** Progress as a short line: modules as bits, each outcome as two figures of a percentage, `--` for not asked. */
export function suspend(progress: Progress): string {
  const bits = allModules.map((slug) => (progress.done.includes(slug) ? '1' : '0')).join('');
  const points = allOutcomes.map((id) => {
    const one = progress.points[id];
    return one === undefined ? '--' : String(Math.min(99, Math.round(one * 100))).padStart(2, '0');
  });
  return `${MARK}.${bits}.${points.join('')}`;
}

/** Reads such a line back; anything else, another edition's line too, is no progress. */
export function resume(line: string): Progress {
  const parts = /^rtb1\.([01]*)\.((?:\d\d|--)*)$/.exec(line);
  const [, bits = '', points = ''] = parts ?? [];
  if (bits.length !== allModules.length || points.length !== 2 * allOutcomes.length) return noProgress;
  return {
    done: allModules.filter((_, at) => bits[at] === '1'),
    points: Object.fromEntries(
      allOutcomes.flatMap((id, at) => {
        const two = points.slice(2 * at, 2 * at + 2);
        // Ninety-nine stands for a hundred: two figures are all there is room for.
        return two === '--' ? [] : [[id, two === '99' ? 1 : Number(two) / 100]];
      }),
    ),
  };
}
