import { defaultActions } from '@sim/bed/defaults.ts';
import type { BedSetup } from '@sim/bed/types.ts';

import { flatSurface, isWarped } from '../flat.ts';
import { acrossRidges } from '../ridges.ts';

/** A bed like another but for one thing. */
export type TwinId = 'swirl' | 'straight' | 'along' | 'across' | 'flat' | 'butter' | 'fresh' | 'flattened';

/** A coat that fills a common back and leaves some over, mm (model). */
const BUTTER_MM = 1;

type Change = (setup: BedSetup) => BedSetup | null;

const slid =
  (turn: number): Change =>
  (setup) => {
    const way = acrossRidges(setup) + turn;
    const others = setup.actions.filter((act) => act.do !== 'slide');
    const slide = setup.actions.find((act) => act.do === 'slide') ?? defaultActions.slide;
    const done = setup.actions.some((act) => act.do === 'slide' && act.directionDeg === way);
    return done ? null : { ...setup, actions: [...others, { ...slide, directionDeg: way }] };
  };

const changes: Record<TwinId, Change> = {
  swirl: (setup) => (setup.comb.pattern === 'swirl' ? null : { ...setup, comb: { ...setup.comb, pattern: 'swirl' } }),
  straight: (setup) =>
    setup.comb.pattern === 'straight'
      ? null
      : { ...setup, comb: { ...setup.comb, pattern: 'straight', directionDeg: 90 } },
  along: slid(90),
  across: slid(0),
  flat: (setup) => (isWarped(setup.tile) ? { ...setup, tile: flatSurface(setup.tile) } : null),
  butter: (setup) => (setup.butterMm > 0 ? null : { ...setup, butterMm: BUTTER_MM }),
  fresh: (setup) => (setup.mortar.ageMin === 0 ? null : { ...setup, mortar: { ...setup.mortar, ageMin: 0 } }),
  flattened: (setup) => (setup.comb.flattened ? null : { ...setup, comb: { ...setup.comb, flattened: true } }),
};

/** The twins that make sense for a bed: what it already is, is left out. */
export const twinsOf = (setup: BedSetup): { id: TwinId; setup: BedSetup }[] =>
  (Object.keys(changes) as TwinId[]).flatMap((id) => {
    const twin = changes[id](setup);
    return twin ? [{ id, setup: twin }] : [];
  });
