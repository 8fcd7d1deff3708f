// A question of one's own: read strictly, proved by trying every draw, drawn and marked like the book's.
import { expect, test } from 'vitest';
import { builtInHouse } from '../../src/house/figures.ts';
import { draw, drawAgain } from '../../src/exercises/draw.ts';
import { mark } from '../../src/exercises/mark.ts';
import { isNumberQuestion } from '../../src/exercises/question.ts';
import { kindOfOwnQuestion } from '../../src/exercises/own/own-kind.ts';
import {
  numbersTaken,
  readOwnQuestion,
  type OwnChoices,
  type OwnNumber,
} from '../../src/exercises/own/own-question.ts';
import { proofOfQuestion } from '../../src/exercises/own/proof.ts';
import { alcoholOfMash, whichValve } from './own-examples.ts';
import { hostileTexts } from './own-hostile.ts';

const withIt = (part: Partial<OwnNumber>): OwnNumber => ({ ...alcoholOfMash, ...part });

test('a sound question is proved by every draw, and its answer is that of a hand sum', () => {
  const proof = proofOfQuestion(alcoholOfMash);
  expect(proof).toEqual({ isSound: true, tried: 5 * 3, leftOut: 0, says: [], doubts: [] }); // 4,000 to 6,000 kg by 500; three yields
  const drawn = draw(kindOfOwnQuestion(alcoholOfMash), 'a', builtInHouse)!;
  const question = drawn.question;
  if (!isNumberQuestion(question)) throw new Error();
  const [malt, yields] = [...question.prompt.matchAll(/([\d,]+)\u00a0/g)].map(([, n]) => Number(n!.replace(',', '')));
  const byHand = (malt! * yields!) / 1000;
  expect(question.answer).toBeCloseTo(byHand, 9);
  expect(mark(question, String(byHand)).verdict).toBe('right');
  expect(mark(question, `${byHand / 100} hL pure alcohol`).verdict).toBe('right'); // marked like the book's: in other units
  expect(mark(question, String(malt! * yields!))).toMatchObject({ verdict: 'wrong', say: 'The kilograms were not made tonnes.' });
  expect(question.working[0]).toBe('malt[t] × yield');
  expect(drawAgain(kindOfOwnQuestion(alcoholOfMash), 'a', builtInHouse, drawn.note)?.question).toEqual(question);
}); // prettier-ignore

test('what is amiss is told in a sentence', () => {
  const cases: readonly (readonly [Partial<OwnNumber>, RegExp])[] = [
    [{ formula: 'malt + yield' }, /a mass and/],
    [{ formula: 'malt / 1000 × yield' }, /numbers alone give 1,\d+, and with their units 1\.\d+ L pure alcohol/],
    [{ formula: 'malt' }, /gives a mass, and the answer is asked for in L pure alcohol/],
    [{ formula: 'malt[t] / (yield − yield) × yield^2' }, /divides by nought/],
    [{ formula: '−malt[t] × yield' }, /which cannot be/],
    [{ wording: 'A mash of {malt}?' }, /does not give it/],
    [{ wording: 'A mash of {mash} at {yield}?' }, /no value is called so/],
    [{ slips: [{ formula: 'malt / 1000 × yield × 1.005', say: 'Near.' }] }, /too near the answer/],
    [{ slips: ['2', '2.001'].map((by) => ({ formula: `malt / 1000 × yield × ${by}`, say: 'Far.' })) }, /too near to be told apart/],
    [{ slips: [{ formula: 'malt / (malt − malt)', say: 'None.' }] }, /mistake 1 has no answer/],
    [{ values: [{ ...alcoholOfMash.values[0]!, takes: { from: -5, to: 5, step: 5 } }, alcoholOfMash.values[1]!] }, /malt cannot be −5/],
    [{ values: [{ ...alcoholOfMash.values[0]!, takes: { from: 5, to: 1, step: 1 } }, alcoholOfMash.values[1]!] }, /no number to take/],
    [{ values: [{ ...alcoholOfMash.values[0]!, takes: { from: 1, to: 90_000, step: 1 } }, alcoholOfMash.values[1]!] }, /20,000 are tried/],
  ];
  for (const [part, says] of cases) {
    const proof = proofOfQuestion(withIt(part));
    expect(proof.says.join(' '), JSON.stringify(part)).toMatch(says);
    expect(proof.isSound, JSON.stringify(part)).toBe(false);
  }
}); // prettier-ignore

test('numbers that do not go together are told with each value and its unit', () => {
  // 4,000 kg ÷ 1,000 × 390 L/t: the numbers alone are 1,560; with their units, 4 t ÷ 1,000 × 390 L/t = 1.56 L.
  expect(proofOfQuestion(withIt({ formula: 'malt / 1000 × yield' })).says.join(' ')).toContain(
    'With 4,000\u00a0kg and 390\u00a0L\u00a0pure\u00a0alcohol/t the numbers alone give 1,560, and with their units 1.560 L pure alcohol.',
  );
});

test('a value is called by a letter, then letters, digits or _, and by the name of no function', () => {
  const named = (name: string) => readOwnQuestion({ ...whichValve, wording: `{${name}}`, values: [{ ...alcoholOfMash.values[0]!, name }] }); // prettier-ignore
  for (const name of ['m', 'malt_2', 'Malt']) expect(typeof named(name), name).toBe('object');
  for (const name of ['sqrt', 'least', '2malt', '_malt', 'malt 2', 'm'.repeat(25), ''])
    expect(typeof named(name), name).toBe('string');
});

test('a value that the answer does not hang on is a doubt, and the question is sound', () => {
  const mashes = { name: 'mashes', kind: 'count', unit: '', takes: { list: [8, 10] } } as const;
  const values = [...alcoholOfMash.values, mashes];
  const told = proofOfQuestion(withIt({ values, wording: `${alcoholOfMash.wording} There are {mashes} mashes a week.` }));
  expect(told).toMatchObject({ isSound: true, doubts: ['{mashes} stands in the question but not in the formula: the answer is the same whatever it is.'] });
  expect(proofOfQuestion(withIt({ values }))).toMatchObject({ isSound: true, doubts: ['mashes is among the values and stands neither in the question nor in the formula.'] });
  const used = withIt({ values, wording: `${alcoholOfMash.wording} Of {mashes} mashes?`, formula: 'malt[t] × yield × mashes' });
  expect(proofOfQuestion(used)).toMatchObject({ isSound: true, doubts: [] });
  expect(proofOfQuestion({ ...used, wording: alcoholOfMash.wording })).toMatchObject({ isSound: false, says: [expect.stringContaining('The sum needs mashes, and the wording does not give it')] });
  expect(proofOfQuestion({ ...whichValve, values: [mashes] })).toMatchObject({ isSound: true, doubts: [expect.stringContaining('nor in a choice')] });
  expect(proofOfQuestion({ ...whichValve, values: [mashes], wording: 'Of {mashes} valves, which?' }).doubts).toEqual([]);
}); // prettier-ignore

test('a number that cannot be says why', () => {
  const asked = (kind: 'gravity' | 'percent' | 'mass', unit: string, number: number) =>
    proofOfQuestion(withIt({ values: [...alcoholOfMash.values, { name: 'mashes', kind, unit, takes: { list: [number] } }] })).says;
  expect(asked('gravity', '', 8)).toEqual(['mashes cannot be 8.000: a gravity is from 0.7 to 1.7, with water at 1; a number of things has a unit of its own in the list.']);
  expect(asked('percent', '%', 120)[0]).toMatch(/a percentage of a whole is from 0 to 100/);
  expect(asked('mass', 'kg', -5)[0]).toMatch(/cannot be less than nought/);
}); // prettier-ignore

test('draws that meet by chance are counted, left out, and never drawn', () => {
  // With 5,000 kg the second mistake gives the answer itself.
  const question = withIt({ slips: [{ formula: '5 × yield', say: 'Always five tonnes.' }] });
  const proof = proofOfQuestion({ ...question, formula: 'malt[t] × yield' });
  expect(proof).toMatchObject({ isSound: true, tried: 15, leftOut: 3 });
  expect(proof.says[0]).toBe('3 of 15 draws are never asked:');
  const yields = (list: readonly number[]) => proofOfQuestion({ ...question, formula: 'malt[t] × yield', values: question.values.map((each) => (each.name === 'yield' ? { ...each, takes: { list } } : each)) }).says; // prettier-ignore
  expect(proof.says.slice(1).map((each) => /; .*/.exec(each)?.[0])).toEqual(['; so do 2 more draws.']);
  expect(yields([400, 410]).map((each) => /; .*/.exec(each)?.[0])).toEqual([undefined, '; so does one more draw.']);
  expect(yields([400])[1]).not.toContain(';');
  const kind = kindOfOwnQuestion(question);
  for (let seed = 0; seed < 40; seed++) expect(draw(kind, `own/${seed}`, builtInHouse)!.question.prompt).not.toContain('5,000');
}); // prettier-ignore

test('choices: one right, none alike', () => {
  const withOptions = (options: OwnChoices['options']) => proofOfQuestion({ ...whichValve, options }).isSound;
  const [right, wrong] = whichValve.options as [OwnChoices['options'][0], OwnChoices['options'][0]];
  expect(withOptions(whichValve.options)).toBe(true);
  expect(withOptions([right, { ...right, text: 'Other' }])).toBe(false);
  expect(withOptions([wrong, { ...wrong, text: 'Other' }])).toBe(false);
  expect(withOptions([right, { ...wrong, text: right.text }])).toBe(false);
  const question = draw(kindOfOwnQuestion(whichValve), 'b', builtInHouse)!.question;
  expect('options' in question && question.options[question.answer]!.text).toBe(right.text);
});

test('what a file holds is read strictly, and nothing in it does harm', () => {
  expect(readOwnQuestion(JSON.parse(JSON.stringify(alcoholOfMash)))).toEqual(alcoholOfMash);
  expect(readOwnQuestion(JSON.parse(JSON.stringify(whichValve)))).toEqual(whichValve);
  for (const given of [null, 3, 'x', [], {}, { ...alcoholOfMash, id: 'malt' }, { ...alcoholOfMash, of: '__proto__' }, { ...alcoholOfMash, values: [{ ...alcoholOfMash.values[0], unit: 'ell' }] }, { ...alcoholOfMash, digits: NaN }, { ...alcoholOfMash, wording: 'a\u202eb' }, { ...alcoholOfMash, values: [1] }])
    expect(typeof readOwnQuestion(given), JSON.stringify(given)).toBe('string');
  for (const text of hostileTexts) {
    const read = readOwnQuestion({ ...alcoholOfMash, wording: text, formula: text });
    if (typeof read !== 'string') expect(proofOfQuestion(read).isSound, text).toBe(false);
  }
}); // prettier-ignore

test('a range has its ends, without what binary numbers leave over', () => {
  expect(numbersTaken({ from: 0.1, to: 0.7, step: 0.1 })).toEqual([0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7]);
  expect(numbersTaken({ from: 0, to: 1, step: 0.3 })).toEqual([0, 0.3, 0.6, 0.9]);
  expect(numbersTaken({ list: [3, 1, 3] })).toEqual([3, 1]);
});
