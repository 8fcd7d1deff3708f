// Kinds of question on the whole line, and impossible figures of every stage.
import type { QuestionKind } from '../../question.ts';
import alcoholNotAccountedFor from './alcohol-not-accounted-for.ts';
import alcoholOfThreeVintages from './alcohol-of-three-vintages.ts';
import barleyToBottle from './barley-to-bottle.ts';
import bottlesFromAHectare from './bottles-from-a-hectare.ts';
import bottlesFromAMash from './bottles-from-a-mash.ts';
import casksAYear from './casks-a-year.ts';
import draffForALitre from './draff-for-a-litre.ts';
import energyOfABottle from './energy-of-a-bottle.ts';
import fieldsBehindTheCasks from './fields-behind-the-casks.ts';
import fuelAndItsGas from './fuel-and-its-gas.ts';
import gasToCatch from './gas-to-catch.ts';
import heartFromAWashback from './heart-from-a-washback.ts';
import impossibleAlongTheLine from './impossible-along-the-line.ts';
import impossibleAtBottling from './impossible-at-bottling.ts';
import impossibleDraff from './impossible-draff.ts';
import impossibleInAYear from './impossible-in-a-year.ts';
import impossibleInMalting from './impossible-in-malting.ts';
import impossibleInReducing from './impossible-in-reducing.ts';
import impossibleInTheCask from './impossible-in-the-cask.ts';
import impossibleInTheMash from './impossible-in-the-mash.ts';
import impossibleInTheMill from './impossible-in-the-mill.ts';
import impossibleInTheSpiritStill from './impossible-in-the-spirit-still.ts';
import impossibleInTheWashStill from './impossible-in-the-wash-still.ts';
import impossibleInTheWashback from './impossible-in-the-washback.ts';
import impossibleMoisture from './impossible-moisture.ts';
import lossesOneAfterAnother from './losses-one-after-another.ts';
import mashesForAnOrder from './mashes-for-an-order.ts';
import sizeOfABottling from './size-of-a-bottling.ts';
import sizeOfAField from './size-of-a-field.ts';
import sizeOfAStore from './size-of-a-store.ts';
import whatADegreeBrings from './what-a-degree-brings.ts';
import yieldOfATonne from './yield-of-a-tonne.ts';

export const line: readonly QuestionKind[] = [
  alcoholNotAccountedFor,
  alcoholOfThreeVintages,
  barleyToBottle,
  bottlesFromAHectare,
  bottlesFromAMash,
  casksAYear,
  draffForALitre,
  energyOfABottle,
  fieldsBehindTheCasks,
  fuelAndItsGas,
  gasToCatch,
  heartFromAWashback,
  impossibleAlongTheLine,
  impossibleAtBottling,
  impossibleDraff,
  impossibleInAYear,
  impossibleInMalting,
  impossibleInReducing,
  impossibleInTheCask,
  impossibleInTheMash,
  impossibleInTheMill,
  impossibleInTheSpiritStill,
  impossibleInTheWashStill,
  impossibleInTheWashback,
  impossibleMoisture,
  lossesOneAfterAnother,
  mashesForAnOrder,
  sizeOfABottling,
  sizeOfAField,
  sizeOfAStore,
  whatADegreeBrings,
  yieldOfATonne,
];
