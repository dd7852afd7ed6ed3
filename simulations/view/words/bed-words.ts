/** The sentences a picture of a bed needs, in one language. Each function gets numbers already printed with units. */
export interface BedWords {
  notLaid: (ridges: string) => string;
  coverage: (share: string) => string;
  coverageParts: (bonded: string, open: string, trapped: string, skinned: string) => string;
  noVoid: string;
  largestVoid: (area: string) => string;
  voidsNearEdge: (count: number) => string;
  trapped: (pockets: number, share: string, pressure: string) => string;
  noPockets: string;
  weakCorner: (corner: string, share: string) => string;
  cornersEven: (share: string) => string;
  corners: readonly [string, string, string, string];
  bed: (mean: string, min: string, max: string) => string;
  squeezed: (volume: string, rise: string) => string;
  squeezedOver: (volume: string) => string;
  load: (force: string) => string;
  drift: (far: string) => string;
  section: {
    gap: (mean: string, min: string, max: string) => string;
    ridges: (count: number, tallest: string) => string;
    bonded: (share: string) => string;
    air: (open: number, trapped: number, widest: string) => string;
    noAir: string;
    leans: string;
    leansUnderTile: string;
  };
  rows: {
    coverage: string;
    open: string;
    trapped: string;
    skinned: string;
    wetted: string;
    corners: string;
    edgeStrip: string;
    largestVoid: string;
    voidsNearEdge: string;
    pockets: string;
    pressure: string;
    bedMean: string;
    bedMin: string;
    bedMax: string;
    tileHeight: string;
    tilt: string;
    load: string;
    squeezed: string;
    rise: string;
  };
}

const plural = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

/** English. */
export const EN_BED_WORDS: BedWords = {
  notLaid: (ridges) => `No tile is laid yet. The mortar stands up to ${ridges} above the floor.`,
  coverage: (share) => `Coverage is ${share}: that share of the tile’s back took mortar.`,
  coverageParts: (bonded, open, trapped, skinned) =>
    `Of the back, ${bonded} is bonded, ${open} lies over open air, ${trapped} over shut-in air, ${skinned} touched mortar that had skinned.`,
  noVoid: 'There is no void under it.',
  largestVoid: (area) => `The largest single void measures ${area}.`,
  voidsNearEdge: (count) =>
    count === 0
      ? 'No void comes within 2 in (51 mm) of a corner or edge.'
      : `${plural(count, 'void comes', 'voids come')} within 2 in (51 mm) of a corner or edge.`,
  trapped: (pockets, share, pressure) =>
    `Air is shut in at ${plural(pockets, 'place', 'places')}, ${share} of the back, at up to ${pressure} over the room’s pressure.`,
  noPockets: 'No air is shut in.',
  weakCorner: (corner, share) => `The weakest corner is the ${corner}, at ${share}.`,
  cornersEven: (share) => `All four corners are at ${share} or better.`,
  corners: ['near left', 'near right', 'far left', 'far right'],
  bed: (mean, min, max) => `The bed is ${mean} thick on average, ${min} at the thinnest and ${max} at the thickest.`,
  squeezed: (volume, rise) => `${volume} squeezed out and fills ${rise} of the joint’s depth.`,
  squeezedOver: (volume) => `${volume} squeezed out, more than the joint holds up to the tile’s face.`,
  load: (force) => `The bed carries ${force}.`,
  drift: (far) =>
    `The ridges leaned and fell over, and the tile went ${far} aside with them (model, not measured). Lay it that much off its place, or hold it and press harder.`,
  section: {
    gap: (mean, min, max) => `Along the cut the gap is ${mean} on average, from ${min} to ${max}.`,
    ridges: (count, tallest) =>
      count === 0 ? 'No ridge stands out.' : `${plural(count, 'ridge stands', 'ridges stand')} up to ${tallest} high.`,
    bonded: (share) => `${share} of the line is bonded.`,
    air: (open, trapped, widest) =>
      `Air: ${plural(open, 'open run', 'open runs')} and ${plural(trapped, 'shut-in run', 'shut-in runs')}; the widest is ${widest}.`,
    noAir: 'There is no air on this line.',
    leans: 'The ridges lean out of this cut: at the floor it meets other parts of the bed than at the crests.',
    leansUnderTile:
      'The ridges lean out of this cut: at the floor it meets other parts of the bed than at the tile’s back, where bond and air are told.',
  },
  rows: {
    coverage: 'Coverage (bonded share)',
    open: 'Open void',
    trapped: 'Shut-in air',
    skinned: 'Touched, not bonded (skin)',
    wetted: 'Touched by mortar',
    corners: 'Corners: near left, near right, far left, far right',
    edgeStrip: 'Edge strip',
    largestVoid: 'Largest void',
    voidsNearEdge: 'Voids near a corner or edge',
    pockets: 'Air pockets',
    pressure: 'Highest pocket pressure',
    bedMean: 'Bed, mean',
    bedMin: 'Bed, thinnest',
    bedMax: 'Bed, thickest',
    tileHeight: 'Gap under the tile’s middle',
    tilt: 'Tilt along and across',
    load: 'Load carried',
    squeezed: 'Squeezed out',
    rise: 'Rise in the joint, share of the tile’s thickness',
  },
};
