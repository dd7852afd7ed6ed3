import type { UnitSystem } from '../../simulations/units/format.ts';
import type { IdeaId } from '../wrong-ideas/idea.ts';
import type { Draw } from './draw.ts';
import type { Choice, Decision, Form, Key } from './item.ts';
import { letterOf } from './letters.ts';
import { unitOf } from './quantity.ts';
import { type Say, speaker, type Words } from './say.ts';
import type { PosedAnswer, WrongChoice } from './template.ts';

type Arranged = Pick<Key, 'right' | 'decisions' | 'number' | 'cells' | 'says'> & { form: Form; credit: string };

const lettered = (texts: string[]): Choice[] => texts.map((text, at) => ({ letter: letterOf(at), text }));

interface Spread {
  choices: Choice[];
  right: string;
  decision: Decision;
}

/** Gives out letters to one right and some wrong choices. */
function spread(right: string, wrong: WrongChoice[], places: Draw): Spread {
  const order = places.shuffled([{ text: right, idea: null }, ...wrong]);
  const choices = lettered(order.map(({ text }) => text));
  const letterFor = (text: string): string => choices.find((choice) => choice.text === text)?.letter ?? '';
  const ideas = Object.fromEntries(
    wrong.flatMap(({ text, idea }): [string, IdeaId][] => (idea ? [[letterFor(text), idea]] : [])),
  );
  const letter = letterFor(right);
  return {
    choices,
    right: letter,
    decision: { right: letter, ideas, others: wrong.length - Object.keys(ideas).length },
  };
}

/** Three per cent of an answer is not three points of it. */
function pointsOf(share: number, say: Say): string {
  const points = Math.round(share * 1000) / 10;
  return say.t(points === 1 ? 'point' : 'points', { points });
}

const nothing = { number: null, cells: null };

/** Turns a posed answer into the form a learner sees and the key that stays behind. */
export function arrange(answer: PosedAnswer, places: Draw, units: UnitSystem, shared: Words): Arranged {
  const say = speaker(units, 'shared', {}, shared);
  switch (answer.kind) {
    case 'one': {
      const { choices, right, decision } = spread(answer.right, answer.wrong, places);
      return {
        ...nothing,
        form: { kind: 'one', choices },
        right,
        decisions: [decision],
        says: answer.right,
        credit: say.t('credit-one'),
      };
    }
    case 'all': {
      const boxes = places.shuffled(answer.boxes);
      const choices = lettered(boxes.map(({ text }) => text));
      const right = boxes.flatMap((box, at) => (box.right ? [letterOf(at)] : []));
      return {
        ...nothing,
        form: { kind: 'all', choices },
        right: right.join(''),
        decisions: boxes.map((box) => {
          const wrong = box.right ? 'off' : 'on';
          return {
            right: box.right ? 'on' : 'off',
            ideas: box.idea ? { [wrong]: box.idea } : {},
            others: box.idea ? 0 : 1,
          };
        }),
        says: boxes.flatMap((box) => (box.right ? [box.text] : [])).join(' · '),
        credit: say.t('credit-all'),
      };
    }
    case 'order':
      return arrangeOrder(answer, places, say.t('credit-order'));
    case 'number': {
      const { name, base } = unitOf(answer.quantity, units);
      const number = say.number(answer.value, answer.quantity, answer.digits ?? 1);
      const tolerance =
        answer.quantity === 'share'
          ? pointsOf(answer.tolerance, say)
          : say.number(answer.tolerance, answer.quantity, answer.tolerance / base < 0.1 ? 3 : 2);
      return {
        cells: null,
        form: { kind: 'number', quantity: answer.quantity, unit: name, tolerance },
        right: String(Math.round((answer.value / base) * 1e6) / 1e6),
        decisions: [
          {
            right: 'right',
            ideas: Object.fromEntries(answer.ideas.map(({ idea }) => [idea, idea])),
            // A number that nobody's idea leads to.
            others: 1,
          },
        ],
        number: { value: answer.value, tolerance: answer.tolerance, ideas: answer.ideas },
        says: number,
        credit: say.t(answer.tolerance === 0 ? 'credit-number-exact' : 'credit-number', { tolerance }),
      };
    }
    case 'mark':
      return {
        number: null,
        form: { kind: 'mark', columns: answer.columns, rows: answer.rows },
        right: answer.right[0] ?? '',
        decisions: [
          { right: 'right', ideas: Object.fromEntries(answer.ideas.map(({ idea }) => [idea, idea])), others: 1 },
        ],
        cells: { right: answer.right, ideas: answer.ideas },
        says: answer.right.join(', '),
        credit: say.t('credit-mark'),
      };
    case 'judge': {
      const { choices, right, decision } = spread(answer.right, answer.wrong, places);
      const verdict = answer.passes ? 'yes' : 'no';
      const other = answer.passes ? 'no' : 'yes';
      const yes = answer.verdicts?.yes ?? say.t('verdict-yes');
      const no = answer.verdicts?.no ?? say.t('verdict-no');
      return {
        ...nothing,
        form: {
          kind: 'judge',
          verdicts: [
            { letter: 'yes', text: yes },
            { letter: 'no', text: no },
          ],
          choices,
        },
        right: `${verdict} ${right}`,
        decisions: [
          {
            right: verdict,
            ideas: answer.verdictIdea ? { [other]: answer.verdictIdea } : {},
            others: answer.verdictIdea ? 0 : 1,
          },
          decision,
        ],
        says: `${answer.passes ? yes : no}: ${answer.right}`,
        credit: say.t('credit-judge'),
      };
    }
  }
}

function arrangeOrder(answer: Extract<PosedAnswer, { kind: 'order' }>, places: Draw, credit: string): Arranged {
  const steps = answer.steps.map((text, at) => ({ text, at }));
  let shown = places.shuffled(steps);
  // A list that already stands in the right order asks nothing.
  while (shown.every(({ at }, place) => at === place)) shown = places.shuffled(steps);
  const letters = (order: number[]): string =>
    order.map((step) => letterOf(shown.findIndex(({ at }) => at === step))).join('');
  return {
    ...nothing,
    form: { kind: 'order', choices: lettered(shown.map(({ text }) => text)), first: answer.first, last: answer.last },
    right: letters(steps.map(({ at }) => at)),
    decisions: [
      {
        right: letters(steps.map(({ at }) => at)),
        ideas: Object.fromEntries(answer.ideas.map(({ idea, order }) => [letters(order), idea])),
        others: 1,
      },
    ],
    says: answer.steps.join(' → '),
    credit,
  };
}
