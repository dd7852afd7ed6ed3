/**
 * What goes into the bed solver and what comes out. Lengths mm, forces N, stresses Pa, angles degrees, times min,
 * areas mm², volumes mm³, shares 0…1. x runs along the tile's length, y along its width, from the tile's centre;
 * directions are counted from x towards y.
 */

export interface TileSetup {
  lengthMm: number;
  widthMm: number;
  thicknessMm: number;
  densityKgM3: number;
  /** Middle of the back above its ends along the length (the ends touch first); negative: the middle touches first. */
  bowLengthMm: number;
  bowWidthMm: number;
  /** The fourth corner's departure from the plane of the other three (ISO 10545-2). */
  twistMm: number;
  /** Mean depth of the back's relief that mortar must fill. */
  reliefMm: number;
  /** Equal pieces on one sheet with open joints between them. */
  pieces: { along: number; across: number; jointMm: number };
}

export type NotchShape = 'square' | 'v' | 'u' | 'slanted';

export interface TrowelSetup {
  shape: NotchShape;
  widthMm: number;
  depthMm: number;
  /** The land between two notches. */
  toothMm: number;
  /** Blade to floor. */
  angleDeg: number;
  /** Depth worn off the teeth. */
  wearMm: number;
}

export type CombPattern = 'straight' | 'crossed' | 'wobble' | 'fan' | 'swirl' | 'flat' | 'drawn';

export interface CombSetup {
  pattern: CombPattern;
  /** The way the ridges run. */
  directionDeg: number;
  keyCoatMm: number;
  /** Ridges knocked down with the flat side before the tile is laid. */
  flattened: boolean;
  /** Strip left bare along the two edges that lie on the layout lines (least x and least y). */
  edgeBareMm: number;
  seed: number;
  /** The hand's own stroke, places on the floor in order, for the pattern `drawn`. */
  path?: [x: number, y: number][];
}

export interface MortarSetup {
  yieldPa: number;
  viscosityPaS: number;
  /** Minutes since combing when the tile is laid. */
  ageMin: number;
  /** Minutes after which contact on the skinned bed has lost two thirds of its hold; by default still indoor air. */
  skinMin?: number;
}

export type BedAction =
  | { do: 'press'; forceN: number; atX: number; atY: number }
  | { do: 'slide'; forceN: number; strokeMm: number; strokes: number; directionDeg: number; speedMmS: number }
  | { do: 'twist'; forceN: number; angleDeg: number; strokes: number; speedMmS: number }
  | { do: 'tap'; energyJ: number; blows: number; atX: number; atY: number }
  | { do: 'vibrate'; forceN: number; amplitudeMm: number; frequencyHz: number; seconds: number };

export interface BedPhysics {
  endTerm: boolean;
  weight: boolean;
  air: boolean;
  viscosity: boolean;
}

/** A complete set-up: every default filled in. */
export interface BedSetup {
  tile: TileSetup;
  floor: { bowLengthMm: number; bowWidthMm: number };
  trowel: TrowelSetup;
  comb: CombSetup;
  mortar: MortarSetup;
  butterMm: number;
  actions: BedAction[];
  cellMm: number;
  physics: BedPhysics;
}

export interface AirPocket {
  xMm: number;
  yMm: number;
  areaMm2: number;
  gaugePa: number;
}

export interface HistoryEntry {
  action: number;
  coverage: number;
  tileHeightMm: number;
  loadN: number;
  slideMm: number;
}

export interface BedResult {
  coverage: number;
  wetted: number;
  trapped: number;
  pockets: AirPocket[];
  largestVoidMm2: number;
  voidsNearEdge: number;
  corners: [number, number, number, number];
  edgeStrip: number;
  bedMm: { mean: number; min: number; max: number };
  tileHeightMm: number;
  tiltDeg: [number, number];
  loadN: number;
  squeezedMm3: number;
  riseInJoint: number;
  history: HistoryEntry[];
  massError: number;
  cells: number;
  steps: number;
}

/** What a cell shows when the tile is turned over. */
export const CELL_STATE = { outside: 0, open: 1, trapped: 2, bonded: 3, skinned: 4, joint: 5 } as const;
export type CellState = (typeof CELL_STATE)[keyof typeof CELL_STATE];

/** One picture of the bed. Row-major, `columns` cells along x, `rows` along y; cell (0,0) has the least x and y. */
export interface BedFrame {
  columns: number;
  rows: number;
  cellMm: number;
  /** Centre of cell (0,0). */
  originMm: [number, number];
  /** Mortar column over the floor, mm: ridges before, the bed and its squeeze-up after. */
  mortarMm: Float32Array;
  /** Floor over its mean plane, mm. */
  floorMm: Float32Array;
  /** Tile underside over the floor, mm; NaN where there is no tile. */
  gapMm: Float32Array;
  /** A CELL_STATE a cell. */
  state: Uint8Array;
  /** −1 before the tile is laid. */
  action: number;
  /** How far the tile stands from its final place. */
  offsetMm: [number, number];
  coverage: number;
  tileHeightMm: number;
  tiltDeg: [number, number];
  loadN: number;
}

export interface BedRun {
  result: BedResult;
  frame: BedFrame;
}

/** Hooks for a caller that shows the run as it goes; neither changes what is computed. */
export interface BedHooks {
  /** Called for each picture; the arrays are the caller's to keep. */
  onFrame?: (frame: BedFrame) => void;
  /** Called between steps with the share done; return true to stop (the run then throws `BedStopped`). */
  onProgress?: (share: number) => boolean;
}
