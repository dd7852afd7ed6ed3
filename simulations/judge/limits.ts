import { coverageToReach } from '../estimate/coverage-to-reach.ts';
import { lengthValue, valueIn, type Speaker } from '../estimate/say-finding.ts';
import type { RuleUnit } from '../rules/rule.ts';
import { ruleById, type RuleId, valueOf } from '../rules/rulebook.ts';
import type { JudgedLimit, Pull, PulledTile, PulledVoid } from './pull-types.ts';
import { words } from './words/en.ts';

/** A coat that never met the bed is no contact. */
export const contactOf = (tile: PulledTile): number => (tile.backCoatOnly ? 0 : tile.coverage);

export const averageContact = (pulls: readonly PulledTile[]): number =>
  pulls.length === 0 ? 0 : pulls.reduce((sum, tile) => sum + contactOf(tile), 0) / pulls.length;

/** Shares read by eye or grid are no finer than this; an average of thirds must not fail by the last bit. */
const HAIR = 1e-9;

interface Limit {
  name: JudgedLimit['name'];
  rule: RuleId;
  unit: RuleUnit;
  required: number;
  found: number;
  /** Whether more is better. */
  atLeast: boolean;
  advice?: boolean;
}

function judged(limit: Limit, say: Speaker): JudgedLimit {
  const { name, rule, unit, required, found, atLeast, advice = false } = limit;
  const holds = atLeast ? found >= required - HAIR : found <= required + HAIR;
  const value = (n: number) => (Number.isFinite(n) ? (unit === 'mm' ? lengthValue(n) : valueIn(n, unit)) : words.none);
  return {
    name,
    says: say(words.limits[name], { found: value(found), required: value(required) }),
    required,
    found: Number.isFinite(found) ? found : null,
    holds,
    advice,
    rule,
    source: ruleById(rule).source,
  };
}

/** Which void rule speaks: how large, how near, and whether it is a requirement. */
function voidRule({ kind, thicknessMm }: Pull) {
  if (kind === 'panel')
    return { large: 'void.panel' as const, near: 'void.near-edge' as const, must: true, nearMust: false };
  if (kind === 'stone') {
    const thick = thicknessMm >= valueOf('void.stone-thick', 'thickness') - 0.1;
    const rule = thick ? ('void.stone-thick' as const) : ('void.stone-thin' as const);
    return { large: rule, near: rule, must: true, nearMust: true };
  }
  return { large: 'void.tile' as const, near: 'void.near-edge' as const, must: false, nearMust: false };
}

/** A void this near an edge reaches it, mm. */
const AT_EDGE_MM = 3;

/** Voids too small to speak of, mm²: a pinhole is no void. */
const PINHOLE_MM2 = 25;

function voidLimits(pull: Pull, say: Speaker): JudgedLimit[] {
  const voids: PulledVoid[] = pull.pulls.flatMap((tile) => tile.voids).filter((one) => one.areaMm2 > PINHOLE_MM2);
  const rule = voidRule(pull);
  const largest = Math.max(0, ...voids.map((one) => one.areaMm2));
  const corner = Math.min(Infinity, ...voids.map((one) => one.toCornerMm));
  const edge = Math.min(Infinity, ...voids.map((one) => one.toEdgeMm));
  const distance = valueOf(rule.near, 'distance');
  return [
    judged(
      {
        name: 'largest-void',
        rule: rule.large,
        unit: 'mm²',
        required: valueOf(rule.large, 'area'),
        found: largest,
        atLeast: false,
        advice: !rule.must,
      },
      say,
    ),
    judged(
      {
        name: 'void-near-corner',
        rule: rule.near,
        unit: 'mm',
        required: distance,
        found: corner,
        atLeast: true,
        advice: !rule.nearMust,
      },
      say,
    ),
    judged(
      {
        name: 'edge-support',
        rule: 'void.support',
        unit: 'mm²',
        required: valueOf('void.tile', 'area'),
        found: Math.max(
          0,
          ...voids.filter((one) => Math.min(one.toEdgeMm, one.toCornerMm) <= AT_EDGE_MM).map((one) => one.areaMm2),
        ),
        atLeast: false,
      },
      say,
    ),
    ...(pull.kind === 'stone'
      ? []
      : [
          judged(
            {
              name: 'void-near-edge',
              rule: 'void.near-edge',
              unit: 'mm',
              required: distance,
              found: edge,
              atLeast: true,
              advice: true,
            },
            say,
          ),
        ]),
  ];
}

function bedLimits({ bedMm, kind }: Pull, say: Speaker): JudgedLimit[] {
  if (bedMm === null) return [];
  const heavy = kind === 'panel' || kind === 'stone';
  return [
    judged(
      {
        name: 'bed-least',
        rule: 'bed.least',
        unit: 'mm',
        required: valueOf('bed.least', 'bed'),
        found: bedMm,
        atLeast: true,
      },
      say,
    ),
    judged(
      {
        name: 'bed-most',
        rule: heavy ? 'bed.most-heavy' : 'bed.most-thin-set',
        unit: 'mm',
        required: valueOf(heavy ? 'bed.most-heavy' : 'bed.most-thin-set', 'bed'),
        found: bedMm,
        atLeast: false,
      },
      say,
    ),
  ];
}

/** Every limit that the pulled tiles are held to. */
export function limitsOf(pull: Pull, say: Speaker): { limits: JudgedLimit[]; required: number } {
  const decision = coverageToReach(pull);
  return {
    required: decision.value,
    limits: [
      ...(pull.pulls.length === 0
        ? []
        : [
            judged(
              {
                name: 'coverage',
                rule: decision.rule,
                unit: 'share',
                required: decision.value,
                found: averageContact(pull.pulls),
                atLeast: true,
              },
              say,
            ),
          ]),
      // Of tiles that nobody lifted nothing is known.
      ...(pull.pulls.length === 0 ? [] : voidLimits(pull, say)),
      ...bedLimits(pull, say),
      judged(
        {
          name: 'tiles-lifted',
          rule: 'sampling.tiles',
          unit: 'count',
          required: valueOf('sampling.tiles', 'tiles'),
          found: pull.pulls.length,
          atLeast: true,
        },
        say,
      ),
    ],
  };
}
