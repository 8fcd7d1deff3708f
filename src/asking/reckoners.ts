// Every sum that a question may ask for, in the order in which they are tried, and what the first makes of it that takes in all of its numbers.
import { mixedDrink, standardDrinks } from './drink-sums.ts';
import { chain } from './chain.ts';
import { compared } from './compared.ts';
import { convert, ofCask, shareOf, twoScales } from './convert.ts';
import { otherWash, moreWork } from './in-proportion.ts';
import { casksKept, yearsToFall, leftInCask, lossMoved } from './cask-sums.ts';
import { scaled } from './scale.ts';
import { bottlesFromSpirit, intoSizes, measuresIn, unitsOfDrink } from './bottle-sums.ts';
import { waterToLetDown, spiritsTogether, watered } from './mixing-sums.ts';
import { byMass, fromGravities, pureAlcohol } from './strength-sums.ts';
import { onTheGlass } from './hydrometer-readings.ts';
import { besideOurs, vesselIn } from './named-figures.ts';
import { weighs } from './weighs.ts';
import { attenuationOf, extractIn, gravityFromMalt } from './wort-sums.ts';
import { boils } from './boiling-points.ts';
import { calories } from './calories.ts';
import { atPrice } from './money.ts';
import { likened } from './likened.ts';
import { moreOf } from './more-of.ts';
import { oneSize } from './one-size.ts';
import { toTheAir } from './to-the-air.ts';
import { maltLasts, sieved, smokeMixed, yieldGot, yieldShort } from './malt-sums.ts';
import { heatOfWarming, litreDegrees, mashStands, theirTemperature } from './mash-sums.ts';
import {
  gasOfAlcohol,
  gasOfWash,
  heartOfCharge,
  lowWinesOf,
  roundTank,
  washbacksEnough,
} from './vessel-sums.ts';
import { hoursToHeat, steamAt } from './steam-sums.ts';
import { whatIf } from './what-if.ts';
import { emptyCask, lossOver, lossRate, lostBetween, strengthAYear } from './wood-sums.ts';
import { calendar, youngest } from './years.ts';
import { atYield, shareMoved } from './yields.ts';
import type { Answer } from './answer-given.ts';
import { leavesOver } from './left-over.ts';
import type { Numbered, Reckoner } from './reckoned.ts';

const reckoners: readonly Reckoner[] = [
  atPrice,
  calories,
  standardDrinks,
  mixedDrink,
  unitsOfDrink,
  boils,
  onTheGlass,
  litreDegrees,
  attenuationOf,
  extractIn,
  gravityFromMalt,
  weighs,
  vesselIn,
  chain,
  lowWinesOf,
  heartOfCharge,
  gasOfWash,
  gasOfAlcohol,
  hoursToHeat,
  steamAt,
  heatOfWarming,
  mashStands,
  strengthAYear,
  maltLasts,
  yieldGot,
  lostBetween,
  lossRate,
  intoSizes,
  bottlesFromSpirit,
  watered,
  waterToLetDown,
  spiritsTogether,
  fromGravities,
  pureAlcohol,
  youngest,
  calendar,
  casksKept,
  yearsToFall,
  lossOver,
  emptyCask,
  leftInCask,
  yieldShort,
  roundTank,
  washbacksEnough,
  smokeMixed,
  theirTemperature,
  besideOurs,
  sieved,
  measuresIn,
  lossMoved,
  byMass,
  ofCask,
  twoScales,
  convert,
  shareOf,
  atYield,
  toTheAir,
  compared,
  oneSize,
  moreOf,
  likened,
  scaled,
  shareMoved,
  otherWash,
  moreWork,
  whatIf,
];

/** False for gallons of proof that were asked for and are not told. */
const isInUnit = ({ wanted }: Numbered, { says }: Pick<Answer, 'says'>): boolean =>
  !wanted?.unit.includes('proof gal') || says.includes('proof');

/** What the first reckoner makes of a sum that takes in all of its numbers; or else the first that knows such a sum. */
export function reckonedOf(asked: Numbered): Answer | undefined {
  let loose: Answer | undefined;
  for (const reckon of reckoners) {
    const reckoned = reckon(asked);
    if (!reckoned) continue;
    const told = { ...reckoned, inUnit: asked.wanted !== undefined, question: asked.text };
    if (!leavesOver(asked, reckoned) && isInUnit(asked, reckoned)) return told;
    loose ??= { ...told, isLoose: true };
  }
  return loose;
}
