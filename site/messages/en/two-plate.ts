/** Words of the two-plate test. */
export const twoPlate = {
  title: 'The two-plate test',
  says: 'A lump of known volume between two smooth plates, under a known weight. Read the width after half a minute: stiff mortar stops early. Section above, seen from the top below, to scale.',
  diameter: 'Width of the patty',
  volume: 'Mortar between the plates',
  mass: 'Weight on it, the upper plate counted in',
  yield: 'It starts to move at',
  kind: 'The mix',
  kinds: { slumps: 'slumps', holds: 'holds a ridge', stiff: 'stiff' },
  outOfReach: 'too thick for this test: the patty must be at least four times as wide as it is high',
  thickness: 'Thickness of the patty',
  misread: 'If the ruler is off by one division',
  misreadSays: (less: string, more: string) => `${less} to ${more}`,
  drawn: (diameter: string, thickness: string, pa: string, kind: string) =>
    `A patty ${diameter} wide and ${thickness} thick. The mortar starts to move at ${pa}: ${kind}.`,
  table: 'How wide each mix gets',
  mix: 'Mix',
  startsAt: 'Starts to move at',
  once: 'Under this weight',
  twice: 'Under twice the weight',
  formula: 'How it is worked out',
  formulaSays:
    'Stress = weight ÷ (area × (1.366 + 2π × radius³ ÷ (3 × volume))). The first number in the bracket is the hold of the free rim, the second the drag in the thin gap. (model: a plastic disc)',
  model: 'model',
  stiffness: 'The three mixes are from memory, not from print.',
} as const;
