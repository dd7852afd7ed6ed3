import { BufferGeometry, Color, DoubleSide, Group, Mesh, MeshStandardMaterial, Plane, Vector3 } from 'three';

import type { TileSetup } from '../../bed/types.ts';
import { NEIGHBOUR_JOINT_MM, NEIGHBOUR_OFFSET } from '../lippage-seen.ts';
import type { ViewPalette } from '../palette.ts';
import type { SlabPlan } from './slab-plan.ts';
import type { BackHeight } from '../back-of.ts';
import { tileFace } from './tile-shape.ts';

export interface Neighbours {
  group: Group;
  /** Lays like tiles level beside and behind, cut off at the slab's edges. */
  lay: (tile: TileSetup, back: BackHeight, heightMm: number, plan: SlabPlan) => void;
  setPalette: (palette: ViewPalette) => void;
  setClip: (planes: Plane[]) => void;
  dispose: () => void;
}

/** The tiles next door: the same tile laid level at the same height, one beside and two behind in a running bond. */
export function makeNeighbours(first: ViewPalette): Neighbours {
  const group = new Group();
  const glaze = new MeshStandardMaterial({ roughness: 0.28 });
  const body = new MeshStandardMaterial({ roughness: 0.85, side: DoubleSide });
  const tops = [0, 1, 2].map(() => new Mesh(new BufferGeometry(), glaze));
  const sides = [0, 1, 2].map(() => new Mesh(new BufferGeometry(), body));
  group.add(...tops, ...sides);
  for (const mesh of [...tops, ...sides]) {
    mesh.receiveShadow = true;
  }
  for (const mesh of sides) mesh.castShadow = true;
  let edges: Plane[] = [];
  let shaped: TileSetup | null = null;
  let cut: Plane[] = [];
  const clip = (): void => {
    for (const material of [glaze, body]) material.clippingPlanes = [...edges, ...cut];
  };
  const setPalette = (palette: ViewPalette): void => {
    glaze.color = new Color(palette.glaze);
    body.color = new Color(palette.clay);
  };
  setPalette(first);
  const drop = (): void => {
    for (const mesh of [...tops, ...sides]) mesh.geometry.dispose();
  };
  return {
    group,
    setPalette,
    lay: (tile, back, heightMm, plan) => {
      // Their shape is the tile's; only how high they lie changes from picture to picture.
      const sameShape = tile === shaped;
      shaped = tile;
      if (!sameShape) drop();
      const long = tile.lengthMm + NEIGHBOUR_JOINT_MM;
      const wide = tile.widthMm + NEIGHBOUR_JOINT_MM;
      const places: [number, number][] = [
        [-long, 0],
        [-NEIGHBOUR_OFFSET * long, wide],
        [(1 - NEIGHBOUR_OFFSET) * long, wide],
      ];
      places.forEach(([x, y], n) => {
        if (!sameShape) {
          tops[n]!.geometry = tileFace(tile, back, 'top');
          sides[n]!.geometry = tileFace(tile, back, 'sides');
        }
        for (const mesh of [tops[n]!, sides[n]!]) mesh.position.set(x, heightMm, -y);
      });
      edges = [
        new Plane(new Vector3(1, 0, 0), -plan.left),
        new Plane(new Vector3(-1, 0, 0), plan.right),
        new Plane(new Vector3(0, 0, 1), plan.far),
      ];
      clip();
    },
    setClip: (planes) => {
      cut = planes;
      clip();
    },
    dispose: () => {
      drop();
      glaze.dispose();
      body.dispose();
    },
  };
}
