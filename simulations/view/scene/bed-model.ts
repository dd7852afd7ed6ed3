import { Group, type Plane } from 'three';

import type { AirPocket, BedFrame, BedSetup } from '../../bed/types.ts';
import { warpOf } from '../../tile/warp.ts';
import { isLaid } from '../laid.ts';
import type { ViewPalette } from '../palette.ts';
import type { Cut } from '../section/profile.ts';
import { makeAirColumns } from './air-columns.ts';
import { makeCutFace } from './cut-face.ts';
import { fieldMesh } from './field-mesh.ts';
import { backLeaning, floorLeaning, widened } from './leaning.ts';
import { mortarMaterial } from './mortar-material.ts';
import { makeNeighbours } from './neighbours.ts';
import { strideFor, type Quality } from './quality.ts';
import { emptyField, shadeHeights, type ShadedField } from './shade-heights.ts';
import { slabPlan } from './slab-plan.ts';
import { makeSlab } from './slab.ts';
import { tearBed } from './tear.ts';
import { makeTile, type TileLook } from './tile-model.ts';
import { backOf, type BackHeight } from '../back-of.ts';
import { makeTrowel } from './trowel-model.ts';

/** Where the tile is held. */
export interface TilePose {
  /** Share of the way from lying to held over the bed. */
  lift: number;
  /** Share of the way from lying to turned over its far edge. */
  turn: number;
}

/** Where the trowel stands, mm and degrees, or null when it is put away. */
export type TrowelPlace = { x: number; y: number; alongDeg: number } | null;

export interface BedModel {
  group: Group;
  /** Shows a frame of a set-up. `pulled`: the mortar has parted between floor and tile. */
  show: (setup: BedSetup, frame: BedFrame, pulled: boolean) => void;
  setPose: (pose: TilePose) => void;
  setTileShown: (shown: boolean) => void;
  setLook: (look: TileLook) => void;
  setTrowel: (place: TrowelPlace) => void;
  setCut: (cut: Cut | null) => void;
  /** Stands columns over the pockets of shut-in air while one sees through the lying tile; none for an empty list. */
  setAir: (pockets: readonly AirPocket[]) => void;
  /** Turn of the tile about its middle, degrees, and its shift along its length, mm, while it is worked. */
  setSway: (turnDeg: number, shiftMm: number) => void;
  /** Shows the tiles next door while the tile lies on its bed. */
  setNeighbours: (shown: boolean) => void;
  setPalette: (palette: ViewPalette) => void;
  setQuality: (quality: Quality) => void;
  dispose: () => void;
}

interface Held {
  setup: BedSetup;
  frame: BedFrame;
  pulled: boolean;
}

const TURN_CLEAR_MM = 16;
/** How far a mesh without mortar dips under the surface that it lies on. */
const DIP_MM = 0.6;

/** One bed as a picture: slab, mortar, tile with what sticks to it, trowel, cut. */
export function makeBedModel(first: ViewPalette): BedModel {
  let palette = first;
  let quality: Quality | null = null;
  const group = new Group();
  const slab = makeSlab(palette);
  const bed = mortarMaterial(palette.wetMortar);
  const floorField = fieldMesh(bed.material, bed.uniforms);
  const left = mortarMaterial(palette.wetMortar);
  left.uniforms.bedTorn.value = 1;
  const tileField = fieldMesh(left.material, left.uniforms);
  const tile = makeTile(palette);
  const trowel = makeTrowel();
  const face = makeCutFace(palette);
  const beside = makeNeighbours(palette);
  const air = makeAirColumns(palette);
  let pockets: readonly AirPocket[] = [];
  let sway = { turn: 0, shift: 0 };
  let besideShown = false;
  const hinge = new Group();
  const underTile = new Group();
  underTile.scale.y = -1;
  underTile.add(tileField.mesh);
  tile.group.add(underTile);
  hinge.add(tile.group);
  group.add(slab.group, floorField.mesh, hinge, trowel.group, face.group, beside.group, air.group);
  trowel.group.visible = false;
  hinge.visible = false;

  let held: Held | null = null;
  let pose: TilePose = { lift: 0, turn: 0 };
  let cut: Cut | null = null;
  let tileShown = false;
  let floorShade: ShadedField | null = null;
  let tileShade: ShadedField | null = null;

  const field = (known: ShadedField | null, frame: BedFrame): ShadedField =>
    known && known.columns === frame.columns && known.rows === frame.rows && known.cellMm === frame.cellMm
      ? known
      : emptyField(frame.columns, frame.rows, frame.cellMm);

  const strideOf = ({ columns, rows }: BedFrame): number => (quality ? strideFor(quality, columns * rows) : 1);

  const showFloor = (frame: BedFrame, mortar: Float32Array): void => {
    floorShade = field(floorShade, frame);
    const { heights } = floorShade;
    const present = new Uint8Array(heights.length);
    for (let cell = 0; cell < heights.length; cell++) {
      const gap = frame.gapMm[cell]!;
      // A full bed is drawn a hair below the tile so that the two surfaces don't fight.
      const most = Number.isNaN(gap) || held?.pulled ? Infinity : gap - 0.03;
      heights[cell] = frame.floorMm[cell]! + Math.min(mortar[cell]!, most);
      present[cell] = mortar[cell]! > 0.02 ? 1 : 0;
      // Bare floor: the mesh dips under the slab, which then shows without a fight between two surfaces.
      if (present[cell] === 0) heights[cell] = frame.floorMm[cell]! - DIP_MM;
    }
    const leaning = floorLeaning(frame);
    // A wall ends where it meets the slab, up to a vertex beyond its mortar, and not in the air over it.
    shadeHeights(floorShade, widened(present, frame.columns, strideOf(frame)));
    floorField.show(floorShade, { origin: frame.originMm, stride: strideOf(frame), leaning });
  };

  const showBack = (frame: BedFrame, onTile: Float32Array, back: BackHeight): void => {
    tileShade = field(tileShade, frame);
    const { heights } = tileShade;
    const present = new Uint8Array(heights.length);
    const leaning = backLeaning(frame);
    for (let row = 0; row < frame.rows; row++) {
      for (let column = 0; column < frame.columns; column++) {
        const cell = row * frame.columns + column;
        const x = frame.originMm[0] + column * frame.cellMm - frame.offsetMm[0];
        const y = frame.originMm[1] + row * frame.cellMm - frame.offsetMm[1];
        const taken = onTile[cell]!;
        present[cell] = taken > 0 ? 1 : 0;
        heights[cell] = taken - (Number.isNaN(frame.gapMm[cell]!) ? 0 : back(x, y));
        // Beside a ridge the mesh dips into the tile, as it does into the slab on the floor.
        if (taken === 0) heights[cell]! -= DIP_MM;
      }
    }
    shadeHeights(tileShade, widened(present, frame.columns, strideOf(frame)));
    const origin: [number, number] = [frame.originMm[0] - frame.offsetMm[0], frame.originMm[1] - frame.offsetMm[1]];
    tileField.show(tileShade, { origin, stride: strideOf(frame), leaning });
  };

  const stand = (): void => {
    hinge.visible = tileShown;
    const [driftX, driftY] = held?.frame.driftMm ?? [0, 0];
    // The tile and what sticks to it stand still in the picture: as far as they have gone aside, the floor lies back.
    slab.group.position.set(-driftX, 0, driftY);
    beside.group.visible = false;
    air.group.visible = false;
    if (!held) return;
    const { setup, frame } = held;
    if (besideShown && tileShown && isLaid(frame) && pose.lift === 0 && pose.turn === 0) {
      const { lengthMm, widthMm } = setup.tile;
      beside.lay(setup.tile, warpOf(setup.tile, lengthMm, widthMm), frame.tileHeightMm, slabPlan(lengthMm, widthMm));
      beside.group.visible = true;
    }
    if (pockets.length > 0 && tileShown && isLaid(frame) && pose.lift === 0 && pose.turn === 0)
      air.show(pockets, frame.tileHeightMm + setup.tile.thicknessMm);
    const rest = isLaid(frame) ? frame.tileHeightMm : restingHeight(frame);
    const wide = setup.tile.widthMm;
    const axis = wide / 2 + TURN_CLEAR_MM / 2;
    const raise = pose.lift * (28 + 0.18 * wide);
    // The hinge stands behind the far edge; turned right over, the face lies on the slab.
    const height = rest + raise;
    const onSlab = setup.tile.thicknessMm + 0.5;
    hinge.position.set(
      frame.offsetMm[0] + sway.shift,
      height + (onSlab - height) * pose.turn,
      -axis - frame.offsetMm[1],
    );
    hinge.rotation.x = -Math.PI * pose.turn;
    tile.group.position.set(0, 0, axis);
    tile.group.rotation.y = (sway.turn * Math.PI) / 180;
  };

  const slice = (): void => {
    const planes: Plane[] = held && cut ? face.planes(cut) : [];
    slab.setClip(planes);
    beside.setClip(planes);
    bed.material.clippingPlanes = planes;
    const down = pose.lift === 0 && pose.turn === 0;
    tile.setClip(down ? planes : []);
    left.material.clippingPlanes = down ? planes : [];
    if (!held || !cut) {
      face.hide();
      return;
    }
    const { setup, frame, pulled } = held;
    face.show({
      frame,
      ...(pulled && { standsMm: tearBed(frame).onFloor }),
      cut,
      plan: slabPlan(setup.tile.lengthMm, setup.tile.widthMm),
      tileMm: tileShown && down && isLaid(frame) ? setup.tile.thicknessMm : 0,
    });
  };

  const showMortar = ({ frame, pulled }: Held): void => {
    if (!pulled) {
      showFloor(frame, frame.mortarMm);
      return;
    }
    const torn = tearBed(frame);
    showFloor(frame, torn.onFloor);
    showBack(frame, torn.onTile, backOf(frame));
  };

  const setQuality = (next: Quality): void => {
    const was = held && strideOf(held.frame);
    quality = next;
    tile.setTexels(next.paintTexels);
    for (const { uniforms } of [bed, left]) uniforms.bedGrain.value = next.grain ? 1 : 0;
    if (held && strideOf(held.frame) !== was) showMortar(held);
  };

  return {
    group,
    show: (setup, frame, pulled) => {
      const sameTile = held?.setup.tile === setup.tile;
      const reshaped = !held || held.frame !== frame || !sameTile;
      const moved = reshaped || held?.pulled !== pulled;
      const newFloor = !held || held.frame.floorMm !== frame.floorMm || !sameTile;
      const newTrowel = !held || held.setup.trowel !== setup.trowel;
      held = { setup, frame, pulled };
      if (newTrowel) trowel.shape(setup.trowel);
      if (newFloor) slab.fit(frame, setup.tile.lengthMm, setup.tile.widthMm);
      if (reshaped) tile.shape(setup.tile, frame);
      if (moved) {
        tile.paint(frame, pulled);
        showMortar(held);
        bed.uniforms.bedTorn.value = pulled ? 0.6 : 0;
        tileField.mesh.visible = pulled;
      }
      stand();
      if (moved) slice();
    },
    setPose: (next) => {
      const wasDown = pose.lift === 0 && pose.turn === 0;
      pose = next;
      stand();
      if (wasDown !== (next.lift === 0 && next.turn === 0)) slice();
    },
    setTileShown: (shown) => {
      if (shown === tileShown) return;
      tileShown = shown;
      stand();
      slice();
    },
    setLook: (look) => tile.setLook(look),
    setTrowel: (place) => {
      trowel.group.visible = place !== null;
      const yaw = held?.setup.trowel.yawDeg ?? 0;
      if (place) trowel.place(place.x, place.y, 0, place.alongDeg + yaw);
    },
    setAir: (next) => {
      if (next === pockets) return;
      pockets = next;
      stand();
    },
    setSway: (turn, shift) => {
      if (turn === sway.turn && shift === sway.shift) return;
      sway = { turn, shift };
      stand();
    },
    setNeighbours: (shown) => {
      if (besideShown === shown) return;
      besideShown = shown;
      stand();
    },
    setCut: (next) => {
      if (next?.along === cut?.along && next?.atMm === cut?.atMm) return;
      cut = next;
      slice();
    },
    setPalette: (next) => {
      palette = next;
      slab.setPalette(next);
      tile.setPalette(next);
      face.setPalette(next);
      beside.setPalette(next);
      air.setPalette(next);
      bed.material.color.set(next.wetMortar);
      left.material.color.set(next.wetMortar);
    },
    setQuality,
    dispose: () => {
      slab.dispose();
      floorField.dispose();
      tileField.dispose();
      tile.dispose();
      trowel.dispose();
      face.dispose();
      beside.dispose();
      air.dispose();
    },
  };
}

/** Where a tile's back would first meet the mortar: the top of the highest ridge. */
function restingHeight(frame: BedFrame): number {
  let most = 0;
  for (let cell = 0; cell < frame.mortarMm.length; cell++)
    most = Math.max(most, frame.floorMm[cell]! + frame.mortarMm[cell]!);
  return most;
}
