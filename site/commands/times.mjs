// Where `npm test` notes how long its steps took, for the bench to read.
import { root } from './packages.mjs';

export const TIMES_FILE = `${root}node_modules/.test-times.json`;
