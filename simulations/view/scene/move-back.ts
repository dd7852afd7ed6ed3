import type { Material } from 'three';

/**
 * Moves a surface back by what its depth changes over a pixel, for mortar and what mortar lies on. The steep side of a
 * ridge is seen nearly edge on: within one pixel its depth runs through several millimetres, and at the samples of a
 * smoothed edge it is reckoned in front of the tile that lies over it, as a speck on the tile's face. Floor and back are
 * moved alike: seen aslant from afar a pixel's depth is more than a thin bed, which would vanish in them.
 */
export function moveBack(material: Material): void {
  material.polygonOffset = true;
  material.polygonOffsetFactor = 1;
}
