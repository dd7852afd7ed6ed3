import { noSigns } from '@sim/judge/whole-pull.ts';
import { likelyCauses } from '@site/islands/figures/cause.ts';
import type { Foretelling } from '@site/lessons/foretelling.ts';
import type { CauseName } from '@sim/judge/pull-types.ts';
import { valueOf } from '@sim/rules/rulebook.ts';

const [first] = likelyCauses(
  { signs: { ...noSigns, mortarOn: 'floor', ridges: 'standing' }, coverage: null },
  valueOf('coverage.dry', 'share'),
);
const offered: CauseName[] = ['too-little-mortar', 'sealed-base', 'skinned', 'dabs'];

export const prediction: Foretelling = {
  module: 'finding-the-cause',
  ask: 'A long tile comes up whole after four years. Its back is clean. On the slab the ridges stand as sharp as on the first day. What is the likeliest cause?',
  choices: [
    'The notch was too small',
    'The slab was sealed',
    'The ridges had skinned before the tile came down',
    'The tile was set on blobs',
  ],
  right: offered.findIndex((name) => name === first?.name),
  why: 'The mortar holds the slab, so the slab was sound. Ridges that stand were never crushed, so there was mortar enough. Nothing wetted the back: the ridges had a skin, or a dry slab had drunk their water.',
};
