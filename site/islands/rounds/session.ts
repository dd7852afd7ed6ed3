import type { UnitSystem } from '@sim/units/format.ts';
import { bank } from '@quiz/bank.ts';
import { type Beliefs, namedIdeas } from '@quiz/engine/beliefs.ts';
import { compose } from '@quiz/engine/compose.ts';
import { answerDiagnosis, type Diagnosis, type DiagnosisPlan, openDiagnosis } from '@quiz/engine/diagnose.ts';
import type { ItemRef, KeyedItem } from '@quiz/engine/item.ts';
import { type Mark, markAnswer } from '@quiz/engine/mark.ts';
import { roundRefs } from '@quiz/engine/round.ts';
import type { ModuleId } from '@quiz/modules.ts';
import type { IdeaId } from '@quiz/wrong-ideas/idea.ts';

export type Mode = 'mixed' | 'diagnosing' | 'review';

/** A round on the page: what it is made from and the answers so far. Everything shown is computed from this. */
export interface Session {
  bank: string;
  seed: number;
  mode: Mode;
  modules: ModuleId[];
  items: number;
  /** What it was begun in; tile and tools are of that system's sizes, so a round keeps it. */
  units: UnitSystem;
  /** For a review: the templates to ask again. */
  templates: string[];
  /** One an item, in order; empty for an item that was left out. Numbers carry their unit. */
  answers: string[];
}

export interface Standing {
  /** The items answered so far. */
  asked: KeyedItem[];
  marks: Mark[];
  next: KeyedItem | null;
  total: number;
  /** In a diagnosing round: what we believe, and the ideas we are sure of. */
  beliefs: Beliefs | null;
  named: IdeaId[];
}

const reviewRefs = ({ templates, seed }: Session): ItemRef[] =>
  templates.map((template, slot) => ({ template, seed, slot }));

/** The diagnosing round last asked for: each question is weighed once, not again with every answer after it. */
let last: { plan: string; answers: readonly string[]; found: Diagnosis } | null = null;

function diagnosisOf(plan: DiagnosisPlan, answers: readonly string[]): Diagnosis {
  const name = JSON.stringify(plan);
  const known = last?.plan === name && last.answers.every((answer, at) => answer === answers[at]) ? last : null;
  const found = answers
    .slice(known?.answers.length ?? 0)
    .reduce((now, answer) => answerDiagnosis(bank, plan, now, answer), known?.found ?? openDiagnosis(bank, plan));
  last = { plan: name, answers: [...answers], found };
  return found;
}

/** Where a round stands: items, marks and the next question, made anew from seed and answers. */
export function standing(session: Session): Standing {
  const { seed, modules, answers, units } = session;
  if (session.mode === 'diagnosing') {
    const { asked, next, beliefs } = diagnosisOf({ seed, modules, most: session.items, units }, answers);
    const marks = asked.map((keyed, at) => markAnswer(keyed, answers[at] ?? ''));
    return { asked, marks, next, total: session.items, beliefs, named: namedIdeas(beliefs) };
  }
  const refs =
    session.mode === 'review' ? reviewRefs(session) : roundRefs(bank, { seed, modules, items: session.items });
  const made = refs.slice(0, answers.length + 1).map((ref) => compose(bank, ref, units));
  const asked = made.slice(0, answers.length);
  return {
    asked,
    marks: asked.map((keyed, at) => markAnswer(keyed, answers[at] ?? '')),
    next: made[answers.length] ?? null,
    total: refs.length,
    beliefs: null,
    named: [],
  };
}

/** Items of a whole mixed round, for paper. */
export const allItems = (session: Session): KeyedItem[] =>
  roundRefs(bank, { seed: session.seed, modules: session.modules, items: session.items }).map((ref) =>
    compose(bank, ref, session.units),
  );

/** A round that nothing was answered in yet follows the reader's units; later it keeps its own. */
export const inUnits = (session: Session, units: UnitSystem): Session =>
  session.answers.length === 0 && session.units !== units ? { ...session, units } : session;

export const openSession = (
  given: Omit<Session, 'bank' | 'answers' | 'templates'> & { templates?: string[] },
): Session => ({
  templates: [],
  ...given,
  bank: bank.version,
  answers: [],
});
