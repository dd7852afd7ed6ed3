/**
 * What goes into the bed solver and what comes out. Lengths mm, forces N, stresses Pa, angles degrees, times min,
 * areas mm², volumes mm³, shares 0…1. x runs along the tile's length, y along its width, from the tile's centre;
 * directions are counted from x towards y.
 */

/**
 * A surface as it was read with a straightedge and feelers, heights mm, at even places from edge to edge; up is away
 * from the floor. Either lines through the middle (each over its own two ends) or one grid.
 */
export interface SurfaceReadings {
  /** From the least x to the greatest, on the middle of the width. */
  alongMm?: number[];
  /** From the least y to the greatest, on the middle of the length. */
  acrossMm?: number[];
  /** From the least x to the greatest: the diagonal with rising y, then the one with falling y. */
  diagonalsMm?: number[][];
  /** Rows from the least y to the greatest, each from the least x to the greatest. */
  gridMm?: number[][];
}

/** How a surface leaves its mean plane. */
export interface SurfaceSetup {
  /** Middle over the ends along the length, mm. */
  bowLengthMm: number;
  bowWidthMm: number;
  /** The fourth corner's departure from the plane of the other three (ISO 10545-2). */
  twistMm?: number;
  /** Given in place of the three above. */
  readings?: SurfaceReadings;
}

/** A back's relief by its shape: parts that touch first, at even distances, and the hollows between them. */
export interface ReliefSetup {
  shape: 'ribs' | 'grid' | 'dots';
  /** From one rib or dot to the next. */
  pitchMm: number;
  depthMm: number;
  /** The way the ribs (or the rows of dots) run. */
  directionDeg: number;
  /** Width of a rib, or diameter of a dot, over the pitch. */
  raisedShare: number;
}

export interface TileSetup extends SurfaceSetup {
  lengthMm: number;
  widthMm: number;
  thicknessMm: number;
  densityKgM3: number;
  /** Middle of the back above its ends along the length (the ends touch first); negative: the middle touches first. */
  bowLengthMm: number;
  twistMm: number;
  /** Mean depth of the back's relief that mortar must fill, where its shape does not matter. */
  reliefMm: number;
  /** The relief by its shape, in place of its mean depth; the gap is then counted from its high parts. */
  relief?: ReliefSetup;
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
  /** Turn of the blade off square to the way it is drawn, seen from above: it draws ridges and lanes closer together. */
  yawDeg?: number;
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
  | { do: 'vibrate'; forceN: number; amplitudeMm: number; frequencyHz: number; seconds: number }
  /** Pulls the tile to look at its back; the last thing that can be done to it. */
  | { do: 'lift' };

export interface BedPhysics {
  endTerm: boolean;
  weight: boolean;
  air: boolean;
  viscosity: boolean;
}

/** A complete set-up: every default filled in. */
export interface BedSetup {
  tile: TileSetup;
  floor: SurfaceSetup;
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

/** What came up with a lifted tile and what stayed. */
export interface LiftedTile {
  /** The most a straight pull could ask for, the tile's weight included, N; peeling by an edge takes far less. */
  pullN: number;
  /** Mortar on the back, its hollows included, and on the floor under it, joints of a sheet included, mm³. */
  onTileMm3: number;
  onFloorMm3: number;
  /** Share of the back with mortar on it, a coat that never met the bed included. */
  backWet: number;
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
  /** Its middle, mm from the tile's centre. */
  largestVoidAtMm: [number, number];
  voidsNearEdge: number;
  corners: [number, number, number, number];
  edgeStrip: number;
  bedMm: { mean: number; min: number; max: number };
  tileHeightMm: number;
  tiltDeg: [number, number];
  loadN: number;
  squeezedMm3: number;
  /** Rise over the back as a share of the tile's thickness; above 1 it stands proud of the face. */
  riseInJoint: number;
  /** Coverage of each piece of a sheet, along the length first, from the least x and y; only where there are several. */
  pieceCoverage?: number[];
  /** How far the tile went aside by itself over ridges that lean (model), mm along x and y; only with a slanted notch. */
  driftMm?: [number, number];
  /** Only after a lift. */
  lifted?: LiftedTile;
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
  /** How ridges lean along x and y, run over rise (the columns stand upright); only with a slanted notch. */
  leanSlope?: [number, number];
  /** How far the tile, and the bed with it, has gone aside over its ridges' feet, mm along x and y; only with a slanted notch. */
  driftMm?: [number, number];
  /** After a lift: mortar that came up with the tile and that stayed on the floor, mm; the bed before stands above. */
  onTileMm?: Float32Array;
  onFloorMm?: Float32Array;
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
  /** Called for each picture but the last, which the run ends with; the arrays are the caller's to keep. */
  onFrame?: (frame: BedFrame) => void;
  /** Called for the combed bed, the first picture, in place of `onFrame`: each costs its making. */
  onCombed?: (frame: BedFrame) => void;
  /** Called between steps with the share done; return true to stop (the run then throws `BedStopped`). */
  onProgress?: (share: number) => boolean;
}
