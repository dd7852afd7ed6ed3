import type { ToolHand } from '@sim/view/scene/orbit-input.ts';

import { type Bench, plainAct } from './bench.svelte.ts';
import { onSlab } from './on-slab.ts';
import type { Tool } from './tool.ts';
import { keptStroke, readStroke, type Spot } from './stroke.ts';

export type Pick = (clientX: number, clientY: number, heightMm: number) => Spot | null;

/** Longest and shortest stroke a drag may mean, mm. */
const LONGEST_MM = 40;
const SHORTEST_MM = 1;

const onTile = ([x, y]: Spot, bench: Bench): boolean =>
  Math.abs(x) <= bench.setup.tile.lengthMm / 2 && Math.abs(y) <= bench.setup.tile.widthMm / 2;

/** Tools that make sense at a step of the work. */
export const toolsFor = (bench: Bench): Tool[] =>
  bench.stage === 'comb' ? ['comb', 'turn'] : bench.stage === 'set' ? ['press', 'slide', 'tap', 'turn'] : ['turn'];

/** The stroke is shown on the bed each time this many places have been added. */
const SHOWN_EVERY = 4;

/** Combing: the trowel follows the pointer, and the bed is combed along the stroke itself. */
function combing(bench: Bench, pick: Pick): ToolHand {
  let spots: Spot[] = [];
  const comb = (moving: boolean): void => {
    const path = keptStroke(spots);
    const stroke = readStroke(path);
    if (stroke) bench.changePart('comb', { pattern: 'drawn', path, directionDeg: stroke.directionDeg }, moving);
  };
  const move = (x: number, y: number): void => {
    const spot = pick(x, y, 0);
    if (!spot) return;
    const last = spots.at(-3) ?? spots.at(-1);
    spots.push(spot);
    const far = last ? Math.hypot(spot[0] - last[0], spot[1] - last[1]) : 0;
    const alongDeg =
      last && far > 2
        ? (Math.atan2(spot[1] - last[1], spot[0] - last[0]) * 180) / Math.PI
        : (bench.trowelAt?.alongDeg ?? bench.setup.comb.directionDeg);
    bench.trowelAt = { x: spot[0], y: spot[1], alongDeg };
    if (spots.length % SHOWN_EVERY === 0) comb(true);
  };
  return {
    down: (x, y) => {
      const spot = pick(x, y, 0);
      if (!spot || !onSlab(spot, bench.setup.tile)) return false;
      spots = [];
      move(x, y);
      return true;
    },
    move,
    up: () => {
      comb(false);
      spots = [];
    },
  };
}

/** Pushing and tapping: where the tile is touched. */
function touching(bench: Bench, pick: Pick, kind: 'press' | 'tap'): ToolHand {
  return {
    tapOnly: true,
    down: () => true,
    move: () => undefined,
    up: (x, y) => {
      const spot = pick(x, y, tileTop(bench));
      if (!spot || !onTile(spot, bench)) return;
      const act = plainAct(kind);
      if (act.do !== 'press' && act.do !== 'tap') return;
      const force = act.do === 'press' ? { forceN: bench.forceN } : {};
      bench.act({ ...act, ...force, atX: Math.round(spot[0]), atY: Math.round(spot[1]) });
    },
  };
}

/** Sliding: a drag on the tile is one stroke there, and one back. */
function sliding(bench: Bench, pick: Pick): ToolHand {
  let from: Spot | null = null;
  return {
    down: (x, y) => {
      const spot = pick(x, y, tileTop(bench));
      from = spot && onTile(spot, bench) ? spot : null;
      return from !== null;
    },
    move: () => undefined,
    up: (x, y) => {
      const to = pick(x, y, tileTop(bench));
      if (!from || !to) return;
      const far = Math.hypot(to[0] - from[0], to[1] - from[1]);
      if (far < SHORTEST_MM) return;
      const way = (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
      const act = plainAct('slide');
      if (act.do !== 'slide') return;
      bench.act({
        ...act,
        forceN: bench.forceN,
        strokeMm: Math.round(Math.min(LONGEST_MM, far)),
        strokes: 2,
        directionDeg: Math.round(way),
      });
    },
  };
}

const tileTop = (bench: Bench): number => bench.setup.tile.thicknessMm + (bench.frame?.tileHeightMm || 0);

/** The hand for a tool, or null for the eye. */
export function handFor(tool: Tool, bench: Bench, pick: Pick): ToolHand | null {
  switch (tool) {
    case 'turn':
      return null;
    case 'comb':
      return combing(bench, pick);
    case 'press':
    case 'tap':
      return touching(bench, pick, tool);
    case 'slide':
      return sliding(bench, pick);
  }
}
