import {
  CapsuleGeometry,
  Color,
  CylinderGeometry,
  ExtrudeGeometry,
  Group,
  Mesh,
  MeshStandardMaterial,
  Shape,
} from 'three';

import type { TrowelSetup } from '../../bed/types.ts';
import { BLADE_LONG_MM } from '../../trowel/blade.ts';
import { ridgeOutline } from '../../trowel/profile.ts';

/** Height of the blade, mm (common practice, no published source: about 4 1/2 in). */
const BLADE_HIGH = 115;
const BLADE_THICK = 1.2;

/** The blade's outline with its notches cut along the lower edge; x along the edge, y up the blade. */
function bladeShape(trowel: TrowelSetup): Shape {
  const pitch = trowel.widthMm + trowel.toothMm;
  const upright = { ...trowel, angleDeg: 90 };
  const notch = ridgeOutline(upright);
  const count = Math.max(1, Math.floor((BLADE_LONG_MM - trowel.toothMm) / pitch));
  const start = (-(count - 1) / 2) * pitch;
  const shape = new Shape();
  shape.moveTo(-BLADE_LONG_MM / 2, 0);
  for (let n = 0; n < count; n++) for (const [across, up] of notch) shape.lineTo(start + n * pitch + across, up);
  shape.lineTo(BLADE_LONG_MM / 2, 0);
  shape.lineTo(BLADE_LONG_MM / 2, BLADE_HIGH - 8);
  shape.lineTo(BLADE_LONG_MM / 2 - 8, BLADE_HIGH);
  shape.lineTo(-BLADE_LONG_MM / 2 + 8, BLADE_HIGH);
  shape.lineTo(-BLADE_LONG_MM / 2, BLADE_HIGH - 8);
  shape.closePath();
  return shape;
}

export interface TrowelModel {
  group: Group;
  /** Cuts the notches and leans the blade to its angle. */
  shape: (trowel: TrowelSetup) => void;
  /** Stands the middle of the toothed edge at a place on the floor, drawn along a direction (degrees from x to y). */
  place: (x: number, y: number, floor: number, alongDeg: number) => void;
  dispose: () => void;
}

/** The trowel to scale: the notches are those the ridges are computed from. */
export function makeTrowel(): TrowelModel {
  const group = new Group();
  const lean = new Group();
  const steel = new MeshStandardMaterial({
    color: new Color('#cfd4d6'),
    metalness: 0.1,
    roughness: 0.32,
    // Steel mirrors the room on every side; without it the blade's shaded face would be a black hole.
    emissive: new Color('#5c6265'),
    emissiveIntensity: 0.75,
  });
  const wood = new MeshStandardMaterial({ color: new Color('#8a5a34'), roughness: 0.55 });
  const blade = new Mesh(new ExtrudeGeometry(), steel);
  const grip = new Mesh(new CapsuleGeometry(15, 118, 8, 20), wood);
  grip.rotation.z = Math.PI / 2;
  grip.position.set(0, 62, 52);
  const posts = [-46, 46].map((x) => {
    const post = new Mesh(new CylinderGeometry(5, 6, 46, 14), steel);
    post.rotation.x = Math.PI / 2;
    post.position.set(x, 62, 24);
    return post;
  });
  const spine = new Mesh(new CapsuleGeometry(6.5, 190, 4, 14), steel);
  spine.rotation.z = Math.PI / 2;
  spine.scale.set(1, 1, 0.45);
  spine.position.set(0, 62, 3);
  lean.add(blade, grip, spine, ...posts);
  group.add(lean);
  for (const mesh of [blade, grip, spine, ...posts]) {
    mesh.castShadow = true;
    mesh.receiveShadow = true;
  }
  return {
    group,
    shape: (trowel) => {
      blade.geometry.dispose();
      blade.geometry = new ExtrudeGeometry(bladeShape(trowel), { depth: BLADE_THICK, bevelEnabled: false });
      // Upright at 90°; a lesser angle lays the blade's back towards where it is drawn to.
      lean.rotation.x = -((90 - trowel.angleDeg) * Math.PI) / 180;
    },
    place: (x, y, floor, alongDeg) => {
      group.position.set(x, floor, -y);
      group.rotation.y = ((alongDeg - 90) * Math.PI) / 180;
    },
    dispose: () => {
      for (const mesh of [blade, grip, spine, ...posts]) mesh.geometry.dispose();
      steel.dispose();
      wood.dispose();
    },
  };
}
