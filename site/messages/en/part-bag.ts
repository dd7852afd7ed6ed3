export const partBag = {
  bag: 'Powder in the bag, from its label',
  water: 'Water for the whole bag, from its label',
  part: 'Powder you weigh out',
  share: 'That is, of the bag',
  pour: 'So pour the same share of the water',
} as const;
