export const pressCurve = {
  title: 'What pressing alone costs',
  says: 'How hard you must push on the whole tile, and the coverage you get for it: flat square tile, quarter by three-eighths ridges, a mix that holds a ridge. The shaded band is what two hands can do.',
  model: 'model',
  push: 'Push on the whole tile',
  coverage: 'Coverage',
  hands: 'hands',
  tile: (edge: string) => `tile ${edge} square`,
  table: 'The numbers',
} as const;
