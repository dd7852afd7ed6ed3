import type { ModuleSlug } from '@lessons/course.ts';
import { formatShare } from '@sim/units/format.ts';
import { moduleTitles } from '@site/messages/en/course.ts';
import { packageWords as words } from '@site/messages/en/package.ts';

import type { Report } from './progress.ts';

/**
 * The line above the course: what counts, how much of it is done, and the points against the pass mark.
 * @param named modules to name; empty where the whole course counts
 * @param all how many modules count
 * @param pass the pass mark, 0…1
 */
export function barText(report: Report, named: readonly ModuleSlug[], all: number, pass: number): string {
  const titles = named.map((slug) => moduleTitles[slug]);
  return [
    ...(titles.length > 0 ? [words.counts(titles)] : []),
    words.done(Math.round(report.completion * all), all),
    report.score === null ? words.noScore : words.score(formatShare(report.score)),
    report.passed ? words.passed : words.passMark(formatShare(pass)),
  ].join(' ');
}
