import { valueOf } from '../rules/rulebook.ts';
import { dipUnderTile } from './bed-need.ts';
import type { Area, Job } from './job-types.ts';
import { bedAt } from './notches.ts';
import type { NamedNotch, Predicted, SettingMethod } from './plan-types.ts';
import { predictSpread, type SpreadOptions, type SpreadQuestion } from './spread/spread.ts';
import { plainSquare } from './layers.ts';
import { allowedWarp, isMosaic, longestEdge, shortestEdge, tileKgM2 } from './tile-facts.ts';

/** How an area is to be set, as far as the prediction cares. */
export interface SettingChoice {
  notch: NamedNotch;
  angleDeg: number;
  flatten: boolean;
  method: SettingMethod;
  travelMm: number;
  butterHow: 'none' | 'flat' | 'combed';
  swirled: boolean;
  /** Pressed with a light hand. */
  light: boolean;
  openMin: number;
  minCoverage: number;
}

/** The push of a hand, N: the least and the most. */
export const pushOf = (light: boolean): readonly [number, number] => [
  valueOf('model.pressing', light ? 'light' : 'least'),
  valueOf('model.pressing', light ? 'least' : 'most'),
];

/** The question the spread answers for an area set in a certain way. */
export function spreadQuestion(area: Area, job: Job, setting: SettingChoice): SpreadQuestion {
  const { tile } = area;
  const mosaic = isMosaic(tile);
  // Along the long edge first, so that a tile turned on the floor is the same question.
  const [length, width] =
    mosaic && tile.pieceMm !== null ? [tile.pieceMm, tile.pieceMm] : [longestEdge(tile), shortestEdge(tile)];
  const measured = tile.measuredBowMm;
  const usual = bedAt(setting.notch, valueOf('trowel.angle', 'usual'));
  const coat: SpreadQuestion['coatMm'] =
    setting.butterHow === 'none'
      ? [0, 0]
      : setting.butterHow === 'flat'
        ? [
            tile.reliefMm + usual * valueOf('butter.extra', 'least'),
            tile.reliefMm + usual * valueOf('butter.extra', 'most'),
          ]
        : [
            bedAt(plainSquare(job.standards), valueOf('trowel.angle', 'usual')),
            bedAt(plainSquare(job.standards), valueOf('trowel.angle', 'steep')),
          ];
  return {
    notch: setting.notch,
    lengthMm: length,
    widthMm: width,
    tileKgM2: tileKgM2(tile),
    reliefMm: tile.reliefMm,
    bowMm:
      measured === null
        ? [allowedWarp(tile, length, job.standards).mm, allowedWarp(tile, width, job.standards).mm]
        : [measured, 0],
    measured: measured !== null,
    dipMm: dipUnderTile(Math.max(length, width, mosaic ? 0 : longestEdge(tile))),
    yieldPa: valueOf('mortar.stiffness', job.mortar.stiffness),
    angleDeg: setting.angleDeg,
    method: setting.method,
    travelMm: setting.travelMm,
    wall: area.surface === 'wall',
    flatten: setting.flatten,
    swirled: setting.swirled,
    pushN: pushOf(setting.light),
    coatMm: coat,
    openMin: setting.openMin,
    minCoverage: setting.minCoverage,
  };
}

export const predict = (area: Area, job: Job, setting: SettingChoice, options: SpreadOptions): Predicted =>
  predictSpread(spreadQuestion(area, job, setting), options);
