// What is said of a figure that gave way: whether it still stands where such figures usually do. The usual ends are those of the table of figures, each with its source there.
import { expect, test } from 'vitest';
import { figureTable } from '../../src/core/figures/index.ts';
import { waysOf } from '../../src/core/line/change.ts';
import { line } from '../../src/core/line/line.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { nothingKnown } from '../../src/house/parts/known.ts';
import { proposeFigure } from '../../src/house/propose.ts';
import { figureInWords, isUnusual, unusualSentences, waysOut, type Trial } from '../../src/house/trial.ts';
import { answer } from '../core/draw.ts';

test('an extract that a gravity moved beyond the usual is asked about', () => {
  expect(unusualSentences([{ figure: 'solubleExtract', from: 78, to: 82.7 }])).toEqual([
    'Soluble extract is then outside what is usual: are your figures right?',
  ]);
  expect(unusualSentences([{ figure: 'solubleExtract', from: 78, to: 70 }])).toHaveLength(1);
});

test('nothing is asked while it stands in the usual, did not before, or has no usual', () => {
  expect(unusualSentences([{ figure: 'solubleExtract', from: 78, to: 78.9 }])).toEqual([]);
  expect(unusualSentences([{ figure: 'solubleExtract', from: 84, to: 81 }])).toEqual([]);
  expect(unusualSentences([{ figure: 'maltPerMash', from: 1000, to: 90_000 }])).toEqual([]);
});

test('a figure stands in a sentence with as many decimals as it needs', () => {
  expect(figureInWords('wortVolume', 7248.4)).toBe('7,248 L');
  expect(figureInWords('maltPerMash', 999.5)).toBe('999.5 kg');
  expect(figureInWords('originalGravity', 1.0598)).toBe('1.0598');
  expect(figureInWords('originalGravity', 1.06)).toBe('1.060');
});

test('the ends of what is usual are usual', () => {
  const [low, high] = figureTable.solubleExtract.usual!.range!;
  expect([low - 0.1, low, high, high + 0.1].map((each) => isUnusual('solubleExtract', each))).toEqual([true, false, false, true]); // prettier-ignore
});

/** More malt in a mash of the built-in house: 1,600 kg in the place of 1,500. */
function moreMalt(change: Partial<Trial> = {}): Trial {
  const value = 1600;
  const taken = proposeFigure(builtInHouse, 'maltPerMash', value);
  if ('problem' in taken) throw new Error(taken.problem);
  return { figure: 'maltPerMash', value, before: builtInHouse, after: taken.house, gave: taken.gave, known: nothingKnown, ...change }; // prettier-ignore
}
const digits = (text: string) => Number(text.replaceAll(',', '').match(/[\d.]+(?= (?:L|%)|$)/)![0]);

test('more malt gives more wort, a stronger one, or a mash that takes out less: each with its figure', () => {
  const ways = waysOut(moreMalt());
  const says = (gives: string) => ways.find((each) => each.gives === gives)!.says;
  // At one gravity extract goes as the volume, and at one volume and gravity the part taken out as one over the malt.
  expect(says('wortVolume')).toBe('Keep the gravity: 8,000 L of wort'); // 7,500 L × 16 ÷ 15
  const efficiency = answer(line(builtInHouse)).mash.efficiency;
  expect(says('efficiency')).toMatch(/^Keep both: the mash takes out /);
  expect(digits(says('efficiency'))).toBeCloseTo((efficiency * 15) / 16, 1);
  // In degrees of gravity, to which the extract of a litre goes nearly as it is: 58 × 16 ÷ 15 is 61.9.
  expect(says('originalGravity')).toMatch(/^Keep the volume: gravity 1\.06\d+$/);
  expect(Math.abs(digits(says('originalGravity')) - 1.0619)).toBeLessThan(0.0003);
  expect(ways.at(-1)!.gives).toBe('efficiency');
});

test('the way that was taken is marked, and none where the value could not be', () => {
  const taken = (change: Partial<Trial>) => waysOut(moreMalt(change)).filter((each) => each.taken).map(({ gives }) => gives); // prettier-ignore
  const [usual] = waysOf('maltPerMash');
  const other = waysOf('maltPerMash')[1]!;
  const gave = (figure: typeof other) => [{ figure, from: 1, to: 2 }];
  expect(taken({})).toEqual([usual]);
  expect(taken({ gives: other, gave: gave(other) })).toEqual([other]);
  expect(taken({ gives: 'efficiency', gave: [] })).toEqual(['efficiency']);
  expect(taken({ gives: other, gave: gave(usual!) })).toEqual([]);
  for (const gives of [usual!, other, 'efficiency'] as const)
    expect(taken({ gives, problem: 'It cannot be.' })).toEqual([]);
});

test('what nothing gives way to has no ways, and a mash that would take out under six tenths is none', () => {
  expect(waysOut(moreMalt({ figure: 'heartEnd', value: 60 }))).toEqual([]);
  const efficiency = answer(line(builtInHouse)).mash.efficiency;
  const so = (part: number) => waysOut(moreMalt({ value: Math.round((1500 * efficiency) / part) })).map(({ gives }) => gives); // prettier-ignore
  expect(so(61)).toContain('efficiency');
  expect(so(59)).not.toContain('efficiency');
});
