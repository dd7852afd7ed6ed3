import { Group, PerspectiveCamera, Plane, Raycaster, Scene, Vector2, Vector3, type Texture } from 'three';

import { rest } from '../rest.ts';
import type { BedModel } from './bed-model.ts';
import { watchFinish } from './finish.ts';
import { makeReflections, makeWorkshop } from './lights.ts';
import { pictureMs } from './measure-picture.ts';
import { panesOf, placeInPane, type Pane } from './panes.ts';
import { eyePlace, HALF_VIEW_DEG, heldOrbit, type Orbit } from './orbit.ts';
import { isLower, lowerQuality, nextQuality, paceWatch, pixelRatio, QUALITIES, type Quality } from './quality.ts';
import { makePrograms, makeRenderer } from './renderer.ts';

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
  counts: () => StageCounts;
  dispose: () => void;
}

export interface StageCounts {
  /** Pictures asked for so far, and how many of them the graphics have finished. */
  pictures: number;
  finished: number;
  /** What the graphics hold. */
  geometries: number;
  textures: number;
  /** What the last picture asked of them, its shadows included. */
  calls: number;
  triangles: number;
}

export interface StageHooks {
  onLost: () => void;
  onRestored: () => void;
  onQuality: (quality: Quality) => void;
}

/** Pictures quicker than this, ms, may be given to the graphics before the last is finished: they work on while the script does. */
const QUICK_MS = 40;
/** What has not changed for this long is at rest, ms. */
const AT_REST_MS = 200;

/** Device pixels to a CSS pixel beyond which a still is not sharpened: a buffer has its bounds. */
const MOST_STILL_RATIO = 4;

/**
 * Opens a stage on a canvas; throws where the browser gives no WebGL 2.
 * @param smooth whether the graphics are to smooth edges
 */
export function openStage(canvas: HTMLCanvasElement, hooks: StageHooks, smooth: boolean): Stage {
  const renderer = makeRenderer(canvas, smooth);
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
  /** Something changed that no picture shows yet, and when it last did. */
  let due = false;
  let changedAt = 0;
  /** The picture was drawn for a moving scene, and is to be drawn better once that is at rest. */
  let rough = false;
  /** The setting is still to be found. */
  let measuring = true;
  /** The next picture waits for the graphics to finish another. */
  let waited = false;
  /** How many wait that no other picture comes between: one that is timed, one whose means of drawing are being made. */
  let holds = 0;
  const pace = paceWatch();
  const finish = watchFinish(renderer.getContext() as WebGL2RenderingContext);
  const steps = new Set<(now: number) => boolean>();
  const size = new Vector2();
  const ray = new Raycaster();

  const panes = (): Pane[] => panesOf(Math.max(1, canvas.clientWidth), Math.max(1, canvas.clientHeight), models.length);
  const aspect = (): number => panes()[0]!.wide / panes()[0]!.high;

  /** Takes so many pixels as suit a scene that moves or rests. */
  const takePixels = (moving: boolean): void => {
    const screen = globalThis.devicePixelRatio || 1;
    const ratio = pixelRatio(quality, { screen, smooth, moving });
    rough = ratio < pixelRatio(quality, { screen, smooth, moving: false });
    if (renderer.getPixelRatio() !== ratio) renderer.setPixelRatio(ratio);
  };

  const applyQuality = (): void => {
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
    const boxes = panes();
    // One shadow map serves all: with several beds it is drawn anew for each.
    const shadows = renderer.shadowMap.needsUpdate || models.length > 1;
    renderer.setScissorTest(models.length > 1);
    models.forEach((model, n) => {
      models.forEach((other) => (other.group.visible = other === model));
      const { x, y, wide, high } = boxes[n]!;
      renderer.setViewport(x, y, wide, high);
      renderer.setScissor(x, y, wide, high);
      renderer.shadowMap.needsUpdate = shadows;
      renderer.render(scene, camera);
    });
    finish.mark(performance.now());
    pictures += 1;
  };

  /** Does something that no other picture may come between. */
  const undisturbed = async <T>(work: () => Promise<T>): Promise<T> => {
    holds += 1;
    try {
      return await work();
    } finally {
      holds -= 1;
      request();
    }
  };

  /** The time of a picture, found while the page goes on; null where it is not wanted any more. */
  const timePicture = (): Promise<number | null> =>
    undisturbed(() =>
      pictureMs({
        draw: () => {
          takePixels(true);
          renderer.shadowMap.needsUpdate = true;
          draw();
        },
        finish,
        slowMs: QUICK_MS,
        now: () => performance.now(),
        rest,
        goesOn: () => !lost && measuring,
      }),
    );

  /** Times a picture, and takes the next setting up where it was quick, or the one below where it was too slow. */
  const measure = async (): Promise<void> => {
    let took = await timePicture();
    // A hitch of the page may have been timed with it: what would be left is timed twice.
    if (took !== null && isLower(nextQuality(quality, took), quality))
      took = Math.min(took, (await timePicture()) ?? took);
    if (took === null || !measuring) return;
    const next = nextQuality(quality, took);
    // A setting that was left again as too slow is not tried once more.
    measuring = isLower(quality, next);
    if (next === quality) return;
    quality = next;
    applyQuality();
    await makeReady();
  };

  /** Lets the graphics make what draws the scene before it is drawn. */
  const makeReady = async (): Promise<void> => {
    changed();
    await undisturbed(async () => {
      // What is to be shown first comes into the scene meanwhile, and the page has its turn.
      await rest();
      await makePrograms(renderer, scene, camera, () => !lost);
    });
  };

  const tick = (now: number): void => {
    asked = 0;
    if (lost) return;
    const pending = finish.pending(performance.now());
    const busy = pending >= (finish.tookMs() < QUICK_MS ? 2 : 1);
    const moving = due || steps.size > 0;
    const settled = rough && pending === 0 && performance.now() - changedAt > AT_REST_MS;
    if (busy && moving) waited = true;
    // Given more than they can draw, the graphics fall behind, and the whole page waits for them.
    if (holds > 0 || busy || !(moving || settled)) {
      if (pending > 0 || moving || rough) request();
      return;
    }
    const isSlow = pace(steps.size > 0 ? now : null, waited);
    waited = false;
    if (isSlow && quality !== lowerQuality(quality)) {
      // What was quick when measured is slow now (a larger bed, a warm machine): one setting down, and no more up.
      quality = lowerQuality(quality);
      measuring = false;
      applyQuality();
    }
    for (const step of steps) if (!step(now)) steps.delete(step);
    due = false;
    if (measuring && models.length > 0 && steps.size === 0) void measure();
    else {
      takePixels(moving);
      draw();
    }
    request();
  };
  const request = (): void => {
    if (asked === 0) asked = requestAnimationFrame(tick);
  };
  /** Asks for a picture: something is seen from elsewhere. */
  const moved = (): void => {
    due = true;
    changedAt = performance.now();
    request();
  };
  const changed = (): void => {
    renderer.shadowMap.needsUpdate = true;
    moved();
  };

  const onLost = (event: Event): void => {
    event.preventDefault();
    lost = true;
    finish.forget();
    hooks.onLost();
  };
  const onRestored = (): void => {
    lost = false;
    reflections = null;
    applyQuality();
    void makeReady();
    hooks.onRestored();
  };
  canvas.addEventListener('webglcontextlost', onLost);
  canvas.addEventListener('webglcontextrestored', onRestored);
  const watch = new ResizeObserver(changed);
  watch.observe(canvas);
  // While the graphics have nothing else to do: a new size has to wait for what they are at.
  fitCanvas();
  applyQuality();

  return {
    setModels: (next) => {
      models = next;
      beds.clear();
      for (const model of models) {
        beds.add(model.group);
        model.setQuality(quality);
      }
      void makeReady();
    },
    orbit: () => orbit,
    setOrbit: (next) => {
      orbit = heldOrbit(next);
      moved();
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
      const [across, down] = placeInPane(clientX - box.left, clientY - box.top, panes()[0]!);
      ray.setFromCamera(new Vector2(across * 2 - 1, 1 - down * 2), camera);
      const level = new Plane(new Vector3(0, 1, 0), -heightMm);
      const hit = ray.ray.intersectPlane(level, new Vector3());
      return hit ? [hit.x, -hit.z] : null;
    },
    snapshot: () => {
      if (lost || canvas.width === 0) return Promise.resolve(null);
      takePixels(false);
      renderer.shadowMap.needsUpdate = true;
      draw();
      return createImageBitmap(canvas);
    },
    still: (wide, take) => {
      if (lost || canvas.clientWidth === 0) return false;
      const wanted = Math.min(MOST_STILL_RATIO, wide / canvas.clientWidth);
      renderer.setPixelRatio(Math.max(renderer.getPixelRatio(), wanted));
      renderer.shadowMap.needsUpdate = true;
      draw();
      take(canvas);
      // A canvas that changes its size is empty until it is drawn: it gets its own back with its next picture.
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
      const finished = pictures - finish.pending(performance.now());
      return { pictures, finished, geometries, textures, calls, triangles };
    },
    dispose: () => {
      lost = true;
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
