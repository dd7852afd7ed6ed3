import {
  Color,
  DataTexture,
  FrontSide,
  Group,
  LinearFilter,
  LinearMipmapLinearFilter,
  LineBasicMaterial,
  LineSegments,
  Mesh,
  BufferGeometry,
  MeshBasicMaterial,
  MeshStandardMaterial,
  RGBAFormat,
  SRGBColorSpace,
  type Plane,
} from 'three';

import type { BedFrame, TileSetup } from '../../bed/types.ts';
import { isLaid } from '../laid.ts';
import { paintMap } from '../map/paint-map.ts';
import { tileWindow } from '../map/tile-window.ts';
import type { ViewPalette } from '../palette.ts';
import { plainBack } from '../back-of.ts';
import { moveBack } from './move-back.ts';
import { QUALITIES } from './quality.ts';
import { hollowBack, tileEdges, tileFace } from './tile-shape.ts';

/** Whether one sees the tile or through it. */
export type TileLook = 'solid' | 'clear';

export interface TileModel {
  /** Its origin is the middle of the back's mean plane. */
  group: Group;
  /** Shapes the tile to its set-up and, when laid, to the frame. */
  shape: (tile: TileSetup, frame: BedFrame) => void;
  /** Paints what the back shows: under a clear tile the contact, on a pulled one the marks. */
  paint: (frame: BedFrame, pulled: boolean) => void;
  setLook: (look: TileLook) => void;
  /** Longest side of what is painted, texels. */
  setTexels: (most: number) => void;
  setPalette: (palette: ViewPalette) => void;
  setClip: (planes: Plane[]) => void;
  dispose: () => void;
}

interface BackPaint {
  palette: ViewPalette;
  clearOpen: boolean;
  /** Longest side, texels. */
  most: number;
}

function paintTexture(frame: BedFrame, { palette, clearOpen, most }: BackPaint): DataTexture {
  const window = tileWindow(frame);
  const across = window.toColumn - window.fromColumn;
  const away = window.toRow - window.fromRow;
  const perCell = Math.max(0.25, Math.min(3, most / Math.max(across, away)));
  const width = Math.max(2, Math.round(across * perCell));
  const height = Math.max(2, Math.round(away * perCell));
  // Patterns are sized in mm here: their step of 7 covers 7 mm of tile.
  const scale = Math.max(0.6, perCell / frame.cellMm);
  const pixels = paintMap(frame, { width, height, palette, turnedOver: true, scale, clearOpen });
  const texture = new DataTexture(new Uint8Array(pixels.buffer), width, height, RGBAFormat);
  texture.colorSpace = SRGBColorSpace;
  texture.magFilter = LinearFilter;
  texture.minFilter = LinearMipmapLinearFilter;
  texture.generateMipmaps = true;
  texture.anisotropy = 8;
  texture.needsUpdate = true;
  return texture;
}

/** The tile: glazed face, clay body, a back that shows what touched it. */
export function makeTile(first: ViewPalette): TileModel {
  let palette = first;
  const group = new Group();
  const glaze = new MeshStandardMaterial({ roughness: 0.28, metalness: 0 });
  const body = new MeshStandardMaterial({ roughness: 0.85 });
  const back = new MeshStandardMaterial({ roughness: 0.9 });
  moveBack(back);
  const contact = new MeshBasicMaterial({ transparent: true, depthWrite: false, side: FrontSide, opacity: 0.94 });
  const line = new LineBasicMaterial({ transparent: true });
  const top = new Mesh(new BufferGeometry(), glaze);
  const sides = new Mesh(new BufferGeometry(), body);
  const under = new Mesh(new BufferGeometry(), back);
  const seen = new Mesh(new BufferGeometry(), contact);
  const edges = new LineSegments(new BufferGeometry(), line);
  seen.renderOrder = 2;
  edges.renderOrder = 4;
  top.renderOrder = 3;
  sides.renderOrder = 3;
  group.add(top, sides, under, seen, edges);
  const solids = [top, sides, under];
  for (const mesh of solids) {
    mesh.castShadow = true;
    mesh.receiveShadow = true;
  }
  // Nothing stands over the face: what it would receive is the grain of the shadow map.
  top.receiveShadow = false;
  const materials = [glaze, body, back, contact, line];
  let look: TileLook = 'solid';
  let most = QUALITIES[0]!.paintTexels;
  /** What the back or the contact is to show; null before a tile is laid. */
  let marks: { frame: BedFrame; pulled: boolean } | null = null;

  const colour = (): void => {
    glaze.color = new Color(palette.glaze);
    body.color = new Color(palette.clay).multiplyScalar(0.92);
    back.color = new Color(back.map ? '#ffffff' : palette.clay);
    line.color = new Color(palette.ink);
  };
  const dress = (): void => {
    const clear = look === 'clear';
    for (const material of [glaze, body]) {
      material.transparent = clear;
      material.opacity = clear ? 0.13 : 1;
      material.depthWrite = !clear;
      material.needsUpdate = true;
    }
    under.visible = !clear;
    seen.visible = clear && contact.map !== null;
    line.opacity = clear ? 0.75 : 0.28;
    for (const mesh of solids) mesh.castShadow = !clear;
  };
  const unpaint = (): void => {
    back.map?.dispose();
    contact.map?.dispose();
    back.map = null;
    contact.map = null;
  };
  /** Paints what can be seen and is not painted yet: a picture of the contact takes long, and a solid tile hides it. */
  const paintSeen = (): void => {
    if (!marks) return;
    const { frame, pulled } = marks;
    if (pulled) {
      if (back.map) return;
      back.map = paintTexture(frame, { palette, clearOpen: false, most });
      back.needsUpdate = true;
    } else if (look === 'clear' && !contact.map) {
      contact.map = paintTexture(frame, { palette, clearOpen: true, most });
      contact.needsUpdate = true;
    }
  };
  const redress = (): void => {
    paintSeen();
    colour();
    dress();
  };
  redress();
  return {
    group,
    shape: (tile, frame) => {
      const height = plainBack(tile, frame);
      for (const mesh of [top, sides, under, seen, edges]) mesh.geometry.dispose();
      top.geometry = tileFace(tile, height, 'top');
      sides.geometry = tileFace(tile, height, 'sides');
      under.geometry = tileFace(tile, hollowBack(tile, height), 'back');
      // Seen from above through the tile: the back's plane, facing up, a hair over the mortar that touches it.
      seen.geometry = tileFace({ ...tile, thicknessMm: 0.05 }, height, 'top');
      edges.geometry = tileEdges(tile, height);
    },
    paint: (frame, pulled) => {
      if (back.map) back.needsUpdate = true;
      unpaint();
      marks = isLaid(frame) ? { frame, pulled } : null;
      redress();
    },
    setLook: (next) => {
      if (next === look) return;
      look = next;
      redress();
    },
    setTexels: (next) => {
      if (next === most) return;
      most = next;
      unpaint();
      redress();
    },
    setPalette: (next) => {
      palette = next;
      unpaint();
      redress();
    },
    setClip: (planes) => {
      for (const material of materials) material.clippingPlanes = planes;
    },
    dispose: () => {
      unpaint();
      for (const mesh of [top, sides, under, seen, edges]) mesh.geometry.dispose();
      for (const material of materials) material.dispose();
    },
  };
}
