import {
  Group,
  NeutralToneMapping,
  PCFShadowMap,
  PerspectiveCamera,
  Plane,
  Raycaster,
  Scene,
  Vector2,
  Vector3,
  WebGLRenderer,
  type Texture,
} from 'three';

import type { BedModel } from './bed-model.ts';
import { makeReflections, makeWorkshop } from './lights.ts';
import { eyePlace, HALF_VIEW_DEG, heldOrbit, type Orbit } from './orbit.ts';
import { lowerQuality, nextQuality, paceWatch, QUALITIES, type Quality } from './quality.ts';

/** A picture drawn only when something changed. */
export interface Stage {
  /** The beds shown, one pane each, from left to right (or top to bottom in a tall picture). */
  setModels: (models: BedModel[]) => void;
  orbit: () => Orbit;
  setOrbit: (orbit: Orbit) => void;
  /** Width over height of one pane. */
  aspect: () => number;
  /** Something in the scene changed, shadows too. */
  changed: () => void;
  /** Calls back before each picture with the time, ms, until it returns false. */
  animate: (step: (now: number) => boolean) => void;
  fit: (centre: [number, number], radius: number) => void;
  setDark: (dark: boolean) => void;
  /** The place on a level plane under a point of the page, mm from the tile's centre; null where there is none. */
  pick: (clientX: number, clientY: number, heightMm: number) => [number, number] | null;
  /** The picture as it stands, drawn anew; null while the graphics are lost. */
  snapshot: () => Promise<ImageBitmap | null>;
  /**
   * Draws the picture at least so many pixels wide and hands the canvas over before it returns: for paper, which asks
   * at once and keeps nothing that is drawn later. False while the graphics are lost.
   */
  still: (wide: number, take: (picture: HTMLCanvasElement) => void) => boolean;
  quality: () => Quality;
  /** Holds one setting instead of the measured one. */
  holdQuality: (quality: Quality) => void;
  /** Pictures drawn so far, what the graphics hold, and what the last picture asked of them, its shadows included. */
  counts: () => { pictures: number; geometries: number; textures: number; calls: number; triangles: number };
  dispose: () => void;
}

export interface StageHooks {
  onLost: () => void;
  onRestored: () => void;
  onQuality: (quality: Quality) => void;
}

/** Device pixels to a CSS pixel beyond which a still is not sharpened: a buffer has its bounds. */
const MOST_STILL_RATIO = 4;

/** Opens a stage on a canvas; throws where the browser gives no WebGL 2. */
export function openStage(canvas: HTMLCanvasElement, hooks: StageHooks): Stage {
  const renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true, powerPreference: 'high-performance' });
  renderer.setClearAlpha(0);
  // Counted over all the panes of a picture.
  renderer.info.autoReset = false;
  renderer.localClippingEnabled = true;
  renderer.shadowMap.enabled = true;
  renderer.shadowMap.type = PCFShadowMap;
  renderer.shadowMap.autoUpdate = false;
  renderer.toneMapping = NeutralToneMapping;
  const scene = new Scene();
  const camera = new PerspectiveCamera(2 * HALF_VIEW_DEG, 1, 5, 12_000);
  const workshop = makeWorkshop();
  scene.add(workshop.sun, workshop.sun.target, workshop.sky);
  const beds = new Group();
  scene.add(beds);

  let models: BedModel[] = [];
  let orbit: Orbit = { azimuthDeg: -24, elevationDeg: 34, distanceMm: 1200, target: [0, 0, 0] };
  let quality: Quality = QUALITIES[0]!;
  let reflections: Texture | null = null;
  let asked = 0;
  let pictures = 0;
  let lost = false;
  let measuring = true;
  const pace = paceWatch();
  const steps = new Set<(now: number) => boolean>();
  const size = new Vector2();
  const ray = new Raycaster();

  const tall = (): boolean => canvas.clientHeight > canvas.clientWidth;
  const panes = (): number => Math.max(1, models.length);
  const aspect = (): number => {
    const wide = Math.max(1, canvas.clientWidth) / (tall() ? 1 : panes());
    return wide / (Math.max(1, canvas.clientHeight) / (tall() ? panes() : 1));
  };

  const applyQuality = (): void => {
    renderer.setPixelRatio(Math.min(globalThis.devicePixelRatio || 1, quality.pixelRatio));
    workshop.setShadow(quality.shadowTexels, quality.shadowBlur);
    if (quality.reflections && !reflections) reflections = makeReflections(renderer);
    scene.environment = quality.reflections ? reflections : null;
    scene.environmentIntensity = 0.5;
    for (const model of models) model.setQuality(quality);
    renderer.shadowMap.needsUpdate = true;
    hooks.onQuality(quality);
  };

  const fitCanvas = (): void => {
    const wide = Math.max(1, canvas.clientWidth);
    const high = Math.max(1, canvas.clientHeight);
    renderer.getSize(size);
    if (size.x !== wide || size.y !== high) renderer.setSize(wide, high, false);
  };

  const draw = (): void => {
    fitCanvas();
    renderer.info.reset();
    camera.aspect = aspect();
    camera.near = Math.max(2, orbit.distanceMm * 0.05);
    camera.updateProjectionMatrix();
    camera.position.set(...eyePlace(orbit));
    camera.lookAt(orbit.target[0], orbit.target[2], -orbit.target[1]);
    const wide = canvas.clientWidth;
    const high = canvas.clientHeight;
    const shared = renderer.shadowMap.needsUpdate;
    renderer.setScissorTest(models.length > 1);
    models.forEach((model, pane) => {
      models.forEach((other) => (other.group.visible = other === model));
      if (models.length > 1) {
        const paneWide = tall() ? wide : wide / models.length;
        const paneHigh = tall() ? high / models.length : high;
        const x = tall() ? 0 : pane * paneWide;
        const y = tall() ? (models.length - 1 - pane) * paneHigh : 0;
        renderer.setViewport(x, y, paneWide, paneHigh);
        renderer.setScissor(x, y, paneWide, paneHigh);
        renderer.shadowMap.needsUpdate = true;
      } else {
        renderer.setViewport(0, 0, wide, high);
        renderer.shadowMap.needsUpdate = shared;
      }
      renderer.render(scene, camera);
    });
    pictures += 1;
  };

  /** Draws to the end of the graphics' work, and times it. */
  const timed = (): number => {
    const gl = renderer.getContext();
    const from = performance.now();
    draw();
    gl.readPixels(0, 0, 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, new Uint8Array(4));
    return performance.now() - from;
  };

  const measure = (): void => {
    timed();
    const took = timed();
    const next = nextQuality(quality, took);
    measuring = next !== quality;
    if (!measuring) return;
    quality = next;
    applyQuality();
    request();
  };

  const tick = (now: number): void => {
    asked = 0;
    if (lost) return;
    if (pace(steps.size > 0 ? now : null) && quality !== lowerQuality(quality)) {
      // What was quick when measured is slow now (a larger bed, a warm machine): one setting down, and no more up.
      quality = lowerQuality(quality);
      measuring = false;
      applyQuality();
    }
    for (const step of steps) if (!step(now)) steps.delete(step);
    if (measuring && models.length > 0 && steps.size === 0) measure();
    else draw();
    if (steps.size > 0) request();
  };
  const request = (): void => {
    if (asked === 0) asked = requestAnimationFrame(tick);
  };
  const changed = (): void => {
    renderer.shadowMap.needsUpdate = true;
    request();
  };

  const onLost = (event: Event): void => {
    event.preventDefault();
    lost = true;
    hooks.onLost();
  };
  const onRestored = (): void => {
    lost = false;
    reflections = null;
    applyQuality();
    changed();
    hooks.onRestored();
  };
  canvas.addEventListener('webglcontextlost', onLost);
  canvas.addEventListener('webglcontextrestored', onRestored);
  const watch = new ResizeObserver(changed);
  watch.observe(canvas);
  applyQuality();

  return {
    setModels: (next) => {
      models = next;
      beds.clear();
      for (const model of models) {
        beds.add(model.group);
        model.setQuality(quality);
      }
      changed();
    },
    orbit: () => orbit,
    setOrbit: (next) => {
      orbit = heldOrbit(next);
      request();
    },
    aspect,
    changed,
    animate: (step) => {
      steps.add(step);
      changed();
    },
    fit: workshop.fit,
    setDark: (dark) => {
      workshop.setDark(dark);
      changed();
    },
    pick: (clientX, clientY, heightMm) => {
      const box = canvas.getBoundingClientRect();
      const share = tall()
        ? [(clientX - box.left) / box.width, (((clientY - box.top) / box.height) * panes()) % 1]
        : [(((clientX - box.left) / box.width) * panes()) % 1, (clientY - box.top) / box.height];
      ray.setFromCamera(new Vector2(share[0]! * 2 - 1, 1 - share[1]! * 2), camera);
      const level = new Plane(new Vector3(0, 1, 0), -heightMm);
      const hit = ray.ray.intersectPlane(level, new Vector3());
      return hit ? [hit.x, -hit.z] : null;
    },
    snapshot: () => {
      if (lost || canvas.width === 0) return Promise.resolve(null);
      renderer.shadowMap.needsUpdate = true;
      draw();
      return createImageBitmap(canvas);
    },
    still: (wide, take) => {
      if (lost || canvas.clientWidth === 0) return false;
      const ratio = renderer.getPixelRatio();
      renderer.setPixelRatio(Math.max(ratio, Math.min(MOST_STILL_RATIO, wide / canvas.clientWidth)));
      renderer.shadowMap.needsUpdate = true;
      draw();
      take(canvas);
      renderer.setPixelRatio(ratio);
      changed();
      return true;
    },
    quality: () => quality,
    holdQuality: (held) => {
      measuring = false;
      quality = held;
      applyQuality();
      changed();
    },
    counts: () => {
      const { geometries, textures } = renderer.info.memory;
      const { calls, triangles } = renderer.info.render;
      return { pictures, geometries, textures, calls, triangles };
    },
    dispose: () => {
      cancelAnimationFrame(asked);
      watch.disconnect();
      canvas.removeEventListener('webglcontextlost', onLost);
      canvas.removeEventListener('webglcontextrestored', onRestored);
      for (const model of models) model.dispose();
      reflections?.dispose();
      workshop.sun.shadow.map?.dispose();
      renderer.dispose();
    },
  };
}
