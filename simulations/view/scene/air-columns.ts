import { Color, CylinderGeometry, Group, InstancedMesh, Matrix4, MeshStandardMaterial } from 'three';

import type { AirPocket } from '../../bed/types.ts';
import { MOST_COLUMNS } from '../shut-in.ts';
import type { ViewPalette } from '../palette.ts';

/** Height of a column for each kPa of its pocket's pressure over the room's, mm; a band is one kPa. */
const MM_PER_KPA = 14;
/** Most bands drawn on one column. */
const MOST_BANDS = 12;
const THINNEST_MM = 4;
const THICKEST_MM = 16;

export interface AirColumns {
  group: Group;
  /** Stands a column over each pocket, from a height over the floor; the largest pockets if there are many. */
  show: (pockets: readonly AirPocket[], fromMm: number) => void;
  setPalette: (palette: ViewPalette) => void;
  dispose: () => void;
}

/** Shut-in air as banded columns over its pockets: as high as the pressure, dark and light by turns. */
export function makeAirColumns(first: ViewPalette): AirColumns {
  const group = new Group();
  const shape = new CylinderGeometry(1, 1, 1, 20);
  const materials = [0, 1].map(() => new MeshStandardMaterial({ roughness: 0.7, transparent: true, opacity: 0.9 }));
  const bands = materials.map((material) => new InstancedMesh(shape, material, (MOST_COLUMNS * MOST_BANDS) / 2));
  for (const mesh of bands) {
    mesh.frustumCulled = false;
    mesh.renderOrder = 5;
    mesh.count = 0;
  }
  group.add(...bands);
  const setPalette = (palette: ViewPalette): void => {
    materials[0]!.color = new Color(palette.chalk);
    materials[1]!.color = new Color(palette.air);
  };
  setPalette(first);
  return {
    group,
    setPalette,
    show: (pockets, fromMm) => {
      const counts = [0, 0];
      const place = new Matrix4();
      for (const { xMm, yMm, areaMm2, gaugePa } of pockets.slice(0, MOST_COLUMNS)) {
        const radius = Math.min(THICKEST_MM, Math.max(THINNEST_MM, Math.sqrt(areaMm2 / Math.PI)));
        const kPa = Math.min(MOST_BANDS, Math.max(0, gaugePa / 1000));
        for (let band = 0; band < kPa; band++) {
          const high = Math.min(1, kPa - band) * MM_PER_KPA;
          place.makeScale(radius, high, radius).setPosition(xMm, fromMm + band * MM_PER_KPA + high / 2, -yMm);
          bands[band % 2]!.setMatrixAt(counts[band % 2]!++, place);
        }
      }
      bands.forEach((mesh, n) => {
        mesh.count = counts[n]!;
        mesh.instanceMatrix.needsUpdate = true;
      });
      group.visible = counts[0]! > 0;
    },
    dispose: () => {
      for (const mesh of bands) mesh.dispose();
      shape.dispose();
      for (const material of materials) material.dispose();
    },
  };
}
