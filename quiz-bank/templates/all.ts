import type { Template } from '../engine/template.ts';
import { lipFromOffset } from './bowed-tile/lip-from-offset.ts';
import { lippageAllowed } from './bowed-tile/lippage-allowed.ts';
import { longestOffset } from './bowed-tile/longest-offset.ts';
import { middleOfABow } from './bowed-tile/middle-of-a-bow.ts';
import { whatToDoWithIt } from './bowed-tile/what-to-do-with-it.ts';
import { withinItsLimit } from './bowed-tile/within-its-limit.ts';
import { backInTheHand } from './buttering-the-back/back-in-the-hand.ts';
import { bothFaces } from './buttering-the-back/both-faces.ts';
import { coatOrNot } from './buttering-the-back/coat-or-not.ts';
import { reliefTakes } from './buttering-the-back/relief-takes.ts';
import { smoothCoat } from './buttering-the-back/smooth-coat.ts';
import { bareStrip } from './combing/bare-strip.ts';
import { combDirection } from './combing/comb-direction.ts';
import { howWasItCombed } from './combing/how-was-it-combed.ts';
import { lowestAngle } from './combing/lowest-angle.ts';
import { swirledTileLifted } from './combing/swirled-tile-lifted.ts';
import { whatToChange } from './combing/what-to-change.ts';
import { whatWasLeftOut } from './combing/what-was-left-out.ts';
import { whichPatchesPass } from './combing/which-patches-pass.ts';
import { looseKitchen } from './finding-the-cause/loose-kitchen.ts';
import { readTheSigns } from './finding-the-cause/read-the-signs.ts';
import { testThatSettlesIt } from './finding-the-cause/test-that-settles-it.ts';
import { whatToDoNextTime } from './finding-the-cause/what-to-do-next-time.ts';
import { bedOverADip } from './flat-first/bed-over-a-dip.ts';
import { bedWithinItsMortar } from './flat-first/bed-within-its-mortar.ts';
import { flatEnough } from './flat-first/flat-enough.ts';
import { stopTheJob } from './flat-first/stop-the-job.ts';
import { whereToWork } from './flat-first/where-to-work.ts';
import { whichLimit } from './flat-first/which-limit.ts';
import { bagsForAFloor } from './how-much-to-buy/bags-for-a-floor.ts';
import { coatInTheCount } from './how-much-to-buy/coat-in-the-count.ts';
import { enoughOnTheTruck } from './how-much-to-buy/enough-on-the-truck.ts';
import { litresOnTheFloor } from './how-much-to-buy/litres-on-the-floor.ts';
import { powderFromTheBed } from './how-much-to-buy/powder-from-the-bed.ts';
import { tilesOnAFloor } from './how-much-to-buy/tiles-on-a-floor.ts';
import { whichTakesMost } from './how-much-to-buy/which-takes-most.ts';
import { halfBond } from './large-tile-and-panels/half-bond.ts';
import { howItIsSet } from './large-tile-and-panels/how-it-is-set.ts';
import { howManyTimesShorter } from './large-tile-and-panels/how-many-times-shorter.ts';
import { jointForARunningBond } from './large-tile-and-panels/joint-for-a-running-bond.ts';
import { linesOfAPlan } from './large-tile-and-panels/lines-of-a-plan.ts';
import { notchForLargeTile } from './large-tile-and-panels/notch-for-large-tile.ts';
import { panelLifted } from './large-tile-and-panels/panel-lifted.ts';
import { enoughWater } from './mixing/enough-water.ts';
import { liftTheBag } from './mixing/lift-the-bag.ts';
import { partBagWater } from './mixing/part-bag-water.ts';
import { stiffBatch } from './mixing/stiff-batch.ts';
import { whatTheRidgeSays } from './mixing/what-the-ridge-says.ts';
import { barestSquare } from './pulling-a-tile/barest-square.ts';
import { enoughTiles } from './pulling-a-tile/enough-tiles.ts';
import { fiveDabs } from './pulling-a-tile/five-dabs.ts';
import { itSoundsHollow } from './pulling-a-tile/it-sounds-hollow.ts';
import { rankThePulls } from './pulling-a-tile/rank-the-pulls.ts';
import { readThePull } from './pulling-a-tile/read-the-pull.ts';
import { tellTheOwner } from './pulling-a-tile/tell-the-owner.ts';
import { threeTilesLifted } from './pulling-a-tile/three-tiles-lifted.ts';
import { angleAndLeastBed } from './reading-a-notch/angle-and-least-bed.ts';
import { bedLeft } from './reading-a-notch/bed-left.ts';
import { leastToMost } from './reading-a-notch/least-to-most.ts';
import { readTheLabel } from './reading-a-notch/read-the-label.ts';
import { sameMortar } from './reading-a-notch/same-mortar.ts';
import { wornTeeth } from './reading-a-notch/worn-teeth.ts';
import { howFar } from './setting/how-far.ts';
import { oneStroke } from './setting/one-stroke.ts';
import { putItRight } from './setting/put-it-right.ts';
import { roomInTheJoint } from './setting/room-in-the-joint.ts';
import { stripesOnTheBack } from './setting/stripes-on-the-back.ts';
import { whatItComesTo } from './setting/what-it-comes-to.ts';
import { glassOnItsBed } from './small-tile-and-mosaics/glass-on-its-bed.ts';
import { knockedFlat } from './small-tile-and-mosaics/knocked-flat.ts';
import { notchForASheet } from './small-tile-and-mosaics/notch-for-a-sheet.ts';
import { squeezeUp } from './small-tile-and-mosaics/squeeze-up.ts';
import { veeUnderASheet } from './small-tile-and-mosaics/vee-under-a-sheet.ts';
import { cureInTheCold } from './time-and-weather/cure-in-the-cold.ts';
import { openToday } from './time-and-weather/open-today.ts';
import { shortestFirst } from './time-and-weather/shortest-first.ts';
import { spreadAhead } from './time-and-weather/spread-ahead.ts';
import { stillGood } from './time-and-weather/still-good.ts';
import { aboveAndBelow } from './under-boards-and-membranes/above-and-below.ts';
import { cableResistance } from './under-boards-and-membranes/cable-resistance.ts';
import { combOverCable } from './under-boards-and-membranes/comb-over-cable.ts';
import { matCavities } from './under-boards-and-membranes/mat-cavities.ts';
import { twoLayers } from './under-boards-and-membranes/two-layers.ts';
import { whoseWord } from './under-boards-and-membranes/whose-word.ts';
import { deckGate } from './wet-outdoors-heated/deck-gate.ts';
import { fallOfADeck } from './wet-outdoors-heated/fall-of-a-deck.ts';
import { shareForThePlace } from './wet-outdoors-heated/share-for-the-place.ts';
import { strengthThatIsLeft } from './wet-outdoors-heated/strength-that-is-left.ts';
import { waterUnderTheTile } from './wet-outdoors-heated/water-under-the-tile.ts';
import { firstTouch } from './what-the-ridges-are-for/first-touch.ts';
import { moveWhichWay } from './what-the-ridges-are-for/move-which-way.ts';
import { wayOutForAir } from './what-the-ridges-are-for/way-out-for-air.ts';
import { whereTheAirWas } from './what-the-ridges-are-for/where-the-air-was.ts';

/** Every template, module by module. A new one is asked, marked and tested from the day it stands here. */
export const templates: readonly Template[] = [
  firstTouch,
  moveWhichWay,
  wayOutForAir,
  whereTheAirWas,
  angleAndLeastBed,
  bedLeft,
  leastToMost,
  readTheLabel,
  sameMortar,
  wornTeeth,
  enoughWater,
  liftTheBag,
  partBagWater,
  stiffBatch,
  whatTheRidgeSays,
  bareStrip,
  combDirection,
  howWasItCombed,
  lowestAngle,
  swirledTileLifted,
  whatToChange,
  whatWasLeftOut,
  whichPatchesPass,
  howFar,
  oneStroke,
  putItRight,
  roomInTheJoint,
  stripesOnTheBack,
  whatItComesTo,
  barestSquare,
  enoughTiles,
  fiveDabs,
  itSoundsHollow,
  rankThePulls,
  readThePull,
  tellTheOwner,
  threeTilesLifted,
  backInTheHand,
  bothFaces,
  coatOrNot,
  reliefTakes,
  smoothCoat,
  lipFromOffset,
  lippageAllowed,
  longestOffset,
  middleOfABow,
  whatToDoWithIt,
  withinItsLimit,
  bedOverADip,
  bedWithinItsMortar,
  flatEnough,
  stopTheJob,
  whereToWork,
  whichLimit,
  glassOnItsBed,
  knockedFlat,
  notchForASheet,
  squeezeUp,
  veeUnderASheet,
  aboveAndBelow,
  cableResistance,
  combOverCable,
  matCavities,
  twoLayers,
  whoseWord,
  deckGate,
  fallOfADeck,
  shareForThePlace,
  strengthThatIsLeft,
  waterUnderTheTile,
  halfBond,
  howItIsSet,
  howManyTimesShorter,
  jointForARunningBond,
  linesOfAPlan,
  notchForLargeTile,
  panelLifted,
  cureInTheCold,
  openToday,
  shortestFirst,
  spreadAhead,
  stillGood,
  bagsForAFloor,
  coatInTheCount,
  enoughOnTheTruck,
  litresOnTheFloor,
  powderFromTheBed,
  tilesOnAFloor,
  whichTakesMost,
  looseKitchen,
  readTheSigns,
  testThatSettlesIt,
  whatToDoNextTime,
];
