import {
  BufferAttribute,
  BufferGeometry,
  DoubleSide,
  Group,
  LineBasicMaterial,
  LineSegments,
  Mesh,
  MeshBasicMaterial,
  Plane,
  Vector3,
  Color,
} from 'three';

import { CELL_STATE, type BedFrame } from '../../bed/types.ts';
import type { ViewPalette } from '../palette.ts';
import { profileOf, uprightIn, type Cut, type Profile } from '../section/profile.ts';
import type { Point, Region } from '../section/region.ts';
import type { Stuff } from '../section/textures.ts';
import { floorAt, type SlabPlan } from './slab-plan.ts';
import { stuffTexture, SWATCH_MM } from './swatches.ts';

/** What the cut goes through. */
export interface CutThrough {
  frame: BedFrame;
  /** What is left of each column on the floor, mm, where the mortar has parted. */
  standsMm?: Float32Array;
  cut: Cut;
  plan: SlabPlan;
  /** The tile's thickness where it lies on the bed; 0 where it is lifted away. */
  tileMm: number;
}

export interface CutFace {
  group: Group;
  /** The planes that take the near part away. */
  planes: (cut: Cut) => Plane[];
  show: (through: CutThrough) => void;
  hide: () => void;
  setPalette: (palette: ViewPalette) => void;
  dispose: () => void;
}

interface Strip {
  places: number[];
  uvs: number[];
  lines: number[];
}

type Place = (along: number, height: number) => [number, number, number];

function addColumn(
  strip: Strip,
  place: Place,
  from: number,
  to: number,
  low: [number, number],
  high: [number, number],
): void {
  const corner = (along: number, height: number): void => {
    strip.places.push(...place(along, height));
    strip.uvs.push(along / SWATCH_MM, height / SWATCH_MM);
  };
  corner(from, low[0]);
  corner(to, low[1]);
  corner(to, high[1]);
  corner(from, low[0]);
  corner(to, high[1]);
  corner(from, high[0]);
}

/** Columns of one stuff between two heights at each sample, where `holds`. */
function fillStrip(
  profile: Profile,
  place: Place,
  low: (step: number) => number,
  high: (step: number) => number,
  holds: (step: number) => boolean,
): Strip {
  const strip: Strip = { places: [], uvs: [], lines: [] };
  const half = profile.cellMm / 2;
  for (let step = 0; step < profile.placeMm.length; step++) {
    if (!holds(step)) continue;
    const at = profile.placeMm[step]!;
    addColumn(strip, place, at - half, at + half, [low(step), low(step)], [high(step), high(step)]);
    strip.lines.push(...place(at - half, high(step)), ...place(at + half, high(step)));
    if (step + 1 < profile.placeMm.length && holds(step + 1)) {
      strip.lines.push(...place(at + half, high(step)), ...place(at + half, high(step + 1)));
    }
  }
  return strip;
}

/** Adds the pieces of a region and its edges to a strip. */
function addRegion(strip: Strip, { pieces, edges }: Region, place: Place): void {
  const corner = ([along, height]: Point): void => {
    strip.places.push(...place(along, height));
    strip.uvs.push(along / SWATCH_MM, height / SWATCH_MM);
  };
  for (const piece of pieces)
    for (let n = 1; n + 1 < piece.length; n++) [piece[0]!, piece[n]!, piece[n + 1]!].forEach(corner);
  for (const [from, to] of edges) strip.lines.push(...place(...from), ...place(...to));
}

function slabStrip(through: CutThrough, place: Place): Strip {
  const { frame, cut, plan } = through;
  const strip: Strip = { places: [], uvs: [], lines: [] };
  const [driftX, driftY] = frame.driftMm ?? [0, 0];
  // The floor lies as far back as the tile has drifted over it.
  const [from, to] =
    cut.along === 'length' ? [plan.left - driftX, plan.right - driftX] : [plan.near - driftY, plan.far - driftY];
  const floor = (along: number): number =>
    cut.along === 'length'
      ? floorAt(frame, along + driftX, cut.atMm + driftY)
      : floorAt(frame, cut.atMm + driftX, along + driftY);
  const count = 96;
  for (let n = 0; n < count; n++) {
    const a = from + ((to - from) * n) / count;
    const b = from + ((to - from) * (n + 1)) / count;
    addColumn(strip, place, a, b, [-plan.deep, -plan.deep], [floor(a), floor(b)]);
    strip.lines.push(...place(a, floor(a)), ...place(b, floor(b)));
  }
  return strip;
}

const STUFFS: readonly Stuff[] = ['concrete', 'mortar', 'clay', 'air'];

/** The sawn face of a cut: slab, mortar, tile and shut-in air, filled as the two-dimensional section is. */
export function makeCutFace(first: ViewPalette): CutFace {
  const group = new Group();
  group.visible = false;
  const material = (): MeshBasicMaterial => new MeshBasicMaterial({ side: DoubleSide, toneMapped: false });
  const faces = STUFFS.map(() => new Mesh(new BufferGeometry(), material()));
  const ink = new LineBasicMaterial({});
  const lines = new LineSegments(new BufferGeometry(), ink);
  group.add(...faces, lines);
  let palette = first;
  const setPalette = (next: ViewPalette): void => {
    palette = next;
    for (const { material: own } of faces) {
      own.map?.dispose();
      own.map = null;
    }
    ink.color = new Color(palette.ink);
    if (group.visible) fill();
  };
  /** Fills the faces once they are to be seen: most benches are never cut. */
  const fill = (): void =>
    STUFFS.forEach((stuff, n) => {
      const own = faces[n]!.material;
      if (own.map) return;
      own.map = stuffTexture(stuff, palette);
      own.needsUpdate = true;
    });
  const drop = (): void => {
    for (const face of faces) face.geometry.dispose();
    lines.geometry.dispose();
  };
  setPalette(first);
  return {
    group,
    setPalette,
    planes: (cut) => [
      cut.along === 'length' ? new Plane(new Vector3(0, 0, -1), -cut.atMm) : new Plane(new Vector3(-1, 0, 0), cut.atMm),
    ],
    hide: () => {
      group.visible = false;
    },
    show: (through) => {
      const { frame, cut, tileMm, standsMm } = through;
      const profile = profileOf(frame, cut, standsMm);
      // A hair in front of the clipped surfaces.
      const clear = 0.02;
      const place: Place =
        cut.along === 'length'
          ? (along, height) => [along, height, -cut.atMm + clear]
          : (along, height) => [cut.atMm + clear, height, -along];
      const floor = (step: number): number => profile.floorMm[step]!;
      const mortar = (step: number): number => profile.mortarMm[step]!;
      const under = (step: number): number => profile.undersideMm[step]!;
      const upright = uprightIn(profile);
      const laid = (step: number): boolean => tileMm > 0 && !Number.isNaN(under(step));
      const shutIn = (step: number): boolean =>
        upright(step) && laid(step) && profile.state[step] === CELL_STATE.trapped;
      const ridges = fillStrip(
        profile,
        place,
        floor,
        mortar,
        (step) => upright(step) && mortar(step) > floor(step) + 1e-3,
      );
      const air = fillStrip(profile, place, mortar, under, shutIn);
      if (profile.leaning) {
        addRegion(ridges, profile.leaning.mortar, place);
        if (tileMm > 0) addRegion(air, profile.leaning.air, place);
      }
      const strips = [
        slabStrip(through, place),
        ridges,
        fillStrip(profile, place, under, (step) => under(step) + tileMm, laid),
        air,
      ];
      drop();
      strips.forEach((strip, n) => {
        const geometry = new BufferGeometry();
        geometry.setAttribute('position', new BufferAttribute(new Float32Array(strip.places), 3));
        geometry.setAttribute('uv', new BufferAttribute(new Float32Array(strip.uvs), 2));
        faces[n]!.geometry = geometry;
      });
      const outline = new BufferGeometry();
      const drawn = strips.slice(0, 3).flatMap((strip) => strip.lines);
      outline.setAttribute('position', new BufferAttribute(new Float32Array(drawn), 3));
      lines.geometry = outline;
      fill();
      group.visible = true;
    },
    dispose: () => {
      drop();
      for (const face of faces) {
        face.material.map?.dispose();
        face.material.dispose();
      }
      ink.dispose();
    },
  };
}
