import { valueOf } from '../rules/rulebook.ts';
import type { Job } from './job-types.ts';
import type { Notch } from '../trowel/notch.ts';
import { bedNeed, type BedNeed } from './bed-need.ts';
import { chooseNotch, judgeNotch, type Judged, type NotchQuestion } from './choose-notch.ts';
import { bedAt, nameNotch, notchesFor } from './notches.ts';
import type { AreaPlan, Finding, RejectedNotch } from './plan-types.ts';
import { finding, lengthValue, type Speaker, valueIn } from './say-finding.ts';
import { isMosaic } from './tile-facts.ts';
import { words } from './words/en.ts';

export interface NotchPlan extends Pick<
  AreaPlan,
  'notch' | 'notchSays' | 'bedNeedMm' | 'alternatives' | 'rejected' | 'overridden' | 'flattenRidges'
> {
  angleDeg: number;
  findings: Finding[];
}

const angle = (value: number) => valueIn(value, '°');
const usualAngle = () => valueOf('bed.need', 'angle');

const rejection =
  (say: Speaker) =>
  ({ notch, refusal }: Judged): RejectedNotch[] =>
    refusal === null
      ? []
      : [
          {
            notch,
            rule: refusal.rule,
            says: say(words.refusals[refusal.why], {
              found: lengthValue(refusal.foundMm, 'gap'),
              limit: lengthValue(refusal.limitMm, 'gap'),
              usual: angle(usualAngle()),
              steep: angle(valueOf('trowel.angle', 'steep')),
            }),
          },
        ];

function pickSays(picked: Judged, need: BedNeed, mosaic: boolean, say: Speaker): string {
  const values = {
    notch: picked.notch.label,
    bed: lengthValue(bedAt(picked.notch, Math.max(usualAngle(), mosaic ? picked.angleDeg : 0)), 'gap'),
    angle: angle(mosaic ? picked.angleDeg : usualAngle()),
    need: lengthValue(need.total, 'gap'),
    sand: lengthValue(need.sand, 'gap'),
    warp: lengthValue(need.warp, 'gap'),
    floor: lengthValue(need.floor, 'gap'),
    least: lengthValue(valueOf('bed.least', 'bed'), 'gap'),
    relief: need.relief > 0 ? say(words.reliefPart, { relief: lengthValue(need.relief, 'gap') }) : '',
  };
  return say(mosaic ? words.notchMosaic : words.notchPick, values);
}

const same = (a: Notch, b: Notch): boolean =>
  a.shape === b.shape &&
  Math.abs(a.widthMm - b.widthMm) < 0.1 &&
  Math.abs(a.depthMm - b.depthMm) < 0.1 &&
  Math.abs(a.toothMm - b.toothMm) < 0.1;

/** What is said of a maker's notch: it stands, and where it falls short of our reckoning the sheet says so. */
function makerFindings(theirs: Judged, ours: Judged | null, need: BedNeed, say: Speaker): Finding[] {
  const least = valueOf('bed.least', 'bed');
  const agreed = ours !== null && same(theirs.notch, ours.notch);
  const values = {
    notch: theirs.notch.label,
    ours: ours?.notch.label ?? '',
    need: lengthValue(need.total, 'gap'),
    least: lengthValue(least, 'gap'),
  };
  const first = finding(
    'coverage.maker',
    agreed ? 'note' : 'warn',
    say(agreed ? words.notchMakerSame : words.notchMaker, values),
  );
  const upright = bedAt(theirs.notch, valueOf('trowel.upright', 'upright'));
  if (theirs.refusal?.why === 'too-thin-upright')
    return [
      first,
      finding('bed.least', 'stop', say(words.notchMakerTooThin, { ...values, bed: lengthValue(upright, 'gap') })),
    ];
  const left = bedAt(theirs.notch, usualAngle());
  if (left < need.total)
    return [
      first,
      finding('bed.need', 'warn', say(words.notchMakerThin, { ...values, bed: lengthValue(left, 'gap') })),
    ];
  return [first];
}

/** The notch for an area: ours by the mechanism, or the maker's where one is written. */
export function planNotch(
  question: Omit<NotchQuestion, 'need'> & { coated: boolean },
  job: Job,
  say: Speaker,
): NotchPlan {
  const { area, standards } = question;
  const need = bedNeed(area, standards, question.coated);
  const asked = { ...question, need };
  const choice = chooseNotch(asked, notchesFor(standards, job.trowelsAtHand));
  const mosaic = isMosaic(area.tile);
  const parts = { total: need.total, sand: need.sand, warp: need.warp, floor: need.floor, relief: need.relief };
  const shared = {
    bedNeedMm: parts,
    alternatives: choice.alternatives.map((one) => one.notch),
    rejected: choice.rejected.flatMap(rejection(say)),
  };
  if (job.instructions.notch) {
    const theirs = judgeNotch(asked, nameNotch(job.instructions.notch));
    const ours = choice.pick ?? choice.nearest;
    return {
      ...shared,
      notch: theirs.notch,
      notchSays: say(words.notchMaker, { notch: theirs.notch.label, ours: ours.notch.label }),
      overridden: same(theirs.notch, ours.notch) ? null : ours.notch,
      flattenRidges: theirs.flatten,
      angleDeg: theirs.angleDeg,
      findings: makerFindings(theirs, ours, need, say),
    };
  }
  const picked = choice.pick ?? choice.nearest;
  const why = rejection(say)(picked)[0]?.says ?? '';
  const findings: Finding[] =
    picked.refusal === null
      ? []
      : picked.refusal.why === 'not-needed'
        ? [
            finding(
              'bed.need',
              'warn',
              say(words.notchAmple, { notch: picked.notch.label, need: lengthValue(need.total, 'gap') }),
            ),
          ]
        : [finding(picked.refusal.rule, 'stop', say(words.notchNone, { notch: picked.notch.label, why }))];
  return {
    ...shared,
    notch: picked.notch,
    notchSays: findings[0]?.says ?? pickSays(picked, need, mosaic, say),
    overridden: null,
    flattenRidges: picked.flatten,
    angleDeg: picked.angleDeg,
    findings,
  };
}
