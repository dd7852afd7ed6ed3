import { Color, MeshDepthMaterial, MeshStandardMaterial, type DataTexture, type IUniform } from 'three';
import { moveBack } from './move-back.ts';

/** Uniforms that a field's picture shares with its material. */
export interface MortarUniforms {
  bedShade: IUniform<DataTexture | null>;
  bedSizeMm: IUniform<[number, number]>;
  /** 0: no grain drawn (slow machines); 1: sand in the surface. */
  bedGrain: IUniform<number>;
  /** Fresh cut by the comb 0, torn by a pull 1: torn mortar is duller. */
  bedTorn: IUniform<number>;
  /** How ridges lean along the field's two axes, run over rise. */
  bedLean: IUniform<[number, number]>;
  /** The height at which what leans is at its place, mm. */
  bedLeanAt: IUniform<number>;
  /** Which cells lean: full or nothing. Null where no ridge leans. */
  bedLeaning: IUniform<DataTexture | null>;
}

/**
 * Wet mortar: a standard surface whose normal, shade in the valleys and presence come from a texel a cell, so that the
 * ridges stay crisp on a coarse mesh; sand is noise fixed to the floor, faded where it would shimmer.
 */
export function mortarMaterial(colour: string): { material: MeshStandardMaterial; uniforms: MortarUniforms } {
  const uniforms: MortarUniforms = {
    bedShade: { value: null },
    bedSizeMm: { value: [1, 1] },
    bedGrain: { value: 1 },
    bedTorn: { value: 0 },
    bedLean: { value: [0, 0] },
    bedLeanAt: { value: 0 },
    bedLeaning: { value: null },
  };
  const material = new MeshStandardMaterial({ color: new Color(colour), roughness: 0.48, metalness: 0 });
  moveBack(material);
  material.customProgramCacheKey = () => 'wet mortar';
  material.onBeforeCompile = (shader) => {
    Object.assign(shader.uniforms, uniforms);
    shader.vertexShader = withPlaceOnBed(shader.vertexShader);
    shader.fragmentShader = shader.fragmentShader
      .replace('#include <common>', `#include <common>\n${FRAGMENT_HEAD}`)
      .replace('#include <normal_fragment_maps>', FRAGMENT_NORMAL)
      .replace('#include <color_fragment>', FRAGMENT_COLOUR)
      .replace('#include <roughnessmap_fragment>', FRAGMENT_ROUGHNESS)
      .replace('#include <aomap_fragment>', FRAGMENT_OPENNESS);
  };
  return { material, uniforms };
}

/** The place on the bed goes to the fragments, and what leans is sheared aside by its height. */
const withPlaceOnBed = (vertexShader: string): string =>
  vertexShader
    .replace('#include <common>', `#include <common>\n${VERTEX_HEAD}`)
    .replace('#include <uv_vertex>', '#include <uv_vertex>\nvBedUv = uv;')
    .replace('#include <displacementmap_vertex>', VERTEX_PLACE);

/** What throws the shadow of wet mortar: where the picture leaves a cell out, its shadow is left out too. */
export function mortarShadow(uniforms: MortarUniforms): MeshDepthMaterial {
  const material = new MeshDepthMaterial();
  material.customProgramCacheKey = () => 'shadow of wet mortar';
  material.onBeforeCompile = (shader) => {
    const { bedShade, bedLean, bedLeanAt, bedLeaning } = uniforms;
    Object.assign(shader.uniforms, { bedShade, bedLean, bedLeanAt, bedLeaning });
    shader.vertexShader = withPlaceOnBed(shader.vertexShader);
    shader.fragmentShader = shader.fragmentShader
      .replace('#include <common>', '#include <common>\nuniform sampler2D bedShade;\nvarying vec2 vBedUv;')
      .replace(
        '#include <alphatest_fragment>',
        '#include <alphatest_fragment>\nif (texture2D(bedShade, vBedUv).a < 0.5) discard;',
      );
  };
  return material;
}

const VERTEX_HEAD = /* glsl */ `
uniform vec2 bedLean;
uniform float bedLeanAt;
uniform sampler2D bedLeaning;
varying vec2 vBedUv;
varying vec2 vBedLean;
`;

const VERTEX_PLACE = /* glsl */ `
#include <displacementmap_vertex>
vBedLean = bedLean != vec2(0.0) && texture2D(bedLeaning, uv).x > 0.5 ? bedLean : vec2(0.0);
transformed.xz += (transformed.y - bedLeanAt) * vec2(vBedLean.x, -vBedLean.y);
`;

const FRAGMENT_HEAD = /* glsl */ `
uniform mat3 normalMatrix;
uniform sampler2D bedShade;
uniform vec2 bedSizeMm;
uniform float bedGrain;
uniform float bedTorn;
varying vec2 vBedUv;
varying vec2 vBedLean;
float bedHash(vec2 p) {
  vec3 q = fract(vec3(p.xyx) * 0.1031);
  q += dot(q, q.yzx + 33.33);
  return fract((q.x + q.y) * q.z);
}
float bedNoise(vec2 p) {
  vec2 i = floor(p), f = fract(p);
  f = f * f * (3.0 - 2.0 * f);
  return mix(mix(bedHash(i), bedHash(i + vec2(1, 0)), f.x), mix(bedHash(i + vec2(0, 1)), bedHash(i + vec2(1, 1)), f.x), f.y);
}
`;

const FRAGMENT_COLOUR = /* glsl */ `
#include <color_fragment>
// A bias towards the averaged texels: far ridges blur before they shimmer.
vec4 bedTexel = texture2D(bedShade, vBedUv, 0.45);
if (bedTexel.a < 0.5) discard;
vec2 bedMm = vBedUv * bedSizeMm;
float bedPixel = max(length(dFdx(bedMm)), length(dFdy(bedMm)));
float bedNear = bedGrain * clamp(1.5 - bedPixel * 1.6, 0.0, 1.0);
float bedSand = 0.0;
float bedBlotch = 0.0;
if (bedGrain > 0.0) {
  bedSand = bedNoise(bedMm * 2.1) - 0.5;
  bedBlotch = bedNoise(bedMm * 0.05) + 0.5 * bedNoise(bedMm * 0.21) - 0.75;
}
diffuseColor.rgb *= 1.0 + 0.16 * bedBlotch + 0.34 * bedNear * bedSand;
diffuseColor.rgb = mix(diffuseColor.rgb, diffuseColor.rgb * 1.16, bedTorn);
// The paste that settles in a valley is darker and wetter than a crest.
diffuseColor.rgb *= 0.72 + 0.28 * bedTexel.b;
`;

const FRAGMENT_NORMAL = /* glsl */ `
vec2 bedTilt = bedTexel.rg * 2.0 - 1.0;
if (bedGrain > 0.0) {
  vec2 sandStep = vec2(bedNoise(bedMm * 2.1 + vec2(0.6, 0.0)) - bedNoise(bedMm * 2.1 - vec2(0.6, 0.0)),
    bedNoise(bedMm * 2.1 + vec2(0.0, 0.6)) - bedNoise(bedMm * 2.1 - vec2(0.0, 0.6)));
  bedTilt -= sandStep * bedNear * (0.22 + 0.12 * bedTorn);
}
// A shear leaves a normal's level parts as they are and tips it by what they have in common with the lean.
float bedUp = sqrt(max(0.02, 1.0 - dot(bedTilt, bedTilt))) - dot(vBedLean, bedTilt);
// Away from the viewer is the field's second axis and the scene's negative third.
normal = normalize(normalMatrix * vec3(bedTilt.x, bedUp, -bedTilt.y));
`;

const FRAGMENT_ROUGHNESS = /* glsl */ `
float roughnessFactor = clamp(roughness + 0.22 * bedTorn - 0.18 * (1.0 - bedTexel.b) + 0.25 * bedNear * bedSand, 0.25, 1.0);
`;

const FRAGMENT_OPENNESS = /* glsl */ `
reflectedLight.indirectDiffuse *= bedTexel.b;
reflectedLight.indirectSpecular *= bedTexel.b * bedTexel.b;
reflectedLight.directDiffuse *= 0.45 + 0.55 * bedTexel.b;
`;
