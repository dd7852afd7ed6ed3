import type { SurfaceReadings } from '@sim/bed/types.ts';
import { asFraction } from '@sim/units/fraction.ts';
import type { UnitSystem } from '@sim/units/format.ts';
import { parseLength } from '@sim/units/parse-length.ts';

/** The lines a straightedge is laid along. */
export type LineName = 'along' | 'across' | 'rising' | 'falling';
export const LINE_NAMES: readonly LineName[] = ['along', 'across', 'rising', 'falling'];

export const lineOf = (readings: SurfaceReadings | undefined, name: LineName): number[] | undefined => {
  switch (name) {
    case 'along':
      return readings?.alongMm;
    case 'across':
      return readings?.acrossMm;
    case 'rising':
      return readings?.diagonalsMm?.[0];
    case 'falling':
      return readings?.diagonalsMm?.[1];
  }
};

/**
 * Readings with one line put in or (undefined) taken out; a diagonal that is missing beside the other is level.
 * @returns undefined when no line is left
 */
export function withLine(
  readings: SurfaceReadings | undefined,
  name: LineName,
  line: number[] | undefined,
): SurfaceReadings | undefined {
  const lines = Object.fromEntries(
    LINE_NAMES.map((one) => [one, one === name ? line : lineOf(readings, one)]),
  ) as Record<LineName, number[] | undefined>;
  const { along, across, rising, falling } = lines;
  const told: SurfaceReadings = {
    ...(along ? { alongMm: along } : {}),
    ...(across ? { acrossMm: across } : {}),
    ...(rising || falling ? { diagonalsMm: [rising ?? [0, 0], falling ?? [0, 0]] } : {}),
  };
  return Object.keys(told).length > 0 ? told : undefined;
}

const HUNDREDTHS = 100;

/** A line as a person types it: lengths with commas between. */
export const lineText = (line: readonly number[] | undefined, units: UnitSystem): string =>
  (line ?? [])
    .map((mm) =>
      units === 'metric'
        ? String(Math.round(mm * HUNDREDTHS) / HUNDREDTHS)
        : `${mm < 0 ? '-' : ''}${asFraction(Math.abs(mm), 128)}`,
    )
    .join(', ');

/** A line as it was typed: its heights in mm and the pieces they were read from; no heights for an empty line. */
interface LineRead {
  line: number[] | undefined;
  pieces: readonly string[];
}

/**
 * Reads a line of lengths with commas between, or with semicolons, where a comma inside a number parts its decimals.
 * @returns the line, or the first piece that is no length (empty where two commas have nothing between) and its place
 */
export function readLine(text: string, units: UnitSystem): LineRead | { notALength: string; at: number } {
  const pieces = text.split(text.includes(';') ? /;|,(?=\s)/ : ',').map((piece) => piece.trim());
  // A comma behind the last reading asks for no other.
  if (pieces.at(-1) === '') pieces.pop();
  const line: number[] = [];
  for (const [at, piece] of pieces.entries()) {
    const [, minus = '', rest = ''] = /^([-−–]?)(.*)$/.exec(piece) ?? [];
    const mm = parseLength(rest, units === 'metric' ? 'mm' : 'in');
    if (mm === null || mm < 0) return { notALength: piece, at };
    line.push(minus ? -mm : mm);
  }
  return { line: line.length === 0 ? undefined : line, pieces };
}
