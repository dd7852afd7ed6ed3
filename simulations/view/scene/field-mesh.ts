import {
  BufferAttribute,
  BufferGeometry,
  DataTexture,
  FloatType,
  LinearFilter,
  LinearMipmapLinearFilter,
  Mesh,
  NearestFilter,
  RedFormat,
  RGBAFormat,
  UnsignedByteType,
  type MeshStandardMaterial,
} from 'three';

import type { FieldLeaning } from './leaning.ts';
import { mortarShadow, type MortarUniforms } from './mortar-material.ts';
import type { ShadedField } from './shade-heights.ts';
import { spreadHeights } from './spread-heights.ts';

/** A mesh that a height field displaces: built once for a grid, then only its two textures change. */
export interface FieldMesh {
  mesh: Mesh<BufferGeometry, MeshStandardMaterial>;
  /** Puts new heights and shading on the machine's graphics. */
  show: (field: ShadedField, at: FieldPlace) => void;
  dispose: () => void;
}

/** Where a field lies and how finely it is drawn. */
export interface FieldPlace {
  /** The centre of cell (0,0), mm. */
  origin: [number, number];
  /** Cells between two vertices: 1 draws every cell. */
  stride: number;
  leaning?: FieldLeaning | null;
}

/** Grids kept of those drawn last: a bed at a glance and the full one follow on each other while a slider moves. */
const GRIDS_KEPT = 3;

/** Grids that are made once for each size, counted from the centre of cell (0,0). */
function gridStore(): { gridOf: (field: ShadedField, stride: number) => BufferGeometry; dispose: () => void } {
  const kept = new Map<string, BufferGeometry>();
  const drop = (key: string): void => {
    kept.get(key)?.dispose();
    kept.delete(key);
  };
  return {
    gridOf: (field, stride) => {
      const key = `${field.columns} ${field.rows} ${field.cellMm} ${stride}`;
      const grid = kept.get(key) ?? gridGeometry(field, stride);
      // Last asked for, last to go.
      kept.delete(key);
      kept.set(key, grid);
      const oldest = kept.keys().next().value;
      if (kept.size > GRIDS_KEPT && oldest !== undefined) drop(oldest);
      return grid;
    },
    dispose: () => [...kept.keys()].forEach(drop),
  };
}

/** Vertices stand on cell centres; with one to a cell an unfiltered texture gives exact heights. */
function gridGeometry(field: ShadedField, stride: number): BufferGeometry {
  const { columns, rows, cellMm } = field;
  const across = Math.max(2, Math.ceil((columns - 1) / stride) + 1);
  const away = Math.max(2, Math.ceil((rows - 1) / stride) + 1);
  const places = new Float32Array(across * away * 3);
  const normals = new Float32Array(across * away * 3);
  const uvs = new Float32Array(across * away * 2);
  for (let row = 0; row < away; row++) {
    const cellRow = Math.min(rows - 1, row * stride);
    for (let column = 0; column < across; column++) {
      const cellColumn = Math.min(columns - 1, column * stride);
      const at = row * across + column;
      places[at * 3] = cellColumn * cellMm;
      places[at * 3 + 2] = -cellRow * cellMm;
      normals[at * 3 + 1] = 1;
      uvs[at * 2] = (cellColumn + 0.5) / columns;
      uvs[at * 2 + 1] = (cellRow + 0.5) / rows;
    }
  }
  const corners = new Uint32Array((across - 1) * (away - 1) * 6);
  let next = 0;
  for (let row = 0; row + 1 < away; row++) {
    for (let column = 0; column + 1 < across; column++) {
      const near = row * across + column;
      const far = near + across;
      corners.set([near, near + 1, far + 1, near, far + 1, far], next);
      next += 6;
    }
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(places, 3));
  geometry.setAttribute('normal', new BufferAttribute(normals, 3));
  geometry.setAttribute('uv', new BufferAttribute(uvs, 2));
  geometry.setIndex(new BufferAttribute(corners, 1));
  return geometry;
}

/** Heights for the vertices, a texel a cell. */
function heightTexture(heights: Float32Array, columns: number, rows: number): DataTexture {
  const texture = new DataTexture(heights, columns, rows, RedFormat, FloatType);
  texture.minFilter = NearestFilter;
  texture.magFilter = NearestFilter;
  texture.needsUpdate = true;
  return texture;
}

/** A yes or a no for the vertices, a texel a cell. */
function flagTexture(flags: Uint8Array, columns: number, rows: number): DataTexture {
  const full = flags.map((flag) => flag * 255);
  const texture = new DataTexture(full, columns, rows, RedFormat, UnsignedByteType);
  texture.minFilter = NearestFilter;
  texture.magFilter = NearestFilter;
  texture.needsUpdate = true;
  return texture;
}

/** Makes the mesh; nothing is drawn until the first `show`. */
export function fieldMesh(material: MeshStandardMaterial, uniforms: MortarUniforms): FieldMesh {
  const mesh = new Mesh(new BufferGeometry(), material);
  mesh.castShadow = true;
  mesh.receiveShadow = true;
  const shadow = mortarShadow(uniforms);
  mesh.customDepthMaterial = shadow;
  mesh.frustumCulled = false;
  mesh.visible = false;
  let heights: DataTexture | null = null;
  /** What the vertices read: the field's own heights where there is one to a cell. */
  let drawn: Float32Array = new Float32Array(0);
  let shade: DataTexture | null = null;
  let leans: DataTexture | null = null;
  let last: { field: ShadedField; stride: number; leaning: FieldLeaning | null } | null = null;
  const grids = gridStore();

  const drop = (): void => {
    heights?.dispose();
    shade?.dispose();
  };
  const build = (field: ShadedField, stride: number): void => {
    drop();
    mesh.geometry = grids.gridOf(field, stride);
    drawn = stride > 1 ? new Float32Array(field.heights.length) : field.heights;
    heights = heightTexture(drawn, field.columns, field.rows);
    shade = new DataTexture(field.shade, field.columns, field.rows, RGBAFormat, UnsignedByteType);
    shade.minFilter = LinearMipmapLinearFilter;
    shade.magFilter = LinearFilter;
    shade.generateMipmaps = true;
    shade.anisotropy = 4;
    material.displacementMap = heights;
    material.displacementScale = 1;
    material.needsUpdate = true;
    uniforms.bedShade.value = shade;
    uniforms.bedSizeMm.value = [field.columns * field.cellMm, field.rows * field.cellMm];
  };

  const lean = ({ columns, rows }: ShadedField, leaning: FieldLeaning | null): void => {
    uniforms.bedLean.value = leaning ? leaning.slope : [0, 0];
    uniforms.bedLeanAt.value = leaning ? leaning.atMm : 0;
    leans?.dispose();
    leans = leaning && flagTexture(leaning.leans, columns, rows);
    uniforms.bedLeaning.value = leans;
  };
  const show = (field: ShadedField, { origin, stride, leaning = null }: FieldPlace): void => {
    if (last?.field !== field || last.stride !== stride) build(field, stride);
    mesh.position.set(origin[0], 0, -origin[1]);
    if (leaning !== last?.leaning) lean(field, leaning);
    if (drawn !== field.heights) spreadHeights(field.heights, field.columns, field.rows, drawn);
    last = { field, stride, leaning };
    mesh.visible = true;
    if (heights) heights.needsUpdate = true;
    if (shade) shade.needsUpdate = true;
  };

  return {
    mesh,
    show,
    dispose: () => {
      drop();
      grids.dispose();
      leans?.dispose();
      material.dispose();
      shadow.dispose();
    },
  };
}
