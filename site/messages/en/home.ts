export const home = {
  description:
    'A course and a workbench about the mortar bed under tile: what the notched trowel leaves, how the ridges collapse, and how to know the bed is full.',
  title: 'The bed you cannot see is the one you answer for.',
  lead: 'Once a tile is down, nobody sees the mortar under it. Here you can: comb it, set the tile, pull it, and learn why the back came up full or bare.',
  lostTitle: 'No such page',
  lostLead: 'The address leads nowhere in this manual. It may have been cut short on the way.',
  lostHome: 'To the first page',
} as const;
