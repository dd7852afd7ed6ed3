import { course } from '@lessons/course.ts';
import { isRuleId } from '@sim/rules/rulebook.ts';

/** A part of the manual that reads a rule. */
export interface RuleUse {
  label: string;
  path: string;
}

/** Texts that name rules, by the part of the manual they make. */
export interface NamingTexts {
  sheet: readonly string[];
  rounds: readonly string[];
  /** By slug. */
  modules: ReadonlyMap<string, string>;
}

/** Everything in a text that has the form of a rule's id and is one. */
const idsIn = (text: string): Set<string> =>
  new Set([...text.matchAll(/[a-z][a-z0-9-]*(?:\.[a-z0-9][a-z0-9-]*)+/g)].map(([id]) => id).filter(isRuleId));

/**
 * Where each rule is used, found in the texts that name it, so that the list can't fall behind the code.
 * @param words labels of the job sheet, the rounds, and a module before its number
 */
export function usesOfRules(
  texts: NamingTexts,
  words: { job: string; rounds: string; module: string },
): Map<string, RuleUse[]> {
  const uses = new Map<string, RuleUse[]>();
  const note = (ids: Iterable<string>, use: RuleUse): void => {
    for (const id of ids) uses.set(id, [...(uses.get(id) ?? []), use]);
  };
  note(idsIn(texts.sheet.join('\n')), { label: words.job, path: '/job/' });
  note(idsIn(texts.rounds.join('\n')), { label: words.rounds, path: '/rounds/' });
  for (const { slug, number } of course) {
    const text = texts.modules.get(slug);
    if (text !== undefined) note(idsIn(text), { label: `${words.module} ${number}`, path: `/lessons/${slug}/` });
  }
  return uses;
}
