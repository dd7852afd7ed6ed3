export const airWay = {
  title: 'The way out for the air',
  says: 'The same tile, seen from above through its back. The arrow is the way that air in the middle has to go. Tile to scale, ridges drawn wider apart than they are.',
  long: 'Ridges along the long side',
  short: 'Ridges along the short side',
  table: 'The numbers',
  way: 'From the middle to the open end',
} as const;
