import type { Fault } from '../input/fault.ts';
import type { BedAction } from './types.ts';

/** What is done before the tile is worked: the ridges knocked down with the flat side, the tile laid by its own weight. */
type Opening = { do: 'flatten' } | { do: 'lay' };

/** Something done, as a person may list it. */
export type GivenAction<Worked extends { do: BedAction['do'] }> = Opening | Worked;

export interface Opened<Worked> {
  /** Ridges flattened before the tile was laid. */
  flattened: boolean;
  /** How many of the list were openings, and what follows them. */
  openings: number;
  rest: Worked[];
  faults: Fault[];
}

const isOpening = (action: { do: string }): action is Opening => action.do === 'flatten' || action.do === 'lay';

/**
 * Parts a list of actions into what opens it and what is done to the laid tile. A list may begin with `flatten`, with
 * `lay`, or with both in that order; a tile is laid in any case.
 * @returns a fault for each opening that stands elsewhere
 */
export function openingsOf<Worked extends { do: BedAction['do'] }>(actions: GivenAction<Worked>[]): Opened<Worked> {
  const flattened = actions[0]?.do === 'flatten';
  const laid = actions[flattened ? 1 : 0]?.do === 'lay';
  const openings = (flattened ? 1 : 0) + (laid ? 1 : 0);
  const rest: Worked[] = [];
  const faults: Fault[] = [];
  actions.slice(openings).forEach((action, n) => {
    if (!isOpening(action)) {
      rest.push(action);
      return;
    }
    faults.push({
      path: `actions[${n + openings}]`,
      problem: action.do === 'flatten' ? 'is a flatten on a laid tile' : 'is a lay on a laid tile',
      accepted: 'put flatten first and lay next, before all else',
    });
  });
  return { flattened, openings, rest, faults };
}
