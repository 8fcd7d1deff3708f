// Questions of a trainer's own that tests draw: one with a formula, one with choices.
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
  formula: 'malt / 1000 × yield',
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
