// A unit that is not read for an answer is told, whatever the number, and is never marked as a mistake of size.
import { expect, test } from 'vitest';
import { kinds, type KindName } from '../../src/core/kinds.ts';
import { mark } from '../../src/exercises/mark.ts';
import type { NumberQuestion } from '../../src/exercises/question.ts';
import { kindAskedBy, unitNotRead, unitsNotRead } from '../../src/exercises/unit-not-read.ts';
import { askFor } from '../../src/exercises/wording.ts';

const litres = {
  kind: 'x', title: 'x', topic: 'distilling', level: 1, sources: [], form: 'calculation', prompt: '', working: [],
  of: 'volume', answer: 802, digits: 0, tolerance: 4,
  slips: [{ family: 'thousand', value: 0.802, say: 'Those are cubic metres.' }],
} as const satisfies NumberQuestion; // prettier-ignore

test.each(['0.802 kL', '8.02 hL', '802000 mL', '8020 dL', '80,200 cL', '802 litres', '802'])('%s are 802 litres', (text) => {
  expect(unitNotRead(text, 'volume')).toBeUndefined();
  expect(mark(litres, text).verdict).toBe('right');
}); // prettier-ignore

test('a unit that nobody knows is told, and nothing else is read into its number', () => {
  expect(unitNotRead('0.802 flagons', 'volume')).toBe('“flagons” is no unit that is read here: answer in L.');
  expect(mark(litres, '0.802 flagons')).toEqual({ verdict: 'unreadable', say: '“flagons” is no unit that is read here: answer in L.' }); // prettier-ignore
  expect(mark(litres, '0.802')).toMatchObject({ family: 'thousand' });
  expect(unitNotRead('3 kg', 'volume')).toBe('“kg” is not a unit of what is asked: answer in L.');
  expect(unitNotRead('3 kg', 'ratio')).toBe(
    '“kg” is not a unit of what is asked: answer with a plain number.',
  );
  expect(unitNotRead('50 proof', 'strength')).toMatch(/say which/);
});

test('what is told hangs on the unit alone, and so never tells whether the number is right', () => {
  for (const unit of ['flagons', 'kg', 'kL', 'L', '']) {
    const says = ['802', '0.802', '5'].map((number) => unitNotRead(`${number} ${unit}`, 'volume'));
    expect(new Set(says).size).toBe(1);
  }
});

test('a bare number is not taken for decilitres, nor for kilolitres or millilitres of pure alcohol', () => {
  expect(mark(litres, '8020')).toMatchObject({ verdict: 'wrong', family: 'thousand' });
  for (const text of ['0.802', '802000']) expect(mark({ ...litres, of: 'alcohol', slips: [] }, text)).toMatchObject({ verdict: 'wrong', family: 'thousand' }); // prettier-ignore
});

test('the line that asks on a sealed sheet tells the unit', () => {
  for (const of of Object.keys(kinds) as KindName[])
    for (const form of ['calculation', 'estimate', 'curve'] as const) {
      const found = kindAskedBy(askFor({ ...litres, of, form } as unknown as NumberQuestion));
      const { unit } = kinds[of];
      expect(found && kinds[found].unit, of).toBe(unit === '' ? undefined : unit);
    }
});

test('of a sheet each is told behind its number', () => {
  expect(unitsNotRead(['802 L', '3 flagons', 'B', '2 ells'], ['volume', 'volume', undefined, { ask: 'Answer in L, to one decimal.' }])).toEqual([
    'Question 2: “flagons” is no unit that is read here: answer in L.',
    'Question 4: “ells” is no unit that is read here: answer in L.',
  ]);
}); // prettier-ignore
