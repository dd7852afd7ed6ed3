import type { UnitSystem } from '../../simulations/units/format.ts';
import { MODULES, type ModuleId } from '../modules.ts';
import { seedOf } from './seeds.ts';

/** What an instructor sets for a class. With the bank it makes every seat's questions again. */
export interface ClassRound {
  /** Names the round; two to twelve capital letters, figures or hyphens. */
  code: string;
  /** The bank that made it. */
  bank: string;
  /** Empty: from the whole course. */
  modules: readonly ModuleId[];
  items: number;
  /** Share of the points that passes, 0…1 in hundredths. */
  pass: number;
  /** Each seat its own figures in the same questions, or the same sheet for all. */
  perSeat: boolean;
  units: UnitSystem;
  /** Last day, as 2026-11-30; null for none. */
  due: string | null;
}

export const MOST_ITEMS = 40;
export const MOST_SEATS = 40;

const CODE = /^[A-Z0-9-]{2,12}$/;
const DAY = /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/;
const BANK = /^[\w-]{1,24}$/;
const MARK = 'class1';

/** Which fields of a round cannot be used; empty when all can. */
export function roundFaults(round: ClassRound): (keyof ClassRound)[] {
  const whole = (value: number, least: number, most: number): boolean =>
    Number.isInteger(value) && value >= least && value <= most;
  const holds: Record<keyof ClassRound, boolean> = {
    code: CODE.test(round.code),
    bank: BANK.test(round.bank),
    modules: round.modules.every((id) => MODULES.includes(id)),
    items: whole(round.items, 1, MOST_ITEMS),
    pass: whole(Math.round(round.pass * 1e6) / 1e4, 0, 100),
    perSeat: typeof round.perSeat === 'boolean',
    units: round.units === 'imperial' || round.units === 'metric',
    due: round.due === null || (DAY.test(round.due) && !Number.isNaN(Date.parse(round.due))),
  };
  return (Object.keys(holds) as (keyof ClassRound)[]).filter((field) => !holds[field]);
}

/** The modules as one number in base 36, a bit each in the order of the course; zero for all. */
const moduleBits = (modules: readonly ModuleId[]): string =>
  MODULES.reduce((bits, id, at) => (modules.includes(id) ? bits + 2 ** at : bits), 0).toString(36);

/** One line that names the round, short enough for a square code: it stands after `#` in the class's link. */
export const writeRound = (round: ClassRound): string =>
  [
    MARK,
    round.bank,
    round.code,
    round.items,
    Math.round(round.pass * 100),
    `${round.perSeat ? 's' : 'a'}${round.units === 'imperial' ? 'i' : 'm'}`,
    moduleBits(round.modules),
    round.due?.replaceAll('-', '') ?? '',
  ].join('.');

/** Reads such a line; null when it is not one, altered or from a course with other modules. */
export function readRound(line: string): ClassRound | null {
  const parts =
    /^class1\.([\w-]{1,24})\.([A-Z0-9-]{2,12})\.(\d{1,2})\.(\d{1,3})\.([as])([im])\.([0-9a-z]{1,8})\.(\d{8})?$/.exec(
      line,
    );
  if (!parts) return null;
  const [, bank = '', code = '', items, pass, seats, units, bits = '', day] = parts;
  const chosen = parseInt(bits, 36);
  if (chosen >= 2 ** MODULES.length) return null;
  const round: ClassRound = {
    bank,
    code,
    items: Number(items),
    pass: Number(pass) / 100,
    perSeat: seats === 's',
    units: units === 'i' ? 'imperial' : 'metric',
    modules: MODULES.filter((_, at) => Math.floor(chosen / 2 ** at) % 2 === 1),
    due: day === undefined ? null : `${day.slice(0, 4)}-${day.slice(4, 6)}-${day.slice(6)}`,
  };
  return roundFaults(round).length === 0 ? round : null;
}

/** The seed that chooses the round's questions: one for the class, so that every seat gets the same ones. */
export const roundSeed = (round: ClassRound): number => seedOf(`${round.bank}/${round.code}`);

/** The seed that draws the figures in them: the seat's own, or the class's. */
export const seatSeed = (round: ClassRound, seat: number): number =>
  round.perSeat ? seedOf(`${round.bank}/${round.code}/${seat}`) : roundSeed(round);
