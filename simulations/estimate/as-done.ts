import type { RuleId } from '../rules/rulebook.ts';
import type { Area, Job } from './job-types.ts';
import type { AsDone, Finding, Predicted } from './plan-types.ts';
import { predict, type SettingChoice } from './predict.ts';
import { finding, lengthValue, type Speaker, valueIn } from './say-finding.ts';
import type { SpreadOptions } from './spread/spread.ts';
import { words } from './words/en.ts';

/** The sheet's own way of setting, and what the model makes of it. */
interface Planned {
  setting: SettingChoice;
  predicted: Predicted;
  /** The rule that asks for the back coat. */
  coatRule: RuleId;
}

/**
 * The way the work is done: the sheet's, but for what somebody said of it. Where that departs from the sheet in comb or
 * movement, what is not said of the push or the movement is taken on the side of too little (rule `model.untold`).
 */
export function doneAs({ technique }: Area, { setting }: Planned): AsDone {
  const swirled = technique.comb === 'swirl';
  const travelMm = technique.moveMm ?? (swirled ? 0 : setting.travelMm);
  const departs = swirled || travelMm < setting.travelMm;
  return {
    swirled,
    light: technique.press === 'light' || (technique.press === 'untold' && departs),
    travelMm,
    butterHow: technique.bareBack ? 'none' : setting.butterHow,
  };
}

/** What was not said of work that departs from the sheet, and so was taken: the push, the movement. */
const takenOf = ({ technique }: Area, done: AsDone): string[] => [
  ...(technique.press === 'untold' && done.light ? [words.untoldPush] : []),
  ...(technique.moveMm === null && done.swirled ? [words.untoldMove] : []),
];

/** The prediction for the work as it is done, and what of it departs from the sheet; the sheet's own where nothing does. */
export function predictDone(
  area: Area,
  job: Job,
  planned: Planned,
  spread: SpreadOptions,
  say: Speaker,
): { done: AsDone; predicted: Predicted; findings: Finding[] } {
  const done = doneAs(area, planned);
  const { setting } = planned;
  const moved = done.travelMm !== setting.travelMm;
  const bare = done.butterHow !== setting.butterHow;
  if (!done.swirled && !done.light && !moved && !bare) return { done, predicted: planned.predicted, findings: [] };
  // A tile that is moved by a told distance is slid, whatever the sheet would have done with it.
  const method = moved || area.technique.moveMm !== null ? 'slide' : setting.method;
  const predicted = predict(area, job, { ...setting, ...done, method }, spread);
  const values = { done: valueIn(predicted.median, 'share'), planned: valueIn(planned.predicted.median, 'share') };
  const travel = { move: lengthValue(done.travelMm), travel: lengthValue(setting.travelMm) };
  return {
    done,
    predicted,
    findings: [
      ...(done.swirled ? [finding('comb.straight', 'warn', words.doneSwirled)] : []),
      ...(done.light ? [finding('model.pressing', 'warn', words.doneLight)] : []),
      ...(moved
        ? [finding('set.travel', 'warn', say(done.travelMm > 0 ? words.doneMoved : words.donePressed, travel))]
        : []),
      ...(bare ? [finding(planned.coatRule, 'warn', words.doneBare)] : []),
      ...takenOf(area, done).map((says) => finding('model.untold', 'note', says)),
      finding(done.swirled ? 'model.swirl' : 'model.draws', 'warn', say(words.done, values)),
    ],
  };
}
