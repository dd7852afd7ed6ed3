import { notchById } from '@site/lessons/worked/notch.ts';
import { bandOf, type Foretelling } from '@site/lessons/foretelling.ts';
import { meanBedMm } from '@sim/trowel/notch.ts';

const held = { angleDeg: 60, wearMm: 0 };
const narrow = meanBedMm({ ...notchById('1-4-1-2-in-square'), ...held });
const wide = meanBedMm({ ...notchById('1-2-1-2-in-square'), ...held });

export const prediction: Foretelling = {
  module: 'reading-a-notch',
  ask: {
    imperial:
      'Two square trowels, both cut 1/2 in deep, held the same way. One has notches 1/4 in wide and teeth 1/4 in wide. The other has both 1/2 in wide. Which leaves more mortar?',
    metric:
      'Two square trowels, both cut 12.7 mm deep, held the same way. One has notches and teeth 6.4 mm wide. The other has both 12.7 mm wide. Which leaves more mortar?',
  },
  choices: ['The wide one', 'Both leave the same', 'The narrow one'],
  right: bandOf(narrow / wide, [0.98, 1.02]),
  why: 'On each, half the floor is ridge and half is bare lane, and the ridges are equally high. Many thin ridges or a few fat ones: the mortar is the same. What differs is how far it must travel. The fat ridges need a longer stroke.',
};
