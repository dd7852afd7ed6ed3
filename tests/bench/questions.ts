/** What the questions cost and how well the diagnosing round names what a learner believes. */
import { measureLearners, measureMaking } from './quiz-learners.ts';
import type { Section } from './section.ts';

const ITEM_BUDGET_MS = 5;
const SIMULATED = 500;

export const makingSection = (): Section => ({
  title: 'Making one question',
  says: `The middle over seeds of each template, pictures computed anew; the slowest template beside it. Budget ${ITEM_BUDGET_MS} ms for the middle template.`,
  rows: [measureMaking()].map((row) => ({ ...row, budgetMs: ITEM_BUDGET_MS, holds: row.medianMs <= ITEM_BUDGET_MS })),
});

export const learnersSection = (): Section => ({
  title: 'Diagnosis of simulated learners',
  says: `${SIMULATED} learners who hold one wrong idea, two, or none, and slip at every tenth decision. \`named\`: share of them named rightly; \`wronged\`: share of whom an idea was named that they don't hold.`,
  rows: measureLearners(SIMULATED).map((row) => ({ ...row, holds: row.named >= row.goal })),
});
