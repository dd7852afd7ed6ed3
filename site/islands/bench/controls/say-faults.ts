import { withoutHidden } from '@sim/input/hidden.ts';
import type { Fault } from '@sim/input/fault.ts';
import { bench as words } from '@site/messages/en/bench.ts';

/** Why a control's value cannot be, by the control's own name; empty for none. */
export const faultsSay = (label: string, faults: readonly Fault[]): string =>
  faults.map(({ problem, accepted }) => withoutHidden(words.fault(label, problem, accepted), '\uFFFD')).join(' ');
