import { FIRST_POCKET } from './label-voids.ts';
import { type Bed, massError } from './bed.ts';
import { eachContact } from './contact.ts';
import { EMPTY, OPEN, TOUCHED } from './grid.ts';
import { drifted } from './lean.ts';
import { pieceAt } from './pieces.ts';
import type { AirPocket, BedResult, HistoryEntry } from './types.ts';
import { NEAR_MM, voidFigures } from './voids.ts';

const DEGREES = 57.29577951308232;

/** Pockets smaller than this are bubbles and not reported one by one, mm². */
const REPORTED_MM2 = 5;

/** Mean that starts empty. */
class Mean {
  sum = 0;
  count = 0;
  add(value: number): void {
    this.sum += value;
    this.count += 1;
  }
  get value(): number {
    return this.count > 0 ? this.sum / this.count : 0;
  }
}

function pocketsOf(bed: Bed): AirPocket[] {
  const { grid, air } = bed;
  if (air.pockets === 0) return [];
  const area = grid.cellMm * grid.cellMm;
  const pockets: AirPocket[] = Array.from({ length: air.count }, () => ({ xMm: 0, yMm: 0, areaMm2: 0, gaugePa: 0 }));
  eachContact(bed, (n, x, y, contact) => {
    if (grid.state[n] !== EMPTY) return;
    const pocket = pockets[grid.label[n]!]!;
    const part = (1 - contact) * area;
    pocket.areaMm2 += part;
    pocket.xMm += part * x;
    pocket.yMm += part * y;
  });
  return pockets
    .map((pocket, name) => ({
      xMm: pocket.areaMm2 > 0 ? pocket.xMm / pocket.areaMm2 : 0,
      yMm: pocket.areaMm2 > 0 ? pocket.yMm / pocket.areaMm2 : 0,
      areaMm2: pocket.areaMm2,
      gaugePa: air.gaugePa[name]!,
    }))
    .filter((pocket, name) => name >= FIRST_POCKET && pocket.areaMm2 >= REPORTED_MM2)
    .sort((a, b) => b.areaMm2 - a.areaMm2);
}

/**
 * Rise of mortar in the joint over the back, as a share of the tile's thickness. Between the pieces of a sheet it is
 * the mean column there; round a single tile, half of the joint belongs to it and takes what came out.
 */
function riseInJoint(bed: Bed): number {
  const { grid, setup } = bed;
  const { pieces, thicknessMm, lengthMm, widthMm } = setup.tile;
  const joint = new Mean();
  const gap = new Mean();
  const { rim, columns, tileColumns, tileRows, cellMm } = grid;
  for (let row = rim; row < rim + tileRows; row += 1)
    for (let column = rim; column < rim + tileColumns; column += 1) {
      const n = row * columns + column;
      if (grid.state[n] === OPEN) joint.add(grid.mortar[n]!);
      else gap.add(grid.gap[n]!);
    }
  let column = joint.value;
  if (joint.count === 0) {
    const strip = pieces.jointMm * (lengthMm + widthMm + pieces.jointMm);
    const squeezed = bed.outSum * cellMm * cellMm;
    column = strip > 0 ? bed.combedMeanMm + squeezed / strip : 0;
  }
  return column > 0 && thicknessMm > 0 ? Math.max(0, column - gap.value) / thicknessMm : 0;
}

/** Coverage of each piece of a sheet; nothing to say of a single tile. */
function coverageByPiece(bed: Bed): { pieceCoverage?: number[] } {
  const { tile } = bed.setup;
  const count = tile.pieces.along * tile.pieces.across;
  if (count === 1) return {};
  const piece = pieceAt(tile);
  const means = Array.from({ length: count }, () => new Mean());
  eachContact(bed, (_n, x, y, _contact, bonded) => means[piece(x, y)]?.add(bonded));
  return { pieceCoverage: means.map((mean) => mean.value) };
}

/** All figures of a bed as it lies; call after a measure. */
export function outcome(bed: Bed, history: HistoryEntry[], loadN: number): BedResult {
  const { grid, setup } = bed;
  const { lengthMm, widthMm } = setup.tile;
  const whole = new Mean();
  const wetted = new Mean();
  const trapped = new Mean();
  const strip = new Mean();
  const thickness = new Mean();
  const corners = [new Mean(), new Mean(), new Mean(), new Mean()] as const;
  let least = Infinity;
  let most = -Infinity;
  eachContact(bed, (n, x, y, contact, bonded) => {
    whole.add(bonded);
    wetted.add((grid.mark[n]! & TOUCHED) !== 0 ? 1 : contact);
    trapped.add(grid.label[n]! >= FIRST_POCKET && grid.state[n] === EMPTY ? 1 - contact : 0);
    const nearX = lengthMm / 2 - Math.abs(x) < NEAR_MM;
    const nearY = widthMm / 2 - Math.abs(y) < NEAR_MM;
    if (nearX || nearY) strip.add(bonded);
    if (nearX && nearY) corners[(x > 0 ? 1 : 0) + (y > 0 ? 2 : 0)]!.add(bonded);
    if (contact < 0.5) return;
    const bed = grid.gap[n]!;
    thickness.add(bed);
    if (bed < least) least = bed;
    if (bed > most) most = bed;
  });
  const voids = voidFigures(bed);
  return {
    coverage: whole.value,
    wetted: wetted.value,
    trapped: trapped.value,
    pockets: pocketsOf(bed),
    largestVoidMm2: voids.largestMm2,
    largestVoidAtMm: voids.largestAt,
    voidsNearEdge: voids.nearEdge,
    corners: [corners[0].value, corners[1].value, corners[2].value, corners[3].value],
    edgeStrip: strip.value,
    bedMm: { mean: thickness.value, min: thickness.count > 0 ? least : 0, max: thickness.count > 0 ? most : 0 },
    tileHeightMm: bed.height,
    tiltDeg: [bed.slopeX * DEGREES, bed.slopeY * DEGREES],
    loadN,
    squeezedMm3: bed.outSum * grid.cellMm * grid.cellMm,
    riseInJoint: riseInJoint(bed),
    ...coverageByPiece(bed),
    ...drifted(bed),
    history,
    massError: massError(bed),
    cells: grid.tileColumns * grid.tileRows,
    steps: bed.steps,
  };
}
