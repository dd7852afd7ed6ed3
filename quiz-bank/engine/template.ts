import type { OutcomeId } from '../../lessons/outcomes.ts';
import type { RuleId } from '../../simulations/rules/rulebook.ts';
import type { ModuleId } from '../modules.ts';
import type { IdeaId } from '../wrong-ideas/idea.ts';
import type { JobDraw } from './draw.ts';
import type { Picture } from './picture.ts';
import type { Quantity } from './quantity.ts';
import type { Say } from './say.ts';

/** A wrong choice always stands for a wrong idea, or for the answer to another job. */
export interface WrongChoice {
  text: string;
  idea: IdeaId | null;
}

/** The answer of a posed question, before letters and places are given out. */
export type PosedAnswer =
  | { kind: 'one'; right: string; wrong: WrongChoice[] }
  | { kind: 'all'; boxes: { text: string; right: boolean; idea: IdeaId | null }[] }
  | {
      kind: 'order';
      /** In the right order. */
      steps: string[];
      first: string;
      last: string;
      /** The order an idea's holder would give, as indices into `steps`. */
      ideas: { idea: IdeaId; order: number[] }[];
    }
  | {
      kind: 'number';
      quantity: Quantity;
      value: number;
      tolerance: number;
      /** Decimals of the printed right answer. */
      digits?: number;
      ideas: { idea: IdeaId; value: number }[];
    }
  | {
      kind: 'mark';
      columns: number;
      rows: number;
      /** Accepted cells: a column letter and a row number, `C4`. */
      right: string[];
      ideas: { idea: IdeaId; cells: string[] }[];
    }
  | {
      kind: 'judge';
      passes: boolean;
      /** The idea behind the other verdict. */
      verdictIdea: IdeaId | null;
      right: string;
      wrong: WrongChoice[];
      /** Words of the two verdicts; `Passes` and `Fails` unless given. */
      verdicts?: { yes: string; no: string };
    };

/** A question about one drawn job, in the reader's words and units. */
export interface Posed {
  story: string[];
  facts?: [name: string, value: string][];
  ask: string;
  picture?: Picture;
  answer: PosedAnswer;
  why: string[];
  /** The rules that decide. */
  rules: RuleId[];
  /** Shown with the explanation: what the job really came to. */
  whyPicture?: Picture;
}

export interface TemplateSpec<Job> {
  /** `module/name`; the words stand under the same name. */
  id: `${ModuleId}/${string}`;
  /** What this examines; the first is the main one. */
  outcomes: readonly OutcomeId[];
  /** The wrong ideas a learner can show here. */
  ideas: readonly IdeaId[];
  /** A job inside the stated ranges, or null when a second answer would come within tolerance of right. */
  draw: (draw: JobDraw) => Job | null;
  pose: (job: Job, say: Say) => Posed;
}

/** A template with its kind of job sealed in. */
export interface Template {
  id: string;
  module: ModuleId;
  outcomes: readonly OutcomeId[];
  ideas: readonly IdeaId[];
  prepare: (draw: JobDraw) => { job: unknown; pose: (say: Say) => Posed } | null;
}

export function template<Job>(spec: TemplateSpec<Job>): Template {
  return {
    id: spec.id,
    module: spec.id.slice(0, spec.id.indexOf('/')) as ModuleId,
    outcomes: spec.outcomes,
    ideas: spec.ideas,
    prepare: (draw) => {
      const job = spec.draw(draw);
      return job === null ? null : { job, pose: (say) => spec.pose(job, say) };
    },
  };
}
