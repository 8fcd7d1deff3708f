// What is said of a figure that gave way: whether it still stands where such figures usually do. The usual ends are those of the table of figures, each with its source there.
import { expect, test } from 'vitest';
import { unusualSentences } from '../../src/house/trial.ts';

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
