import type { Rule } from '@sim/rules/rule.ts';

export interface RuleGroup {
  id: string;
  title: string;
  rules: Rule[];
}

/** Rules by subject. @throws when a rule falls under no subject, so that none can go missing from the page */
export function groupRules(rules: readonly Rule[], subjects: { title: string; begins: string[] }[]): RuleGroup[] {
  const groups = subjects.map(({ title, begins }) => ({
    id: `about-${begins[0] ?? ''}`,
    title,
    rules: rules.filter((rule) => begins.includes(rule.id.split('.')[0] ?? '')),
  }));
  const held = new Set(groups.flatMap((group) => group.rules.map((rule) => rule.id)));
  const lost = rules.filter((rule) => !held.has(rule.id)).map((rule) => rule.id);
  if (lost.length > 0) throw new Error(`No subject on the sources page for: ${lost.join(', ')}`);
  return groups.filter((group) => group.rules.length > 0);
}
