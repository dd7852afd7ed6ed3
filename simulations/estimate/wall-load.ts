import { powderKgPerLitre } from '../mortar/bag.ts';
import { valueOf } from '../rules/rulebook.ts';
import type { Area } from './job-types.ts';
import type { Finding } from './plan-types.ts';
import { finding, type Speaker, valueIn } from './say-finding.ts';
import { tileKgM2 } from './tile-facts.ts';
import { words } from './words/en.ts';

/** Water that the cement keeps, a share of the powder (model). */
const BOUND_WATER = 0.1;
/** Grout in the joints of a wall (common practice). */
const GROUT_KG_M2 = 0.5;

/** The limit of what the wall is made of, kg/m²; null where none is published. */
export function wallLimit(substrate: Area['substrate']): number | null {
  switch (substrate) {
    case 'plaster':
      return valueOf('substrate.wall-limits', 'plaster');
    case 'drywall':
      return valueOf('substrate.wall-limits', 'plasterboard');
    case 'plywood':
      return valueOf('substrate.wall-limits', 'plywood');
    case 'gypsum-fibre':
      return valueOf('substrate.wall-limits', 'gypsumFibre');
    case 'cement-board':
      return valueOf('substrate.wall-limits', 'cementBoard');
    case 'foam-board':
      return valueOf('substrate.wall-limits', 'foamBoard');
    default:
      return null;
  }
}

/** Weight of tile, mortar and grout on a wall, kg/m². @param litresM2 mortar of all layers */
const wallKgM2 = (area: Area, litresM2: number): number =>
  tileKgM2(area.tile) +
  litresM2 *
    powderKgPerLitre({
      waterLPerKg: valueOf('mortar.water', 'least'),
      densityKgM3: valueOf('mortar.density', 'most'),
    }) *
    (1 + BOUND_WATER) +
  GROUT_KG_M2;

export function planWall(area: Area, litresM2: number, say: Speaker): { kgM2: number | null; findings: Finding[] } {
  if (area.surface !== 'wall') return { kgM2: null, findings: [] };
  const kgM2 = wallKgM2(area, litresM2);
  const limit = wallLimit(area.membrane === 'backer-board' ? 'cement-board' : area.substrate);
  if (limit === null) return { kgM2, findings: [] };
  const heavy = kgM2 > limit;
  return {
    kgM2,
    findings: [
      finding(
        'substrate.wall-limits',
        heavy ? 'stop' : 'note',
        say(heavy ? words.wallHeavy : words.wallFine, {
          weight: valueIn(kgM2, 'kg/m²'),
          limit: valueIn(limit, 'kg/m²'),
        }),
      ),
    ],
  };
}
