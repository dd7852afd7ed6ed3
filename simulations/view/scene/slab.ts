import {
  BufferAttribute,
  BufferGeometry,
  Color,
  DoubleSide,
  Group,
  Mesh,
  MeshStandardMaterial,
  PlaneGeometry,
  type Plane,
} from 'three';

import type { BedFrame } from '../../bed/types.ts';
import type { ViewPalette } from '../palette.ts';
import { CHALK_CLEAR_MM, chalkStrip } from './chalk-lines.ts';
import { moveBack } from './move-back.ts';
import { floorAt, slabPlan, type SlabPlan } from './slab-plan.ts';
import { chalkTexture, SLAB_MM, slabTexture, stuffTexture, SWATCH_MM } from './swatches.ts';

const STEPS = 40;

function topGeometry(frame: BedFrame, plan: SlabPlan): BufferGeometry {
  const geometry = new PlaneGeometry(1, 1, STEPS, STEPS);
  const place = geometry.getAttribute('position') as BufferAttribute;
  const uv = geometry.getAttribute('uv') as BufferAttribute;
  for (let at = 0; at < place.count; at++) {
    const x = plan.left + (place.getX(at) + 0.5) * (plan.right - plan.left);
    const y = plan.near + (place.getY(at) + 0.5) * (plan.far - plan.near);
    place.setXYZ(at, x, floorAt(frame, x, y), -y);
    uv.setXY(at, x / SLAB_MM, y / SLAB_MM);
  }
  geometry.computeVertexNormals();
  return geometry;
}

/** The four sawn faces round the slab. */
function sideGeometry(frame: BedFrame, plan: SlabPlan): BufferGeometry {
  const corners: [number, number][] = [
    [plan.left, plan.near],
    [plan.right, plan.near],
    [plan.right, plan.far],
    [plan.left, plan.far],
  ];
  const places: number[] = [];
  const uvs: number[] = [];
  corners.forEach(([x0, y0], side) => {
    const [x1, y1] = corners[(side + 1) % 4]!;
    const long = Math.hypot(x1 - x0, y1 - y0);
    for (let step = 0; step < STEPS; step++) {
      const quad = [step / STEPS, (step + 1) / STEPS].map((share) => {
        const x = x0 + (x1 - x0) * share;
        const y = y0 + (y1 - y0) * share;
        return { x, y, top: floorAt(frame, x, y), u: (share * long) / SWATCH_MM };
      });
      const [a, b] = quad as [(typeof quad)[0], (typeof quad)[0]];
      const low = -plan.deep;
      const points: [typeof a, number][] = [
        [a, low],
        [b, low],
        [b, b.top],
        [a, low],
        [b, b.top],
        [a, a.top],
      ];
      for (const [point, height] of points) {
        places.push(point.x, height, -point.y);
        uvs.push(point.u, height / SWATCH_MM);
      }
    }
  });
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(places), 3));
  geometry.setAttribute('uv', new BufferAttribute(new Float32Array(uvs), 2));
  geometry.computeVertexNormals();
  return geometry;
}

export interface Slab {
  group: Group;
  /** Fits the slab to a tile's plan and a frame's floor. */
  fit: (frame: BedFrame, lengthMm: number, widthMm: number) => void;
  setPalette: (palette: ViewPalette) => void;
  setClip: (planes: Plane[]) => void;
  dispose: () => void;
}

/** The floor: a sawn-out piece of slab with two chalk lines snapped along the tile's edges. */
export function makeSlab(palette: ViewPalette): Slab {
  const group = new Group();
  const top = new MeshStandardMaterial({ roughness: 0.92 });
  moveBack(top);
  const side = new MeshStandardMaterial({ roughness: 0.96, side: DoubleSide });
  const chalk = new MeshStandardMaterial({ roughness: 1, transparent: true, depthWrite: false, polygonOffset: true });
  chalk.polygonOffsetFactor = -2;
  chalk.polygonOffsetUnits = -2;
  const topMesh = new Mesh(new BufferGeometry(), top);
  const sideMesh = new Mesh(new BufferGeometry(), side);
  const lines = [new Mesh(new BufferGeometry(), chalk), new Mesh(new BufferGeometry(), chalk)];
  topMesh.receiveShadow = true;
  sideMesh.receiveShadow = true;
  for (const line of lines) line.receiveShadow = true;
  group.add(topMesh, sideMesh, ...lines);
  const materials = [top, side, chalk];
  const drop = (): void => {
    for (const mesh of [topMesh, sideMesh, ...lines]) mesh.geometry.dispose();
  };
  const setPalette = (next: ViewPalette): void => {
    for (const material of materials) material.map?.dispose();
    top.map = slabTexture(next);
    side.map = stuffTexture('concrete', next);
    side.color = new Color('#ffffff');
    chalk.map = chalkTexture(next);
    for (const material of materials) material.needsUpdate = true;
  };
  setPalette(palette);
  return {
    group,
    setPalette,
    fit: (frame, lengthMm, widthMm) => {
      drop();
      const plan = slabPlan(lengthMm, widthMm);
      topMesh.geometry = topGeometry(frame, plan);
      sideMesh.geometry = sideGeometry(frame, plan);
      const across = chalkStrip(frame, plan, 'length', -widthMm / 2 - CHALK_CLEAR_MM);
      const away = chalkStrip(frame, plan, 'width', -lengthMm / 2 - CHALK_CLEAR_MM);
      lines[0]!.geometry = across;
      lines[1]!.geometry = away;
    },
    setClip: (planes) => {
      for (const material of materials) material.clippingPlanes = planes;
    },
    dispose: () => {
      drop();
      for (const material of materials) {
        material.map?.dispose();
        material.dispose();
      }
    },
  };
}
