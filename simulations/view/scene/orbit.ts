import type { Cut } from '../section/profile.ts';
import { slabPlan, type SlabPlan } from './slab-plan.ts';

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
  /** Where the bed is cut open, and its near part taken away. */
  cut: Cut | null;
  /** The tile lies behind its bed, turned over. */
  turned: boolean;
  /** The tile and where it is turned to are framed, not the whole slab. */
  close?: boolean;
}

export const LIMITS = { lowest: 4, highest: 89, nearest: 60, farthest: 6000 } as const;

/** Half the vertical angle the camera sees, degrees. */
export const HALF_VIEW_DEG = 14;

/** Distance at which a sphere fills the picture, whichever side of the picture is shorter. */
function distanceFor(radiusMm: number, aspect: number): number {
  const half = (HALF_VIEW_DEG * Math.PI) / 180;
  const across = Math.atan(Math.tan(half) * aspect);
  return radiusMm / Math.sin(Math.min(half, across));
}

type Place = readonly [x: number, y: number, height: number];

/** Air left round what a view frames, as a share of the picture's half. */
const MARGIN = 0.04;
/** Halvings that find the middle to a millionth of the picture. */
const HALVINGS = 24;

/**
 * The nearest eye in a direction from which every place lies inside the picture (exact for a perspective: each place
 * bounds the distance and the sideways shift linearly).
 */
export function framing(azimuthDeg: number, elevationDeg: number, places: readonly Place[], aspect: number): Orbit {
  const azimuth = (azimuthDeg * Math.PI) / 180;
  const elevation = (elevationDeg * Math.PI) / 180;
  const level = Math.cos(elevation);
  const right: Place = [Math.cos(azimuth), Math.sin(azimuth), 0];
  const into: Place = [-level * Math.sin(azimuth), level * Math.cos(azimuth), -Math.sin(elevation)];
  const up: Place = [-Math.sin(azimuth) * Math.sin(elevation), Math.cos(azimuth) * Math.sin(elevation), level];
  const dot = (a: Place, b: Place): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  const tall = Math.tan((HALF_VIEW_DEG * Math.PI) / 180) * (1 - MARGIN);
  const bounds = ([axis, slope]: [Place, number]): { low: number; high: number; far: number } => {
    const high = Math.max(...places.map((place) => dot(place, axis) - slope * dot(place, into)));
    const low = Math.min(...places.map((place) => dot(place, axis) + slope * dot(place, into)));
    return { low, high, far: (high - low) / (2 * slope) };
  };
  const across = bounds([right, tall * aspect]);
  const upright = bounds([up, tall]);
  const far = Math.max(across.far, upright.far);
  /** The shift that leaves as much room on both sides from that far: of the slope that would just be filled. */
  const middle = (axis: Place, widest: number): number => {
    let [least, most] = [0, widest];
    for (let turn = 0; turn < HALVINGS; turn++) {
      const slope = (least + most) / 2;
      if (bounds([axis, slope]).far > far) least = slope;
      else most = slope;
    }
    const { low, high } = bounds([axis, most]);
    return (low + high) / 2;
  };
  const [a, b] = [middle(right, tall * aspect), middle(up, tall)];
  // The same eye, looking at the place where its middle ray meets the floor: there one turns about.
  const height = a * right[2] + b * up[2];
  const down = height / Math.sin(elevation);
  const at = (n: 0 | 1 | 2): number => a * right[n] + b * up[n] + down * into[n];
  return { azimuthDeg, elevationDeg, distanceMm: far + down, target: [at(0), at(1), 0] };
}

/** What a close view frames: the tile, the tile turned over behind it, and a finger's breadth round both. */
function closePlan(lengthMm: number, widthMm: number): SlabPlan {
  const clear = 0.06 * Math.hypot(lengthMm, widthMm);
  return {
    left: -lengthMm / 2 - clear,
    right: lengthMm / 2 + clear,
    near: -widthMm / 2 - clear,
    far: 1.5 * widthMm + clear,
    deep: 0,
  };
}

/** What is left of a plan when the bed is cut open. */
function cutPlan(plan: SlabPlan, { cut, turned }: Subject): SlabPlan {
  if (!cut) return plan;
  if (cut.along === 'length') return { ...plan, near: cut.atMm };
  // A tile turned over lies whole behind the cut bed.
  return turned ? plan : { ...plan, right: cut.atMm };
}

/** Half of what a near view of a cut shows from top to bottom, mm: a few ridges, as large as they can be told apart. */
const CUT_RADIUS = { least: 40, most: 70, share: 0.3 } as const;

/** A near eye on the middle of a cut. */
function eyeOnCut({ cut, lengthMm, widthMm }: Subject, aspect: number): Orbit {
  const { least, most, share } = CUT_RADIUS;
  const along = cut?.along ?? 'length';
  const radius = Math.max(least, Math.min(most, share * (along === 'length' ? lengthMm : widthMm)));
  const atMm = cut?.atMm ?? 0;
  return {
    azimuthDeg: along === 'length' ? -12 : 66,
    elevationDeg: along === 'length' ? 15 : 16,
    distanceMm: distanceFor(radius, aspect),
    target: along === 'length' ? [0, atMm, 0] : [atMm, 0, 0],
  };
}

/**
 * The eye of a named view.
 * @param aspect width over height of the picture
 */
export function namedView(name: ViewName, subject: Subject, aspect: number): Orbit {
  const { lengthMm, widthMm } = subject;
  const whole = subject.close ? closePlan(lengthMm, widthMm) : slabPlan(lengthMm, widthMm);
  const { left, right, near, far, deep } = cutPlan(whole, subject);
  const corners = (low: number, high: number, back: number): Place[] =>
    [left, right].flatMap((x) => [near, back].flatMap((y) => [low, high].map((height): Place => [x, y, height])));
  // A narrow picture is filled better from a little higher and more from the front.
  const narrow = aspect < 1.35;
  switch (name) {
    case 'bench':
      return framing(
        narrow ? -14 : -24,
        narrow ? 46 : 36,
        corners(-deep, 0, subject.close ? -whole.near : far),
        aspect,
      );
    case 'low':
      return framing(-38, 9, corners(-deep, 0, far), aspect);
    case 'above':
      return framing(0, 89, corners(0, 0, subject.turned ? far : -whole.near), aspect);
    case 'side':
      return framing(78, 12, corners(-deep, 0, far), aspect);
    case 'open':
      return framing(-12, 54, corners(-deep, 0, far), aspect);
    case 'cut':
      return eyeOnCut(subject, aspect);
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
