import { readFileSync } from 'node:fs';

import { drawPictures } from '@sim/view/model-pictures.ts';
import { expect, test } from 'vitest';

test.each(drawPictures().map(({ file, svg }) => [file, svg] as const))(
  '%s in MODEL.md is what the solver draws now; if it was changed on purpose, run npm run pictures',
  (file, svg) => {
    expect(readFileSync(`simulations/bed/pictures/${file}`, 'utf8') === svg).toBe(true);
    const model = readFileSync('simulations/bed/MODEL.md', 'utf8');
    expect(model).toContain(`](pictures/${file})`);
    expect(svg).toMatch(/<title>.{40,}<\/title>/);
  },
);
