import type { ModuleSlug } from '@lessons/course.ts';
import type { BedSetup } from '@sim/bed/types.ts';
import type { UnitSystem } from '@sim/units/format.ts';

/** One of a few words to choose; each says what it does to the set-up. */
export interface ChoiceControl {
  kind: 'choice';
  id: string;
  label: string;
  /** Place of the option that holds when the prediction is asked. */
  start: number;
  options: { label: string; change: (setup: BedSetup) => BedSetup }[];
}

/** A slider; `say` prints its value in the reader's units. */
export interface RangeControl {
  kind: 'range';
  id: string;
  label: string;
  least: number;
  most: number;
  step: number;
  start: number;
  say: (value: number, units: UnitSystem) => string;
  change: (setup: BedSetup, value: number) => BedSetup;
}

export type FigureControl = ChoiceControl | RangeControl;

/** A live figure of a lesson: predict, set, pull, see why. Its words stand in the lesson's language folder. */
export interface LiveFigure {
  module: ModuleSlug;
  title: string;
  /** What is asked before the tile is set; the answer is a share of the tile's back. */
  question: string;
  /** Shown once the tile is pulled: what to look at and why it came out so. */
  after: string;
  setup: BedSetup;
  controls: FigureControl[];
  /** Where the section is cut; through the middle along the length when left out. */
  cut?: { along: 'length' | 'width'; atMm: number };
}

/** What a reader has set each control to: the place of an option, or a slider's value. */
export type Settings = Record<string, number>;

export const startSettings = (figure: LiveFigure): Settings =>
  Object.fromEntries(figure.controls.map((control) => [control.id, control.start]));

/** The set-up that the settings make, the controls applied in their order. */
export const setupFor = (figure: LiveFigure, settings: Settings): BedSetup =>
  figure.controls.reduce((setup, control) => {
    const value = settings[control.id] ?? control.start;
    return control.kind === 'range' ? control.change(setup, value) : (control.options[value]?.change(setup) ?? setup);
  }, figure.setup);
