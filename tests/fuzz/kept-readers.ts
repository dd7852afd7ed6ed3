import { keepGuesses, keptGuesses, type KeptGuess } from '@site/islands/eye/keep.ts';
import { keptSitting } from '@site/islands/desk/take/sitting.ts';
import { keptRound, missedTemplates } from '@site/islands/rounds/keep.ts';
import { openSession, standing, type Session } from '@site/islands/rounds/session.ts';
import { bank } from '@quiz/bank.ts';
import { eyeSetup } from '@quiz/eye/pulled-tile.ts';
import { scoreGuesses } from '@quiz/eye/score.ts';
import { writeRound, type ClassRound } from '@quiz/records/class-round.ts';

import { refused, takenOr, type Reader } from './reader.ts';

/** The browser's shelf of kept texts, for readers that go to it by themselves. */
const shelf = new Map<string, string>();
export const fakeStorage = {
  getItem: (key: string) => shelf.get(key) ?? null,
  setItem: (key: string, value: string) => void shelf.set(key, value),
  removeItem: (key: string) => void shelf.delete(key),
};

const session = openSession({ seed: 9, items: 3, mode: 'mixed', modules: ['setting'], units: 'metric' });
const round: ClassRound = {
  code: 'TILE-1', bank: bank.version, modules: [], items: 2, pass: 0.8, perSeat: true, units: 'metric', due: null,
}; // prettier-ignore

/** What was kept in the browser by an earlier visit, another tab or another edition, or was cut short by a crash. */
export const keptReaders: readonly Reader[] = [
  {
    name: 'round left half-way',
    good: [JSON.stringify({ ...session, answers: ['A'] }), JSON.stringify({ ...session, mode: 'diagnosing' })],
    json: true,
    read: (text) => {
      shelf.set('rtb.round', text);
      const kept = keptRound();
      return kept.kind === 'round' ? { state: 'taken', value: kept.session } : refused();
    },
    use: (one: Session) => standing(one).total,
    mostUses: 300,
  },
  {
    name: 'questions missed before',
    good: [JSON.stringify(bank.templates.slice(0, 3).map(({ id }) => id))],
    json: true,
    read: (text) => {
      shelf.set('rtb.round.missed', text);
      return { state: 'taken', value: missedTemplates() };
    },
    write: (templates: string[]) => JSON.stringify(templates),
  },
  {
    name: 'a sitting of a class round',
    good: [JSON.stringify({ round: writeRound(round), name: 'Bo', seat: 3, answers: ['A', ''] })],
    json: true,
    read: (text) => {
      shelf.set('ridge-to-bed.sitting', text);
      return takenOr(keptSitting(round));
    },
  },
  {
    name: 'guesses by eye',
    good: [JSON.stringify([{ level: 'texture', number: 3, guess: 0.7, truth: 0.8 }])],
    json: true,
    read: (text) => {
      shelf.set('rtb.eye', text);
      return { state: 'taken', value: keptGuesses() };
    },
    write: (guesses: KeptGuess[]) => {
      keepGuesses(guesses);
      return shelf.get('rtb.eye') ?? '';
    },
    use: (guesses: KeptGuess[]) => [scoreGuesses(guesses), guesses.map((one) => eyeSetup(one.level, one.number + 1))],
  },
];
