/** Words of the figure that asks what a place wants. */
export const placeWords = {
  title: 'What the place asks for',
  says: 'The back of a lifted tile, grey where it bonded. Its bare share is just what the place still allows, once in one lump at a corner and once in small voids spread out. The shares are equal; only one of the two is good work.',
  place: 'Place',
  dry: 'Dry room',
  shower: 'Shower',
  terrace: 'Terrace',
  pool: 'Pool',
  kind: 'Tile',
  tile: 'Ceramic or porcelain',
  stone: 'Natural stone',
  glass: 'Glass',
  panelFloor: 'Thin panel, floor',
  panelWall: 'Thin panel, wall',
  required: 'Coverage to reach',
  bare: 'Bare at most',
  water: 'Water that could sit in it',
  perArea: '{n} on {area}',
  rule: 'Which rule says so',
  lump: 'One lump at the corner: fails',
  spread: 'Small and spread: passes',
  notCovered:
    'Out of doors or in water the panel standard for rooms is silent. We take the figure for wet places; ask the maker.',
  numbers: 'All places and tiles',
} as const;
export type PlaceWords = Record<keyof typeof placeWords, string>;
