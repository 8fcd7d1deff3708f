// A house as text: what is written comes back, and what cannot be used is told of, never dropped in silence.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { line } from '../../src/core/line/line.ts';
import { decodeHouse, encodeHouse } from '../../src/house/codec.ts';
import { problemOf } from '../../src/house/problem-of.ts';
import { proposeFigure } from '../../src/house/propose.ts';
import {
  builtInHouse,
  choiceFigures,
  figureNames,
  isNumberName,
  numberFigures,
} from '../../src/house/figures.ts';
import { nameProblem } from '../../src/house/name.ts';

const text = (figures: object, more: object = {}) =>
  JSON.stringify({ format: 'malt-spirit-handbook/house', version: 1, name: 'Sallowby', figures, ...more });

test('every figure of the table is in the built-in house, in range, and the house runs', () => {
  expect([...figureNames].sort()).toEqual(
    [...Object.keys(numberFigures), ...Object.keys(choiceFigures)].sort(),
  );
  for (const name of figureNames) expect(problemOf(name, builtInHouse[name])).toBeUndefined();
  expect('refused' in line(builtInHouse)).toBe(false);
});

test('a house comes back as it was written', () => {
  const heartEnd = fc.double({ min: 55, max: 65, noNaN: true });
  const gravity = fc.double({ min: 1.04, max: 1.07, noNaN: true });
  const names = fc.string({ unit: 'grapheme', maxLength: 80 }).filter((name) => !nameProblem(name));
  fc.assert(
    fc.property(heartEnd, gravity, names, (end, original, name) => {
      const house = { ...builtInHouse, heartEnd: end, originalGravity: original } as typeof builtInHouse;
      const reading = decodeHouse(encodeHouse({ name, house }));
      expect(reading.problems).toEqual([]);
      expect(reading.house).toEqual(house);
      expect(reading.name).toBe(name);
    }),
    { numRuns: 50 },
  );
});

describe('reading', () => {
  test.each([
    ['damaged text', '{"format":', 'damaged'],
    ['another program’s text', '{"a":1}', 'not a house'],
    ['a list', '[1,2]', 'not a house'],
    ['a newer version', text({}, { version: 3 }), 'version 3; this handbook reads versions 1 and 2'],
    ['parts that are no parts', text({}, { version: 2, parts: [1] }), '“[…]” is not a part'],
    ['an unknown part', text({}, { version: 2, parts: { portions: 3 } }), '“portions” is not a part'],
    [
      'a figure out of range',
      text({ heartEnd: 400 }),
      'Heart ends at: “400” was given; it can be from 20 to 85 % vol.',
    ],
    ['a figure as text', text({ heartEnd: '62' }), 'Heart ends at: “62” was given'],
    ['a null', text({ heartEnd: null }), 'Heart ends at: “null” was given'],
    ['an unknown figure', text({ portions: 3 }), '“portions” is not a figure'],
    [
      'an unknown choice',
      text({ foreshotsBy: 'smell' }),
      '“smell” is not one of share, volume, minutes, strength',
    ],
    ['figures that contradict each other', text({ husk: 95, flour: 95 }), 'more than the whole grist'],
    [
      'a prototype’s name',
      '{"format":"malt-spirit-handbook/house","version":1,"figures":{"__proto__":{"husk":1},"constructor":2}}',
      'constructor',
    ],
  ])('tells of %s and gives a house that runs', (_, given, sentence) => {
    const reading = decodeHouse(given);
    expect(reading.problems.join('\n')).toContain(sentence);
    expect('refused' in line(reading.house)).toBe(false);
  });

  test('keeps the sound figures beside a bad one', () => {
    expect(decodeHouse(text({ heartEnd: 400, finalGravity: 0.999 })).house.finalGravity).toBe(0.999);
  });

  test('never throws, whatever the text', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (given) => void decodeHouse(given)),
      { numRuns: 500 },
    );
    fc.assert(
      fc.property(fc.dictionary(fc.constantFrom(...figureNames), fc.anything()), (figures) => {
        let given: string;
        try {
          given = text(figures);
        } catch {
          return;
        }
        expect('refused' in line(decodeHouse(given).house)).toBe(false);
      }),
      { numRuns: 200 },
    );
  });
});

test('a proposal that the line refuses leaves the house alone and says why', () => {
  expect(proposeFigure(builtInHouse, 'heartEnd', 80)).toHaveProperty(
    'problem',
    expect.stringContaining('80 % vol'),
  );
  expect(proposeFigure(builtInHouse, 'finalGravity', 1.03)).toHaveProperty('house.finalGravity', 1.03);
  for (const name of figureNames.filter(isNumberName)) {
    const [low, high] = numberFigures[name].range;
    for (const value of [NaN, Infinity, low - 1, high + 1, '', 'abc', null, undefined, {}]) {
      expect(proposeFigure(builtInHouse, name, value), `${name} ${String(value)}`).toHaveProperty(
        'problem',
        expect.stringContaining(numberFigures[name].label),
      );
    }
  }
});
