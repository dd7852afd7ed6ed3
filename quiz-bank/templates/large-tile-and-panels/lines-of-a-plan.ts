import { dipAllowed, flatnessToReach } from '../../../simulations/estimate/flatness.ts';
import { offsetLimit } from '../../../simulations/estimate/joint-limits.ts';
import { tilesAhead } from '../../../simulations/mortar/weather.ts';
import { type RuleId, valueOf } from '../../../simulations/rules/rulebook.ts';
import { feet } from '../../../simulations/units/length.ts';
import type { JobDraw } from '../../engine/draw.ts';
import type { Say } from '../../engine/say.ts';
import { template } from '../../engine/template.ts';
import { drawnArea } from '../../jobs/area.ts';
import { tile } from '../../jobs/tiles.ts';
import { square } from '../../jobs/trowels.ts';
import { bagYieldIsMine } from '../../wrong-ideas/bag-yield-is-mine.ts';
import { eightyAnywhere } from '../../wrong-ideas/eighty-anywhere.ts';
import { halfOffsetIsFine } from '../../wrong-ideas/half-offset-is-fine.ts';
import type { IdeaId } from '../../wrong-ideas/idea.ts';
import { mortarLevels } from '../../wrong-ideas/mortar-levels.ts';
import { skinIsFine } from '../../wrong-ideas/skin-is-fine.ts';
import { widthForDepth } from '../../wrong-ideas/width-for-depth.ts';

/** One line of a plan: whether it may stand, who would let it stand if it may not, and how it is said. */
interface Line {
  stands: boolean;
  idea: IdeaId;
  rules: RuleId[];
  facts: (say: Say) => [name: string, value: string][];
  text: (say: Say) => string;
  why: (say: Say) => string;
}

const sizes = [tile(8, 4), tile(12, 6), tile(12, 4), tile(24, 12), tile(36, 6), tile(48, 8)];
/** Wider than deep, so that a tile moved by the depth has not gone far enough. */
const wide = [square(3 / 8, 1 / 4), square(1 / 2, 3 / 8), square(1 / 2, 1 / 4)];
const OVER_MM = feet(10);

type Tiles = (typeof sizes)[number];

function offsetLine(size: Tiles): Line {
  const share = halfOffsetIsFine.share;
  const area = drawnArea({ pattern: 'offset', offsetShare: share, tile: size });
  const stands = offsetLimit(area, 'north-america').share >= share - 1e-9;
  return {
    stands,
    idea: halfOffsetIsFine.id,
    rules: ['offset.third'],
    facts: () => [],
    text: (say) => say.t('offset', { offset: say.length(halfOffsetIsFine.offsetMm(size.lengthMm)) }),
    why: (say) =>
      say.t(stands ? 'offset-stands' : 'offset-falls', { side: say.length(valueOf('offset.third', 'side')) }),
  };
}

function contactLine(wet: boolean): Line {
  const asked = valueOf(wet ? 'coverage.wet' : 'coverage.dry', 'share');
  return {
    stands: eightyAnywhere.required() >= asked,
    idea: eightyAnywhere.id,
    rules: [wet ? 'coverage.wet' : 'coverage.dry'],
    facts: () => [],
    text: (say) => say.t('contact', { share: say.share(eightyAnywhere.required()) }),
    why: (say) => say.t('contact-why', { share: say.share(asked) }),
  };
}

function dipLine(draw: JobDraw, size: Tiles): Line | null {
  const { limit } = flatnessToReach(drawnArea({ tile: size }), 'north-america');
  const allowed = dipAllowed(limit, OVER_MM);
  const dipMm = draw.size([1 / 16, 3 / 32, 5 / 32, 3 / 16, 5 / 16, 3 / 8]);
  if (Math.abs(dipMm / allowed - 1) < 0.12) return null;
  return {
    stands: dipMm <= allowed,
    idea: mortarLevels.id,
    rules: ['bed.no-leveller'],
    facts: (say) => [[say.t('dip-fact', { over: say.span(OVER_MM) }), say.length(dipMm)]],
    text: (say) => say.t('dip'),
    why: (say) => say.t('dip-why', { allowed: say.length(allowed), over: say.span(OVER_MM) }),
  };
}

function travelLine(draw: JobDraw): Line {
  const trowel = draw.stock(wide);
  const stands = draw.chance(0.5);
  const travelMm = stands ? trowel.widthMm : widthForDepth.swaps(trowel).widthMm;
  return {
    stands,
    idea: widthForDepth.id,
    rules: ['set.travel', 'trowel.naming'],
    facts: (say) => [[say.t('trowel-fact'), say.notch(trowel)]],
    text: (say) => say.t('travel', { travel: say.length(travelMm) }),
    why: (say) => say.t('travel-why', { width: say.length(trowel.widthMm) }),
  };
}

function aheadLine(draw: JobDraw): Line {
  const openMin = draw.pick([12, 15, 20, 30]);
  const paceMin = draw.pick([3, 4, 5]);
  const potMin = valueOf('time.pot-life', 'hours') * 60;
  const right = tilesAhead(openMin, paceMin);
  const stands = draw.chance(0.5);
  const tiles = stands ? right : tilesAhead(skinIsFine.minutes({ openMin, potMin }), paceMin);
  return {
    stands,
    idea: skinIsFine.id,
    rules: ['time.ahead', 'time.no-skin'],
    facts: (say) => [
      [say.t('open-fact'), say.number(openMin, 'minutes', 0)],
      [say.t('pot-fact'), say.number(potMin, 'minutes', 0)],
      [say.t('pace-fact'), say.number(paceMin, 'minutes', 0)],
    ],
    text: (say) => say.t('ahead', { tiles }),
    why: (say) => say.t('ahead-why', { tiles: right }),
  };
}

function bagsLine(draw: JobDraw): Line | null {
  const own = valueOf('rate.half-square', 'least');
  const headline = valueOf('rate.half-square', 'most') * draw.pick([1.1, 1.3]);
  const areaM2 = draw.floor(draw.step(14, 40, 2));
  const right = Math.ceil(areaM2 / own);
  const label = bagYieldIsMine.bags(areaM2, headline);
  if (right - label < 2) return null;
  const stands = draw.chance(0.5);
  return {
    stands,
    idea: bagYieldIsMine.id,
    rules: ['bags.round-up'],
    facts: (say) => {
      const rate = (one: number): string => say.number(one, 'rate', say.units === 'imperial' ? 0 : 1);
      return [
        [say.t('area-fact'), say.area(areaM2)],
        [say.t('own-fact'), rate(own)],
        [say.t('headline-fact'), rate(headline)],
      ];
    },
    text: (say) => say.t('bags', { bags: stands ? right : label }),
    why: (say) => say.t('bags-why', { bags: right }),
  };
}

/** Lines shown at once. */
const SHOWN = 4;

/** A plan of four lines: which may stand? */
export const linesOfAPlan = template({
  id: 'large-tile-and-panels/lines-of-a-plan',
  outcomes: ['offset-allowed', 'coverage-by-place', 'flatness-required', 'spread-ahead', 'headline-rate'],
  ideas: [
    'half-offset-is-fine',
    'eighty-anywhere',
    'mortar-levels',
    'width-for-depth',
    'skin-is-fine',
    'bag-yield-is-mine',
  ],
  draw: (draw) => {
    const size = draw.stock(sizes);
    const wet = draw.chance(0.5);
    const made = [
      offsetLine(size),
      contactLine(wet),
      dipLine(draw, size),
      travelLine(draw),
      aheadLine(draw),
      bagsLine(draw),
    ];
    const lines = draw.some(
      made.flatMap((one) => one ?? []),
      SHOWN,
    );
    const standing = lines.filter(({ stands }) => stands).length;
    return made.includes(null) || standing === 0 || standing === SHOWN ? null : { size, wet, lines };
  },
  pose: ({ size, wet, lines }, say) => ({
    story: [say.t('story', { tile: say.tile(size.lengthMm, size.widthMm), place: say.t(wet ? 'wet' : 'dry') })],
    facts: lines.flatMap(({ facts }) => facts(say)),
    ask: say.t('ask'),
    answer: {
      kind: 'all',
      boxes: lines.map(({ text, stands, idea }) => ({ text: text(say), right: stands, idea: stands ? null : idea })),
    },
    why: lines.map(({ why }) => why(say)),
    rules: [...new Set(lines.flatMap(({ rules }) => rules))],
  }),
});
