// Questions of a trainer's own that tests draw, one with a formula and one with choices, and a sheet of both.
import { GENERATOR } from '../../src/exercises/draw.ts';
import { resultAtOnce } from '../../src/exercises/in-steps.ts';
import { kindOfOwnQuestion } from '../../src/exercises/own/own-kind.ts';
import { settling } from '../../src/exercises/own/own-sheet.ts';
import { ownSheetText } from '../../src/exercises/own/own-text.ts';
import type { OwnChoices, OwnNumber } from '../../src/exercises/own/own-question.ts';

export const alcoholOfMash: OwnNumber = {
  id: 'own-mash1',
  title: 'Alcohol of a mash',
  topic: 'mashing',
  level: 2,
  wording: 'A mash of {malt} of malt yields {yield}. How much pure alcohol is that?',
  values: [
    { name: 'malt', kind: 'mass', unit: 'kg', takes: { from: 4000, to: 6000, step: 500 } },
    { name: 'yield', kind: 'yield', unit: 'L pure alcohol/t', takes: { list: [390, 402, 411] } },
  ],
  rests: '',
  asks: 'number',
  formula: 'malt[t] × yield',
  of: 'alcohol',
  digits: 0,
  within: 1,
  slips: [{ formula: 'malt × yield', say: 'The kilograms were not made tonnes.' }],
};

export const whichValve: OwnChoices = {
  id: 'own-valve1',
  title: 'Before discharge',
  topic: 'safety',
  level: 1,
  wording: 'What is opened first, before a still is discharged?',
  values: [],
  rests: 'the site’s own procedure',
  asks: 'choice',
  options: [
    { text: 'The air valve', why: 'A still that empties while closed draws a vacuum.', isRight: true },
    { text: 'The discharge valve', why: 'The still would draw a vacuum.', isRight: false },
  ],
};

/** The file of a sheet of one version that asks both. */
export function ownSheetFile(): string {
  const own = [alcoholOfMash, whichValve];
  const sheet = {
    generator: GENERATOR, title: 'Two of our own', minutes: 20, passMark: 50, shows: 'at the end', seed: 'two', versions: 1, house: 'built-in', own,
    items: own.map(({ id }, i) => ({ kind: id, key: i + 1, marks: 2 })),
  } as const; // prettier-ignore
  const kinds = new Map(own.map((each) => [each.id, kindOfOwnQuestion(each)]));
  return ownSheetText(resultAtOnce(settling(sheet, kinds)).sheet);
}
