/** Words in and under computed drawings; `{…}` is filled with a number and its unit. */
export const figureWords = {
  plate: 'Plate',
  trowelSays:
    'A {notch} notch, blade at {angle}°, drawn to scale. The ridge stands {ridge}; spread even, it makes a bed of {bed}.',
  notch: 'notch',
  tooth: 'tooth',
  ridge: 'ridge',
  bed: 'bed',
  width: 'Width of the notch',
  depth: 'Depth',
  toothWidth: 'Tooth',
  angle: 'Blade to floor',
  ridgeHeight: 'Ridge height',
  meanBed: 'Bed, spread even',
  numbers: 'The numbers',
} as const;
