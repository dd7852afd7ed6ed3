import type { WordList } from '../../engine/compose.ts';
import { bowedTile } from './bowed-tile.ts';
import { butteringTheBack } from './buttering-the-back.ts';
import { combing } from './combing.ts';
import { findingTheCause } from './finding-the-cause.ts';
import { flatFirst } from './flat-first.ts';
import { howMuchToBuy } from './how-much-to-buy.ts';
import { largeTileAndPanels } from './large-tile-and-panels.ts';
import { mixing } from './mixing.ts';
import { pullingATile } from './pulling-a-tile.ts';
import { readingANotch } from './reading-a-notch.ts';
import { setting } from './setting.ts';
import { smallTileAndMosaics } from './small-tile-and-mosaics.ts';
import { timeAndWeather } from './time-and-weather.ts';
import { underBoardsAndMembranes } from './under-boards-and-membranes.ts';
import { wetOutdoorsHeated } from './wet-outdoors-heated.ts';
import { whatTheRidgesAreFor } from './what-the-ridges-are-for.ts';
import { shared } from './shared.ts';

/** English, whole. Another language is another folder with the same names. */
export const english: WordList = {
  templates: {
    ...whatTheRidgesAreFor,
    ...readingANotch,
    ...mixing,
    ...combing,
    ...setting,
    ...pullingATile,
    ...butteringTheBack,
    ...bowedTile,
    ...flatFirst,
    ...smallTileAndMosaics,
    ...underBoardsAndMembranes,
    ...wetOutdoorsHeated,
    ...largeTileAndPanels,
    ...timeAndWeather,
    ...howMuchToBuy,
    ...findingTheCause,
  },
  shared,
};
