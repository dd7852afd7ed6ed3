/** Writes the list of published sources anew, after a rule's source changed; a test says when it was forgotten. */
import { writeFileSync } from 'node:fs';

import { citationsText } from './citations.ts';

writeFileSync(new URL('../../simulations/rules/CITATIONS.md', import.meta.url), citationsText());
