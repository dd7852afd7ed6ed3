import type { Picture } from '../engine/picture.ts';
import type { Say } from '../engine/say.ts';
import type { ShelfRun } from '../runs/shelf.ts';
import { squaresInWords } from './ruled.ts';

/** The back of a pulled tile, with its squares told in words after `seen`. */
export const pullPicture = ({ job, pull }: ShelfRun, say: Say, lettered: boolean, seen = ''): Picture => ({
  kind: 'pull',
  lengthMm: job.lengthMm,
  widthMm: job.widthMm,
  pull,
  lettered,
  words: say.t('picture'),
  long: seen + squaresInWords(pull, say),
});
