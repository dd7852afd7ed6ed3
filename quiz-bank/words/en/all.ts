import type { WordList } from '../../engine/compose.ts';
import { combing } from './combing.ts';
import { mixing } from './mixing.ts';
import { readingANotch } from './reading-a-notch.ts';
import { setting } from './setting.ts';
import { whatTheRidgesAreFor } from './what-the-ridges-are-for.ts';
import { shared } from './shared.ts';

/** English, whole. Another language is another folder with the same names. */
export const english: WordList = {
  templates: {
    ...whatTheRidgesAreFor,
    ...readingANotch,
    ...mixing,
    ...combing,
    ...setting,
  },
  shared,
};
