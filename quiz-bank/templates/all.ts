import type { Template } from '../engine/template.ts';
import { bareStrip } from './combing/bare-strip.ts';
import { combDirection } from './combing/comb-direction.ts';
import { lowestAngle } from './combing/lowest-angle.ts';
import { whatToChange } from './combing/what-to-change.ts';
import { whichPatchesPass } from './combing/which-patches-pass.ts';
import { enoughWater } from './mixing/enough-water.ts';
import { liftTheBag } from './mixing/lift-the-bag.ts';
import { partBagWater } from './mixing/part-bag-water.ts';
import { stiffBatch } from './mixing/stiff-batch.ts';
import { whatTheRidgeSays } from './mixing/what-the-ridge-says.ts';
import { angleAndLeastBed } from './reading-a-notch/angle-and-least-bed.ts';
import { bedLeft } from './reading-a-notch/bed-left.ts';
import { leastToMost } from './reading-a-notch/least-to-most.ts';
import { readTheLabel } from './reading-a-notch/read-the-label.ts';
import { sameMortar } from './reading-a-notch/same-mortar.ts';
import { wornTeeth } from './reading-a-notch/worn-teeth.ts';
import { howFar } from './setting/how-far.ts';
import { oneStroke } from './setting/one-stroke.ts';
import { roomInTheJoint } from './setting/room-in-the-joint.ts';
import { firstTouch } from './what-the-ridges-are-for/first-touch.ts';
import { moveWhichWay } from './what-the-ridges-are-for/move-which-way.ts';
import { wayOutForAir } from './what-the-ridges-are-for/way-out-for-air.ts';

/** Every template, module by module. A new one is asked, marked and tested from the day it stands here. */
export const templates: readonly Template[] = [
  firstTouch,
  moveWhichWay,
  wayOutForAir,
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
  lowestAngle,
  whatToChange,
  whichPatchesPass,
  howFar,
  oneStroke,
  roomInTheJoint,
];
