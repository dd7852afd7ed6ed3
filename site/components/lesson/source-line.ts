import type { RuleSource } from '@sim/rules/rule.ts';

/** A source in one line: title, edition, clause. */
export const sourceLine = (source: RuleSource): string =>
  [source.title, source.edition, source.clause].filter((part) => part !== undefined && part !== '').join(', ');
