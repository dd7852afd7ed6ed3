import type { AirPocket, BedFrame, BedSetup } from '../../bed/types.ts';
import type { ViewPalette } from '../palette.ts';
import type { Cut } from '../section/profile.ts';
import { makeBedModel, type BedModel, type TilePose, type TrowelPlace } from './bed-model.ts';
import { keyedOrbit, listenForOrbit, type ToolHand } from './orbit-input.ts';
import { betweenOrbits, namedView, type Orbit, type Subject, type ViewName } from './orbit.ts';
import { SMOOTH_UNDER_MS, type Quality } from './quality.ts';
import { slabPlan } from './slab-plan.ts';
import { openStage, type Stage, type StageCounts } from './stage.ts';
import { paintAhead } from './swatches.ts';
import type { TileLook } from './tile-model.ts';
import { tween } from './tween.ts';

/** One bed as it is to be shown. */
export interface BedShown {
  setup: BedSetup;
  frame: BedFrame;
  /** Away: not there yet. Down: on the bed. Lifted: held over it. Turned: over its far edge, with what stuck to it. */
  tile: 'away' | 'down' | 'lifted' | 'turned';
  look: TileLook;
  /** The mortar has parted. */
  pulled: boolean;
  trowel: TrowelPlace;
  cut: Cut | null;
  /** The tiles next door, while the tile lies on its bed. */
  neighbours: boolean;
  /** Pockets of shut-in air to stand columns over; empty shows none. */
  air: readonly AirPocket[];
  /** Turn about the tile's middle, degrees, and shift along its length, mm, while it is worked. */
  sway: { turnDeg: number; shiftMm: number };
}

export interface BenchViewHooks {
  onLost: () => void;
  onRestored: () => void;
  onQuality: (quality: Quality) => void;
  onHold: (held: boolean) => void;
  tool: () => ToolHand | null;
  /** Views frame the tile and not the whole slab: for a wall, where what is on the bench must be large. */
  close?: boolean;
}

export interface BenchView {
  show: (beds: BedShown[]) => void;
  /** Goes to a named view; `still` without the motion between. */
  goTo: (name: ViewName, still: boolean) => void;
  /** Moves the eye for a key; false for a key that is not the eye's. */
  key: (key: string, shift: boolean) => boolean;
  /** The place on a level plane under a point of the page, mm from the tile's centre; null beside it. */
  pick: (clientX: number, clientY: number, heightMm: number) => [number, number] | null;
  /** The hooks' `tool` gives another tool from now on. */
  toolChanged: () => void;
  setPalette: (palette: ViewPalette, dark: boolean) => void;
  setStill: (still: boolean) => void;
  snapshot: Stage['snapshot'];
  still: Stage['still'];
  /**
   * What was drawn so far and what it asked of the graphics; `frames`: how many frames of beds were put before the eye,
   * `without`: how many pictures had been asked for when the newest was.
   */
  counts: () => StageCounts & { frames: number; without: number };
  /** Where the eye stands now. */
  eye: () => Orbit;
  quality: Stage['quality'];
  holdQuality: Stage['holdQuality'];
  dispose: () => void;
}

/** Whether two beds would give the same picture. */
function looksAs(bed: BedShown, other: BedShown): boolean {
  const placed = ({ trowel, cut, sway }: BedShown): string => JSON.stringify([trowel, cut, sway]);
  const { setup, frame, tile, look, pulled, neighbours, air } = bed;
  return (
    setup === other.setup &&
    frame === other.frame &&
    tile === other.tile &&
    look === other.look &&
    pulled === other.pulled &&
    neighbours === other.neighbours &&
    air === other.air &&
    placed(bed) === placed(other)
  );
}

const POSES: Record<BedShown['tile'], TilePose> = {
  away: { lift: 1, turn: 0 },
  down: { lift: 0, turn: 0 },
  lifted: { lift: 1, turn: 0 },
  turned: { lift: 0, turn: 1 },
};
const MOVE_MS = 700;
const EYE_MS = 520;

interface Pane {
  model: BedModel;
  pose: TilePose;
  aim: TilePose;
  was: BedShown['tile'];
}

/**
 * Opens the three-dimensional bench on a canvas; fails where there is no WebGL 2.
 * @param fillMs how long the graphics took to fill their test squares, ms
 */
export async function openBenchView(
  canvas: HTMLCanvasElement,
  first: ViewPalette,
  hooks: BenchViewHooks,
  fillMs: number,
): Promise<BenchView> {
  const stage = openStage(canvas, hooks, fillMs < SMOOTH_UNDER_MS);
  await paintAhead(first);
  let palette = first;
  const panes: Pane[] = [];
  let shown: BedShown[] = [];
  let frames = 0;
  let without = 0;
  let still = false;
  let fitted = '';
  let eye: ViewName | null = null;
  let poseRun = 0;

  const subject = (): Subject => {
    const bed = shown[0];
    return {
      lengthMm: bed?.setup.tile.lengthMm ?? 600,
      widthMm: bed?.setup.tile.widthMm ?? 300,
      cut: bed?.cut ?? null,
      turned: bed?.tile === 'turned',
      close: hooks.close ?? false,
    };
  };
  const goTo = (name: ViewName, withoutMotion: boolean): void => {
    eye = name;
    const from = stage.orbit();
    const to = namedView(name, subject(), stage.aspect());
    stage.animate(
      tween(withoutMotion ? 0 : EYE_MS, (share) => {
        if (eye === name) stage.setOrbit(betweenOrbits(from, to, share));
      }),
    );
  };
  const setOrbit = (orbit: Orbit): void => {
    eye = null;
    stage.setOrbit(orbit);
  };
  const listener = listenForOrbit(canvas, { orbit: stage.orbit, setOrbit, tool: hooks.tool, onHold: hooks.onHold });

  const movePoses = (): void => {
    poseRun += 1;
    const run = poseRun;
    const from = panes.map((pane) => pane.pose);
    stage.animate(
      tween(still ? 0 : MOVE_MS, (share) => {
        if (run !== poseRun) return;
        panes.forEach((pane, n) => {
          const start = from[n] ?? pane.aim;
          pane.pose = {
            lift: start.lift + (pane.aim.lift - start.lift) * share,
            turn: start.turn + (pane.aim.turn - start.turn) * share,
          };
          pane.model.setPose(pane.pose);
        });
        stage.changed();
      }),
    );
  };

  const setPaneCount = (count: number): void => {
    if (panes.length === count) return;
    while (panes.length > count) panes.pop()?.model.dispose();
    while (panes.length < count)
      panes.push({ model: makeBedModel(palette), pose: POSES.away, aim: POSES.away, was: 'away' });
    stage.setModels(panes.map((pane) => pane.model));
  };

  return {
    show: (beds) => {
      // A picture more would keep the graphics from the one that shows the change.
      if (beds.length === shown.length && beds.every((bed, n) => looksAs(bed, shown[n]!))) return;
      setPaneCount(beds.length);
      if (beds.some(({ frame }, n) => frame !== shown[n]?.frame)) {
        frames += 1;
        without = stage.counts().pictures;
      }
      shown = beds;
      const tile = beds[0]?.setup.tile;
      const fit = tile ? `${tile.lengthMm} ${tile.widthMm}` : '';
      if (tile && fit !== fitted) {
        fitted = fit;
        const plan = slabPlan(tile.lengthMm, tile.widthMm);
        const across = plan.right - plan.left;
        const deep = plan.far - plan.near;
        stage.fit([0, (plan.near + plan.far) / 2], Math.hypot(across, deep) / 2);
        if (eye) goTo(eye, true);
      }
      let moving = false;
      beds.forEach((bed, n) => {
        const pane = panes[n]!;
        pane.model.setLook(bed.look);
        pane.model.setTileShown(bed.tile !== 'away');
        pane.model.setTrowel(bed.trowel);
        pane.model.setCut(bed.cut);
        pane.model.setNeighbours(bed.neighbours);
        pane.model.setAir(bed.air);
        pane.model.setSway(bed.sway.turnDeg, bed.sway.shiftMm);
        pane.model.show(bed.setup, bed.frame, bed.pulled);
        if (bed.tile !== pane.was) {
          // A tile that was not there comes down from where it is held.
          if (pane.was === 'away') pane.pose = POSES.lifted;
          pane.was = bed.tile;
          pane.aim = POSES[bed.tile];
          moving = true;
        }
      });
      if (moving) movePoses();
      stage.changed();
    },
    goTo,
    key: (key, shift) => {
      const next = keyedOrbit(stage.orbit(), key, shift);
      if (next) setOrbit(next);
      return next !== null;
    },
    pick: stage.pick,
    toolChanged: listener.toolChanged,
    setPalette: (next, dark) => {
      if (next !== palette) for (const { model } of panes) model.setPalette(next);
      palette = next;
      stage.setDark(dark);
    },
    setStill: (next) => {
      still = next;
    },
    snapshot: stage.snapshot,
    still: stage.still,
    counts: () => ({ ...stage.counts(), frames, without }),
    eye: stage.orbit,
    quality: stage.quality,
    holdQuality: stage.holdQuality,
    dispose: () => {
      listener.stop();
      stage.dispose();
    },
  };
}
