import type { ReliefSetup } from '@sim/bed/types.ts';
import type { Weather } from '@sim/mortar/weather.ts';
import type { LineName } from '@site/islands/bench/surface-lines.ts';

/** Words of the bench's further controls, which stand in folds. */
export const benchControls = {
  fault: (name: string, problem: string, accepted: string) => `${name} ${problem}: ${accepted}.`,
  isTyped: (typed: string) => `is ${typed}`,
  isEmpty: 'is empty',
  inchRange: (low: string, high: string) => `give a number from ${low} to ${high} in`,
  notALength: (typed: string) => `cannot be read, for “${typed}” is not a length`,
  writeLike: (example: string) => `write it like ${example}`,
  lengthExample: (length: string, inOtherUnit: string) => `${length} or ${inOtherUnit}`,
  size: {
    fold: 'Another size, pieces on a sheet',
    length: 'Length',
    width: 'Width',
    thickness: 'Thickness',
    along: 'Pieces along the length',
    across: 'Pieces across the width',
    joint: 'Joint between pieces',
  },
  back: {
    fold: 'Relief in the back',
    kind: 'Shape',
    kinds: {
      mean: 'By its mean depth',
      ribs: 'Ribs one way',
      grid: 'Ribs both ways',
      dots: 'Round dots',
    } satisfies Record<ReliefSetup['shape'] | 'mean', string>,
    depth: 'Depth of the hollows',
    pitch: 'From one rib or dot to the next',
    raised: 'Width of a rib or dot, of that distance',
    direction: 'Ribs or rows run',
    hint: (mean: string) => `On average ${mean} deep: that much mortar goes into the back before it meets the bed.`,
  },
  surface: {
    tileFold: 'The back as a straightedge read it',
    floorFold: 'The floor as a straightedge read it',
    hint: 'Heights at even places from end to end, commas between (semicolons if you write decimals with commas), up is more. They take the place of bow and twist.',
    reading: (line: string, number: number) => `${line}, reading ${number},`,
    readings: (count: number) => `has ${count} ${count === 1 ? 'reading' : 'readings'}`,
    example: { imperial: '0, 1/32, 3/64, 1/32, 0', metric: '0, 0.8, 1.2, 0.8, 0' },
    lines: {
      along: 'Along the middle',
      across: 'Across the middle',
      rising: 'Diagonal, near left to far right',
      falling: 'Diagonal, far left to near right',
    } satisfies Record<LineName, string>,
    grid: (rows: number, columns: number) => `A grid of ${rows} × ${columns} readings came with the link.`,
    drop: 'Forget the readings',
    inForce: 'Readings of the surface stand in the place of bow and twist.',
  },
  floor: {
    title: 'Floor',
    across: 'Hump across the width',
    twist: 'Twist of the floor',
  },
  blade: {
    yaw: 'Blade turned off square to its stroke',
    yawHint: 'Turned, it draws ridges closer together and as high; straight strokes show it best.',
  },
  test: {
    fold: 'Stiffness by a test',
    kind: 'Test',
    kinds: { none: 'None', twoPlates: 'A lump pressed between two plates', glass: 'Glass pressed on the combed bed' },
    mass: 'Weight on it',
    volume: 'Mortar in the lump',
    diameter: 'Width of the patty',
    side: 'Side of the glass',
    coverage: 'Wet share of the glass',
    says: (pascals: string, kind: string) => `That is a yield stress of ${pascals}: ${kind}.`,
    near: {
      slumps: 'nearest to a mix that slumps',
      holds: 'nearest to one that holds a ridge',
      stiff: 'nearest to a stiff one',
    },
  },
  weather: {
    fold: 'Weather where you work',
    temperature: 'Temperature',
    wind: 'Wind',
    winds: { still: 'Still', breeze: 'Light air', windy: 'Windy' } satisfies Record<Weather['wind'], string>,
    air: 'Air',
    airs: { dry: 'Dry', middling: 'Middling', damp: 'Damp' } satisfies Record<NonNullable<Weather['air']>, string>,
    sun: 'In the sun',
    says: (minutes: string, usual: string) =>
      `Here the skin takes two thirds of the hold in ${minutes} min; in still indoor air it takes ${usual} min.`,
    skin: (minutes: string) => `skin in ${minutes} min`,
    drop: 'Back to still indoor air',
  },
} as const;
