export const relief = {
  title: 'The same comb under two backs',
  says: 'Section through tile, bed and floor, thicknesses to one scale. The ribs are part of the tile; what lies between them is mortar that the bed has lost.',
  smooth: 'Smooth back',
  ribbed: 'Ribbed back',
  bed: 'bed under the tile',
  inRibs: 'Mortar in the ribs',
  table: 'The numbers',
} as const;
