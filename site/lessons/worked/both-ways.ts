import { soldAs } from '@quiz/engine/sold.ts';
import type { UnitSystem } from '@sim/units/format.ts';
import { inches, type Mm } from '@sim/units/length.ts';

/** A number for each reader: the same job, of the sizes sold where each works. */
export type EachWay = Readonly<Record<UnitSystem, number>>;

/** A size given in inches, as it is sold where the reader works. */
type Size = (inch: number) => Mm;

/** A job reckoned once by the inch and once in the round metric sizes that stand for them, number by number. */
export function bothWays<Name extends string>(
  job: (size: Size, units: UnitSystem) => Readonly<Record<Name, number>>,
): Readonly<Record<Name, EachWay>> {
  const [imperial, metric] = (['imperial', 'metric'] as const).map((units) =>
    job((inch) => soldAs(units, inches(inch)), units),
  ) as [Record<Name, number>, Record<Name, number>];
  const names = Object.keys(imperial) as Name[];
  return Object.fromEntries(
    names.map((name) => [name, { imperial: imperial[name], metric: metric[name] }]),
  ) as unknown as Record<Name, EachWay>;
}

/** A number as a reader of the given units has it. */
export const numberFor = (number: number | EachWay, units: UnitSystem): number =>
  typeof number === 'number' ? number : number[units];
