import type { Keeping } from '@site/storage/record/keeper.ts';

/** The learner's own record: what is kept, and how to carry it. */
export const record = {
  title: 'My record',
  lead: 'What you have read, foretold and answered on this device. It is not sent anywhere; carry it to another device as a file.',
  carry: 'Carry it',
  save: 'Save as a file',
  saved: 'Saved as {name}.',
  take: 'Take in a file',
  takeHint: 'A file saved here or on another device. Nothing that stands here is lost by it: the two are merged.',
  taken: 'Taken in. {modules} modules, {answers} answers and {predictions} guesses stand here now.',
  refused: 'Nothing was taken in.',
  erase: 'Erase everything',
  eraseSure: 'Everything on this page will be erased from this device. Save it as a file first if you may want it.',
  eraseYes: 'Yes, erase it',
  eraseNo: 'Keep it',
  erased: 'Erased.',
  notErased: 'The browser would not erase what it keeps. Load this page again, then erase it once more.',
  persistAsk: 'Ask the browser to keep it',
  persisted: 'The browser has promised to keep the record until you erase it.',
  notPersisted: 'The browser may clear the record when it is short of room. Save a file now and then.',
  modules: 'Modules',
  none: 'Nothing yet. Read a module, or set a tile in one of its figures.',
  guesses: 'Guesses and truth',
  guessesSay: 'How far your guesses lie from what the bed gave. Above the line you guessed too much.',
  guess: 'guess',
  truth: 'the bed',
  figure: 'Figure',
  bias: 'On average you are {n} points {way}; half of your guesses lie within {spread} points.',
  choices: 'Choices foretold right: {right} of {n}.',
  high: 'too high',
  low: 'too low',
  outcomes: 'What you can show',
  outcome: 'You can …',
  asked: 'Asked',
  points: 'Points',
  done: 'done',
  begun: 'begun',
} as const;

/** What the page says about where the record lies. */
export const keepingWords: Record<Keeping, string> = {
  opening: 'Opening the record …',
  kept: 'Kept in this browser.',
  memory:
    'This browser keeps nothing (a private window, perhaps). What you do stands here as long as this page is open: save it as a file before you leave.',
  full: 'The browser has no room left to keep more. Nothing is lost while this page is open: save it as a file now, then make room.',
  displaced:
    'A newer edition of this page is open in another tab and has taken over the record. Save a file if you did anything here since, then load this page again.',
};
