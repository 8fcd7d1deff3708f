// Kinds of question on law and labels.
import type { QuestionKind } from '../../question.ts';
import aStillAtHome from './a-still-at-home.ts';
import ageOfAVatting from './age-of-a-vatting.ts';
import dutyStrength from './duty-strength.ts';
import earliestDay from './earliest-day.ts';
import floorOfForty from './floor-of-forty.ts';
import fullYearsInWood from './full-years-in-wood.ts';
import labelThatCannotBe from './label-that-cannot-be.ts';
import letDownForCharredOak from './let-down-for-charred-oak.ts';
import nameItMayCarry from './name-it-may-carry.ts';
import pointItMisses from './point-it-misses.ts';
import whoseRule from './whose-rule.ts';

export const law: readonly QuestionKind[] = [
  labelThatCannotBe,
  nameItMayCarry,
  pointItMisses,
  whoseRule,
  ageOfAVatting,
  fullYearsInWood,
  earliestDay,
  floorOfForty,
  letDownForCharredOak,
  dutyStrength,
  aStillAtHome,
];
