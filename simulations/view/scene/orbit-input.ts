import { heldOrbit, type Orbit } from './orbit.ts';

/** A touch or a mouse drag turned into a tool's stroke, client pixels. */
export interface ToolHand {
  /** A drag turns the view; only a tap is the tool's. */
  tapOnly?: true;
  /** False leaves the drag to the eye. */
  down: (x: number, y: number) => boolean;
  move: (x: number, y: number) => void;
  /** `tap` is true where the pointer hardly moved. */
  up: (x: number, y: number, tap: boolean) => void;
}

export interface OrbitHost {
  orbit: () => Orbit;
  setOrbit: (orbit: Orbit) => void;
  /** The tool in hand, or null to turn the view. */
  tool: () => ToolHand | null;
  /** Touch: the picture took hold of the finger, or let the page have it back. */
  onHold: (held: boolean) => void;
}

const DEG_PER_PIXEL = 0.32;
const TAP_PIXELS = 6;
const ZOOM_PER_WHEEL = 0.0016;
const KEY_STEP_DEG = 7;
const KEY_ZOOM = 1.14;

const turned = (orbit: Orbit, rightDeg: number, upDeg: number): Orbit =>
  heldOrbit({ ...orbit, azimuthDeg: orbit.azimuthDeg + rightDeg, elevationDeg: orbit.elevationDeg + upDeg });

const nearer = (orbit: Orbit, factor: number): Orbit => heldOrbit({ ...orbit, distanceMm: orbit.distanceMm * factor });

/** Moves the point looked at across the floor, by shares of the distance. */
function panned(orbit: Orbit, right: number, away: number): Orbit {
  const turn = (orbit.azimuthDeg * Math.PI) / 180;
  const step = orbit.distanceMm;
  return {
    ...orbit,
    target: [
      orbit.target[0] + step * (right * Math.cos(turn) - away * Math.sin(turn)),
      orbit.target[1] + step * (right * Math.sin(turn) + away * Math.cos(turn)),
      orbit.target[2],
    ],
  };
}

/** The eye after a key, or null for a key that is not ours. Arrows turn, with Shift they shift; + and − come nearer. */
export function keyedOrbit(orbit: Orbit, key: string, shift: boolean): Orbit | null {
  const pan = 0.05;
  switch (key) {
    case 'ArrowLeft':
      return shift ? panned(orbit, -pan, 0) : turned(orbit, -KEY_STEP_DEG, 0);
    case 'ArrowRight':
      return shift ? panned(orbit, pan, 0) : turned(orbit, KEY_STEP_DEG, 0);
    case 'ArrowUp':
      return shift ? panned(orbit, 0, pan) : turned(orbit, 0, KEY_STEP_DEG);
    case 'ArrowDown':
      return shift ? panned(orbit, 0, -pan) : turned(orbit, 0, -KEY_STEP_DEG);
    case '+':
    case '=':
      return nearer(orbit, 1 / KEY_ZOOM);
    case '-':
    case '_':
      return nearer(orbit, KEY_ZOOM);
    default:
      return null;
  }
}

interface Finger {
  x: number;
  y: number;
}

export interface OrbitListener {
  /** The tool in hand is another: a finger that holds a tool must not scroll the page. */
  toolChanged: () => void;
  stop: () => void;
}

/**
 * Turns pointer and wheel into the eye's moves. A finger moved up or down scrolls the page and moved sideways turns the
 * view, until a tap gives the picture hold of it; a tap outside gives it back. Two fingers zoom. The wheel zooms with
 * Ctrl only, so that scrolling past the picture is never caught.
 */
export function listenForOrbit(canvas: HTMLCanvasElement, host: OrbitHost): OrbitListener {
  const fingers = new Map<number, Finger>();
  let start: Finger | null = null;
  let hold = false;
  let toolInUse: ToolHand | null = null;

  const touchAction = (): void => {
    canvas.style.touchAction = hold || host.tool() !== null ? 'none' : 'pan-y';
  };
  const setHold = (next: boolean): void => {
    hold = next;
    touchAction();
    host.onHold(next);
  };
  const tapped = (x: number, y: number): boolean =>
    start !== null && Math.hypot(x - start.x, y - start.y) < TAP_PIXELS && fingers.size <= 1;

  const down = (event: PointerEvent): void => {
    start ??= { x: event.clientX, y: event.clientY };
    if (event.button > 2) return;
    fingers.set(event.pointerId, { x: event.clientX, y: event.clientY });
    canvas.setPointerCapture(event.pointerId);
    const tool = event.button === 0 && fingers.size === 1 ? host.tool() : null;
    toolInUse = tool?.down(event.clientX, event.clientY) === true ? tool : null;
  };
  const pinch = (moved: number, was: Finger, now: Finger): void => {
    const other = [...fingers.entries()].find(([id]) => id !== moved)?.[1];
    if (!other) return;
    const before = Math.hypot(was.x - other.x, was.y - other.y);
    const after = Math.hypot(now.x - other.x, now.y - other.y);
    if (after > 1) host.setOrbit(nearer(host.orbit(), before / after));
  };
  const move = (event: PointerEvent): void => {
    const was = fingers.get(event.pointerId);
    if (!was) return;
    const now = { x: event.clientX, y: event.clientY };
    if (toolInUse?.tapOnly && !tapped(now.x, now.y)) toolInUse = null;
    if (toolInUse) toolInUse.move(now.x, now.y);
    else if (fingers.size === 2) pinch(event.pointerId, was, now);
    else if ((event.buttons & 6) !== 0 || event.shiftKey) {
      const share = 0.5 / Math.max(1, canvas.clientHeight);
      host.setOrbit(panned(host.orbit(), -(now.x - was.x) * share, (now.y - was.y) * share));
    } else {
      const free = event.pointerType !== 'touch' || canvas.style.touchAction === 'none';
      const up = free ? (now.y - was.y) * DEG_PER_PIXEL : 0;
      host.setOrbit(turned(host.orbit(), -(now.x - was.x) * DEG_PER_PIXEL, up));
    }
    fingers.set(event.pointerId, now);
  };
  const up = (event: PointerEvent): void => {
    const tap = tapped(event.clientX, event.clientY);
    if (toolInUse && event.type === 'pointerup') toolInUse.up(event.clientX, event.clientY, tap);
    else if (tap && event.pointerType === 'touch' && event.type === 'pointerup') setHold(!hold);
    fingers.delete(event.pointerId);
    toolInUse = null;
    if (fingers.size === 0) start = null;
  };
  const wheel = (event: WheelEvent): void => {
    if (!event.ctrlKey) return;
    event.preventDefault();
    host.setOrbit(nearer(host.orbit(), Math.exp(event.deltaY * ZOOM_PER_WHEEL)));
  };
  const outside = (event: PointerEvent): void => {
    if (hold && event.target !== canvas) setHold(false);
  };
  const noMenu = (event: Event): void => event.preventDefault();

  touchAction();
  canvas.addEventListener('pointerdown', down);
  canvas.addEventListener('pointermove', move);
  canvas.addEventListener('pointerup', up);
  canvas.addEventListener('pointercancel', up);
  canvas.addEventListener('wheel', wheel, { passive: false });
  canvas.addEventListener('contextmenu', noMenu);
  document.addEventListener('pointerdown', outside);
  return {
    toolChanged: () => {
      if (hold && host.tool() !== null) setHold(false);
      else touchAction();
    },
    stop: () => {
      canvas.removeEventListener('pointerdown', down);
      canvas.removeEventListener('pointermove', move);
      canvas.removeEventListener('pointerup', up);
      canvas.removeEventListener('pointercancel', up);
      canvas.removeEventListener('wheel', wheel);
      canvas.removeEventListener('contextmenu', noMenu);
      document.removeEventListener('pointerdown', outside);
    },
  };
}
