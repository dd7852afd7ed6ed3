/** `npm run pictures`: draws the pictures of MODEL.md anew from the solver. A test says when that was forgotten. */
import { writeFileSync } from 'node:fs';

import { drawPictures } from '../../simulations/view/model-pictures.ts';

for (const { file, svg } of drawPictures())
  writeFileSync(new URL(`../../simulations/bed/pictures/${file}`, import.meta.url), svg);
