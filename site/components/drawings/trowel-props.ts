import type { NotchShape, TrowelSetup } from '@sim/bed/types.ts';
import { inches } from '@sim/units/length.ts';

/** A notch as a lesson writes it: inches as the trade does ("1/4"), or millimetres. */
export interface TrowelProps {
  shape?: NotchShape;
  widthIn?: string;
  depthIn?: string;
  toothIn?: string;
  widthMm?: number;
  depthMm?: number;
  toothMm?: number;
  angleDeg?: number;
  wearMm?: number;
}

function length(text: string | undefined, mm: number | undefined, fallback: number): number {
  if (mm !== undefined) return mm;
  if (text === undefined) return fallback;
  const parts = /^(?:(\d+) )?(\d+)(?:\/(\d+))?$/.exec(text.trim());
  if (!parts) throw new Error(`"${text}" is not inches as the trade writes them, such as 1/4 or 1 1/2`);
  return inches(Number(parts[1] ?? 0) + Number(parts[2]) / Number(parts[3] ?? 1));
}

/** The trowel meant; a tooth not named is as wide as the notch (a V has none), the blade stands at 60°. */
export function trowelFrom(props: TrowelProps): TrowelSetup {
  const shape = props.shape ?? 'square';
  const widthMm = length(props.widthIn, props.widthMm, inches(1 / 4));
  return {
    shape,
    widthMm,
    depthMm: length(props.depthIn, props.depthMm, widthMm),
    toothMm: length(props.toothIn, props.toothMm, shape === 'v' ? 0 : widthMm),
    angleDeg: props.angleDeg ?? 60,
    wearMm: props.wearMm ?? 0,
  };
}
