/** Where the eye stands: angles in degrees, distance in mm, looking at a point. */
export interface Orbit {
  /** 0: from the near side; growing to the right. */
  azimuthDeg: number;
  /** 0: level with the floor; 90: from straight above. */
  elevationDeg: number;
  distanceMm: number;
  /** x to the right, y away, height. */
  target: [x: number, y: number, height: number];
}

/** Views with a name, for buttons and keys. */
export type ViewName = 'bench' | 'low' | 'above' | 'side' | 'open' | 'cut';
export const VIEW_NAMES: readonly ViewName[] = ['bench', 'low', 'above', 'side', 'open', 'cut'];

/** What the views must frame, mm. */
export interface Subject {
  lengthMm: number;
  widthMm: number;
  /** Which axis a cut runs along, if the bed is cut. */
  cutAlong: 'length' | 'width' | null;
}

export const LIMITS = { lowest: 4, highest: 89, nearest: 60, farthest: 6000 } as const;

/** Half the vertical angle the camera sees, degrees. */
export const HALF_VIEW_DEG = 14;

/** Distance at which a sphere fills the picture, whichever side of the picture is shorter. */
export function distanceFor(radiusMm: number, aspect: number): number {
  const half = (HALF_VIEW_DEG * Math.PI) / 180;
  const across = Math.atan(Math.tan(half) * aspect);
  return radiusMm / Math.sin(Math.min(half, across));
}

/**
 * The eye of a named view.
 * @param aspect width over height of the picture
 */
export function namedView(name: ViewName, subject: Subject, aspect: number): Orbit {
  const { lengthMm, widthMm } = subject;
  const half = Math.hypot(lengthMm, widthMm) / 2;
  const at = (azimuthDeg: number, elevationDeg: number, radius: number, target: [number, number, number]): Orbit => ({
    azimuthDeg,
    elevationDeg,
    distanceMm: distanceFor(radius, aspect),
    target,
  });
  switch (name) {
    case 'bench':
      return at(-24, 36, half * 1.02, [0, widthMm * 0.04, 0]);
    case 'low':
      return at(-38, 9, half * 0.62, [0, -widthMm * 0.12, 0]);
    case 'above':
      return at(0, 89, half * 0.86, [0, 0, 0]);
    case 'side':
      return at(78, 12, half * 0.8, [0, 0, 0]);
    case 'open':
      return at(-12, 54, Math.hypot(lengthMm, 2 * widthMm) * 0.5, [0, widthMm * 0.5, 0]);
    case 'cut':
      return subject.cutAlong === 'width'
        ? at(66, 16, Math.max(70, widthMm * 0.3), [0, 0, 0])
        : at(-12, 15, Math.max(70, lengthMm * 0.24), [0, 0, 0]);
  }
}

/** Keeps an eye over the floor and at a distance one can work at; angles wrap. */
export function heldOrbit(orbit: Orbit): Orbit {
  return {
    azimuthDeg: ((((orbit.azimuthDeg + 180) % 360) + 360) % 360) - 180,
    elevationDeg: Math.min(LIMITS.highest, Math.max(LIMITS.lowest, orbit.elevationDeg)),
    distanceMm: Math.min(LIMITS.farthest, Math.max(LIMITS.nearest, orbit.distanceMm)),
    target: orbit.target,
  };
}

/** Part of the way from one eye to another; turns the shorter way round. */
export function betweenOrbits(from: Orbit, to: Orbit, share: number): Orbit {
  const turn = ((((to.azimuthDeg - from.azimuthDeg + 180) % 360) + 360) % 360) - 180;
  const part = (a: number, b: number): number => a + (b - a) * share;
  return heldOrbit({
    azimuthDeg: from.azimuthDeg + turn * share,
    elevationDeg: part(from.elevationDeg, to.elevationDeg),
    distanceMm: part(from.distanceMm, to.distanceMm),
    target: [
      part(from.target[0], to.target[0]),
      part(from.target[1], to.target[1]),
      part(from.target[2], to.target[2]),
    ],
  });
}

/** The eye's place in the scene: right, up, towards the viewer. */
export function eyePlace(orbit: Orbit): [number, number, number] {
  const azimuth = (orbit.azimuthDeg * Math.PI) / 180;
  const elevation = (orbit.elevationDeg * Math.PI) / 180;
  const level = orbit.distanceMm * Math.cos(elevation);
  return [
    orbit.target[0] + level * Math.sin(azimuth),
    orbit.target[2] + orbit.distanceMm * Math.sin(elevation),
    -orbit.target[1] + level * Math.cos(azimuth),
  ];
}
