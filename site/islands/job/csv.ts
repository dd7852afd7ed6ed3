import type { Plan } from '@sim/estimate/plan-types.ts';
import { ruleById } from '@sim/rules/rulebook.ts';
import type { UnitSystem } from '@sim/units/format.ts';
import type { plan as words } from '@site/messages/en/plan.ts';

import { planSections } from './plan-lines.ts';

/** One row of the sheet as a spreadsheet takes it. */
export type CsvRow = Readonly<Record<'area' | 'part' | 'line' | 'value' | 'reason' | 'sources', string>>;

/** The plan as rows: every line of every area, then what the sheet warns of. */
export function csvRows(plan: Plan, units: UnitSystem, say: typeof words): CsvRow[] {
  const findings = [...plan.areas.flatMap((area) => area.findings.map((finding) => [area.name, finding] as const))];
  return [
    ...plan.areas.flatMap((area) =>
      planSections(area, units, say).flatMap((section) =>
        section.lines.map((line) => ({
          area: area.name,
          part: say.sections[section.id],
          line: say.lines[line.id],
          value: line.value,
          reason: line.says.join(' '),
          sources: [...new Set([...(line.decision ? [line.decision.rule] : []), ...line.rules])]
            .map((rule) => `${ruleById(rule).title} (${ruleById(rule).source.title})`)
            .join('; '),
        })),
      ),
    ),
    ...[...findings, ...plan.findings.map((finding) => ['', finding] as const)].map(([area, finding]) => ({
      area,
      part: say.severity[finding.severity],
      line: ruleById(finding.rule).title,
      value: finding.says,
      reason: '',
      sources: finding.source.title,
    })),
  ];
}

/**
 * The rows as text that any spreadsheet opens: with a byte-order mark, and with cells that would be taken for formulas
 * made plain text.
 */
export async function csvText(rows: readonly CsvRow[]): Promise<string> {
  const { unparse } = (await import('papaparse')).default;
  return `\uFEFF${unparse([...rows], { escapeFormulae: true, newline: '\r\n' })}`;
}

/** A file name from a job's name: letters, figures and hyphens. */
export const fileName = (title: string, fallback: string): string =>
  title
    .normalize('NFKD')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60)
    .toLowerCase() || fallback;
