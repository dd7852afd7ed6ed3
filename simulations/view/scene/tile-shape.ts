import { BufferAttribute, BufferGeometry } from 'three';

import type { TileSetup } from '../../bed/types.ts';
import { reliefField } from '../../tile/relief.ts';
import type { BackHeight } from '../back-of.ts';

/** A piece of tile by its edges, mm from the tile's centre. */
interface Piece {
  left: number;
  right: number;
  near: number;
  far: number;
}

/** Equal pieces on one sheet, with open joints between them. */
export function piecesOf(tile: TileSetup): Piece[] {
  const { along, across, jointMm } = tile.pieces;
  const long = (tile.lengthMm - (along - 1) * jointMm) / along;
  const wide = (tile.widthMm - (across - 1) * jointMm) / across;
  const found: Piece[] = [];
  for (let row = 0; row < across; row++) {
    for (let column = 0; column < along; column++) {
      const left = -tile.lengthMm / 2 + column * (long + jointMm);
      const near = -tile.widthMm / 2 + row * (wide + jointMm);
      found.push({ left, right: left + long, near, far: near + wide });
    }
  }
  return found;
}

/** The same with the hollows of its relief, seen as sharply as the mesh of the back is fine. */
export function hollowBack(tile: TileSetup, plain: BackHeight): BackHeight {
  if (!tile.relief) return plain;
  const recess = reliefField(tile.relief, tile.relief.pitchMm / STEPS_A_RIB);
  return (x, y) => plain(x, y) + recess(x, y);
}

interface Builder {
  places: number[];
  uvs: number[];
  next: number;
}

type Corner = [x: number, y: number, height: number, u: number, v: number];

function quad(into: Builder, a: Corner, b: Corner, c: Corner, d: Corner): void {
  for (const [x, y, height, u, v] of [a, b, c, a, c, d]) {
    into.places.push(x, height, -y);
    into.uvs.push(u, v);
    into.next += 1;
  }
}

/** Steps of a face along one piece: enough for a bow to look round. */
const steps = (pieces: number): number => (pieces > 8 ? 2 : pieces > 1 ? 6 : 20);
/** Steps to a rib or dot of the back, and the most along one piece. */
const STEPS_A_RIB = 6;
const MOST_STEPS = 160;
const stepsOfBack = (tile: TileSetup, long: number, pieces: number): number =>
  tile.relief
    ? Math.min(Math.round(MOST_STEPS / Math.sqrt(pieces)), Math.ceil((long / tile.relief.pitchMm) * STEPS_A_RIB))
    : steps(pieces);

/** Which faces a geometry holds. */
export type TileFace = 'top' | 'sides' | 'back';

/**
 * One kind of face of all the pieces. Texture coordinates: over the whole tile 0…1 for top and back; along the edge in
 * mm for sides.
 */
export function tileFace(tile: TileSetup, back: BackHeight, face: TileFace): BufferGeometry {
  const pieces = piecesOf(tile);
  const into: Builder = { places: [], uvs: [], next: 0 };
  const thick = tile.thicknessMm;
  const flat = (x: number, y: number, up: number): Corner => [
    x,
    y,
    back(x, y) + up,
    x / tile.lengthMm + 0.5,
    y / tile.widthMm + 0.5,
  ];
  for (const { left, right, near, far } of pieces) {
    const fine = face === 'back';
    const count = fine ? stepsOfBack(tile, right - left, pieces.length) : steps(pieces.length);
    const deep = fine ? stepsOfBack(tile, far - near, pieces.length) : count;
    const x = (n: number): number => left + ((right - left) * n) / count;
    const y = (n: number): number => near + ((far - near) * n) / deep;
    for (let n = 0; n < count; n++) {
      if (face === 'sides') {
        const rim: [number, number, number, number][] = [
          [x(n), near, x(n + 1), near],
          [x(n + 1), far, x(n), far],
          [right, y(n), right, y(n + 1)],
          [left, y(n + 1), left, y(n)],
        ];
        for (const [x0, y0, x1, y1] of rim) {
          const at = x0 + y0;
          const end = at + Math.abs(x1 - x0) + Math.abs(y1 - y0);
          const low0 = back(x0, y0);
          const low1 = back(x1, y1);
          quad(
            into,
            [x0, y0, low0, at, 0],
            [x1, y1, low1, end, 0],
            [x1, y1, low1 + thick, end, thick],
            [x0, y0, low0 + thick, at, thick],
          );
        }
        continue;
      }
      for (let m = 0; m < deep; m++) {
        const up = face === 'top' ? thick : 0;
        const corners = [
          flat(x(n), y(m), up),
          flat(x(n + 1), y(m), up),
          flat(x(n + 1), y(m + 1), up),
          flat(x(n), y(m + 1), up),
        ] as const;
        if (face === 'top') quad(into, corners[0], corners[1], corners[2], corners[3]);
        else quad(into, corners[0], corners[3], corners[2], corners[1]);
      }
    }
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(into.places), 3));
  geometry.setAttribute('uv', new BufferAttribute(new Float32Array(into.uvs), 2));
  geometry.computeVertexNormals();
  return geometry;
}

/** The arrises of every piece, as line segments. */
export function tileEdges(tile: TileSetup, back: BackHeight): BufferGeometry {
  const pieces = piecesOf(tile);
  const count = steps(pieces.length);
  const places: number[] = [];
  const line = (x0: number, y0: number, x1: number, y1: number): void => {
    for (let n = 0; n < count; n++) {
      for (const up of [0, tile.thicknessMm]) {
        for (const share of [n / count, (n + 1) / count]) {
          const x = x0 + (x1 - x0) * share;
          const y = y0 + (y1 - y0) * share;
          places.push(x, back(x, y) + up, -y);
        }
      }
    }
  };
  for (const { left, right, near, far } of pieces) {
    line(left, near, right, near);
    line(left, far, right, far);
    line(left, near, left, far);
    line(right, near, right, far);
    for (const x of [left, right])
      for (const y of [near, far]) places.push(x, back(x, y), -y, x, back(x, y) + tile.thicknessMm, -y);
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(places), 3));
  return geometry;
}
