// Every way of writing a quantity, at every door: a field, an answer, a quoted figure, a script.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatIn } from '../../src/core/format.ts';
import { kinds, type KindName } from '../../src/core/kinds.ts';
import { quotableFigures, quotableNames, NINETY_FIVE } from '../../src/core/cross-check/quoted.ts';
import { readQuantity } from '../../src/core/reading/quantity.ts';
import { isRefusal } from '../../src/core/refusal.ts';
import { unitsOf, unitsRead } from '../../src/core/units.ts';
import { readAnswer } from '../../src/exercises/answer.ts';
import { mark } from '../../src/exercises/mark.ts';
import type { NumberQuestion } from '../../src/exercises/question.ts';
import { quantitiesIn } from '../../src/talk/quantities.ts';
import { readSaid } from '../../src/talk/said.ts';
import { inUnit } from '../../src/talk/units.ts';
import { cases, nonsense, refused, type Case } from './cases.ts';

const named = cases.map((each) => [each.text, each.kind, each] as const);
const refusals = refused.map(([text, kind, why]) => [text, kind, why ?? ''] as const);
const close = (value: number, { is, near }: Case, end = 0) => {
  const expected = typeof is === 'number' ? is : is[end]!;
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(near ?? 1e-9 * Math.abs(expected));
};

describe('a field', () => {
  test.each(named)('reads “%s” for %s', (text, kind, one) => {
    const read = readQuantity(text, { kind });
    if (isRefusal(read)) throw new Error(read.refused);
    expect(read.as).toBe(one.as ?? 'rounded');
    if (read.as === 'range') [read.low, read.high].forEach((value, end) => close(value, one, end));
    else {
      close(read.value, one);
      if (one.spread === undefined) expect(read.spread).toBeUndefined();
      else expect(read.spread).toBeCloseTo(one.spread, 9);
    }
  });

  test.each(refusals)('refuses “%s” for %s', (text, kind, why) => {
    const read = readQuantity(text, { kind, label: 'Filling strength', range: [35, 80] });
    expect(read).toMatchObject({ refused: expect.stringContaining(`Filling strength: “${text}” was given`) });
    expect(read).toMatchObject({ refused: expect.stringMatching(/; it can be from 35 to 80( |\.)/) });
    expect(read).toMatchObject({ refused: expect.stringContaining(why) });
  });

  test('proof and gallons are of the country that the reader’s units are of', () => {
    const read = (text: string, kind: KindName, more: object) => {
      const said = readQuantity(text, { kind, ...more });
      return isRefusal(said) || said.as === 'range' ? NaN : said.value;
    };
    expect(read('50 proof', 'strength', { unit: '° US proof' })).toBeCloseTo(25, 0); // 27 CFR 19.1
    expect(read('50 proof', 'strength', { country: 'US' })).toBeCloseTo(25, 0);
    expect(read('50 proof', 'strength', { unit: '° former UK proof' })).toBeCloseTo(28.6, 0); // half of 57.15
    expect(read('10 gallons', 'volume20', { unit: 'UK gal' })).toBeCloseTo(45.4609, 9);
    expect(read('10 gallons', 'volume20', { country: 'US' })).toBeCloseTo(37.854_117_84, 9);
    expect(read('10', 'volume20', { unit: 'hL' })).toBe(1000);
    expect(read('10 L', 'volume20', { unit: 'hL' })).toBe(10);
  });

  test('the last digit is that of the text, in the unit of the kind', () => {
    const step = (text: string, kind: KindName) => {
      const read = readQuantity(text, { kind });
      return isRefusal(read) || read.as === 'range' ? NaN : read.step;
    };
    expect(
      [step('9.0', 'strength'), step('42,500', 'volume20'), step('6.5 t', 'mass'), step('2 million', 'count'), step('1050', 'gravity'), step('50', 'gravity'), step('7h36', 'minutes')].map((size) => Number(size.toPrecision(6))),
    ).toEqual([0.1, 100, 100, 1e6, 0.001, 0.001, 1]);
  }); // prettier-ignore
});

describe('an answer', () => {
  test.each(named.filter(([, , one]) => one.not?.answer === undefined))('reads “%s” for %s', (text, kind, one) => {
    const read = readAnswer(text, kind);
    expect(read).toBeDefined();
    const { number, unit } = read!;
    expect(unit).not.toBe('other');
    close(typeof unit === 'string' ? number : unit.toCore(number), one);
  }); // prettier-ignore

  const question = (of: KindName, answer: number): NumberQuestion => ({
    kind: 'k', title: 't', topic: 'mashing', level: 1, prompt: 'How much?', working: ['so'], sources: [], form: 'calculation',
    answer, of, digits: 1, tolerance: 0.2, slips: [],
  }); // prettier-ignore
  test('is marked by its value, and asked for its country', () => {
    expect(mark(question('percent', 42), '42±2').verdict).toBe('right');
    expect(mark(question('percent', 42), 'about 42').verdict).toBe('right');
    expect(mark(question('volume20', 1250.5), '1.250,5').verdict).toBe('right');
    expect(mark(question('mass', 6500), '6.5 tonnes').verdict).toBe('right');
    expect(mark(question('strength', 25), '50 proof')).toMatchObject({
      verdict: 'unreadable',
      say: expect.stringMatching(/^“50 proof” was given, which may be 50 ° US proof .* say which\.$/),
    });
    expect(mark(question('strength', 5), '5 kg').verdict).toBe('unit');
  });

  test.each(nonsense.filter((text) => text.trim() !== ''))('“%s” is no number', (text) => {
    expect(mark(question('volume20', 5), text).verdict).toBe('unreadable');
  });
});

describe('a quoted figure', () => {
  const figureOf = (kind: KindName) => quotableNames.find((name) => quotableFigures[name].kind === kind);
  const quotable = named.flatMap(([text, kind, one]) => {
    const figure = figureOf(kind);
    return figure === undefined ? [] : [[text, figure, one] as const];
  });
  test('there is one for most', () => expect(quotable.length).toBeGreaterThan(70));
  test.each(quotable)('reads “%s” for %s', (text, figure, one) => {
    const read = readSaid(text, figure);
    if (isRefusal(read)) throw new Error(read.refused);
    expect(read.as).toBe(one.as ?? 'rounded');
    if (read.as === 'range') [read.low, read.high].forEach((value, end) => close(value, one, end));
    else close(read.value, one);
    if (read.as === 'about' && one.spread !== undefined)
      expect(read.spread).toBeCloseTo(one.spread / NINETY_FIVE, 9);
  });
  test.each(refusals)('refuses “%s” for %s', (text, kind) => {
    const figure = figureOf(kind)!;
    expect(readSaid(text, figure)).toMatchObject({
      refused: expect.stringMatching(
        `^${quotableFigures[figure].label}: “${text}” was given.*it can be from`,
      ),
    });
  });
  test('weeks are what is counted in weeks a year, and years are not', () => {
    expect(readSaid('46 weeks', 'weeksPerYear')).toMatchObject({ value: 46 });
    expect(readSaid('46 days', 'weeksPerYear')).toHaveProperty('refused');
    expect(readSaid('10,000 casks', 'casksInStore')).toMatchObject({ value: 10_000 });
  });
});

describe('a script', () => {
  /** A quantity said in a script, in the unit of a kind. */
  const inKind = (value: number, unit: string, kind: KindName) => {
    if (kind === 'gravity') return inUnit(value, unit, 'gravity');
    const said = unitsRead(kind).find((each) => each.unit === unit);
    return said ? said.toCore(value) : inUnit(value, unit, kinds[kind].unit);
  };
  test.each(named.filter(([, , one]) => one.not?.script === undefined))('reads “%s” for %s', (text, kind, one) => {
    const found = quantitiesIn(kind === 'gravity' ? `The gravity is ${text}.` : `We say that it is ${text}.`);
    expect(found).toHaveLength(1);
    const { value, range, unit, approximate } = found[0]!;
    const isAround = range !== undefined && typeof one.is === 'number'; // so much less or more: a script keeps both ends
    const ends = isAround ? [(range[0] + range[1]) / 2] : (range ?? [value!]);
    ends.forEach((end, i) => close(inKind(end, unit, kind), one, i));
    if (one.as === 'about') expect(approximate).toBe(true);
  }); // prettier-ignore
});

const every = Object.keys(kinds) as KindName[];
const amounts: readonly KindName[] = ['mass', 'volume', 'volume20', 'alcohol', 'count', 'energy', 'money'];
test('what is printed in any unit of a kind is read back as it was printed', () => {
  for (const kind of every)
    for (const unit of unitsOf(kind)) {
      const [low, high] = kind === 'gravity' ? [0.99, 1.12] : kind === 'temperature' ? [-20, 110] : [0.5, 99];
      fc.assert(
        fc.property(fc.double({ min: low, max: high, noNaN: true }), fc.constantFrom(1, 1, 37, 1e4), (value, times) => {
          const large = amounts.includes(kind) ? value * times : value;
          const text = formatIn(large, kind, unit);
          for (const asked of [{ kind, unit: unit.unit }, { kind }]) {
            const read = readQuantity(text, asked);
            const bare = unit.unit === '' || isRefusal(read) || read.as === 'range';
            if (isRefusal(read) || read.as === 'range') throw new Error(`${kind}: ${text}`);
            if (!bare) expect(read.unit.unit, `${kind}: ${text}`).toBe(unit.unit);
            const half = 0.5 * 10 ** -(/\.(\d+)/.exec(text)?.[1]!.length ?? 0);
            expect(Math.abs(unit.fromCore(read.value) - unit.fromCore(large)), `${kind}: ${text}`).toBeLessThanOrEqual(half * (1 + 1e-6));
          }
          const answer = readAnswer(text, kind);
          expect(answer?.unit, `${kind}: ${text}`).not.toBe('other');
        }),
        { numRuns: 60 },
      );
    }
}); // prettier-ignore

test.each(nonsense)('“%s” is no quantity of any kind but money', (text) => {
  for (const kind of every.filter((each) => dimensionless(each))) {
    expect(readQuantity(text, { kind }), kind).toHaveProperty('refused');
    expect(readAnswer(text, kind), kind).toBeUndefined();
  }
});
const dimensionless = (kind: KindName) => kind !== 'money';

test('any text is read as a finite quantity or refused in a sentence', () => {
  const words = 'a and half the to of in per point six ten twenty hundred thousand million third tonnes litres % degrees proof °F hours m k e 7 5.5 1,058 12.000 0,7 ½ / £ - – ± , . : about exactly or so between \u202e \ud800 NaN 1e9 36'.split(' '); // prettier-ignore
  const texts = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 60 }),
    fc.array(fc.constantFrom(...words), { maxLength: 9 }).map((some) => some.join(' ')),
    fc.array(fc.constantFrom(...words), { maxLength: 9 }).map((some) => some.join('')),
  );
  fc.assert(
    fc.property(texts, fc.constantFrom(...every), (text, kind) => {
      const read = readQuantity(text, { kind, label: 'It', range: [1, 2] });
      if (isRefusal(read)) expect(read.refused).toMatch(/^It: .+was given.*; it can be from .+\.$/s);
      else if (read.as === 'range') expect([read.low, read.high].every(Number.isFinite)).toBe(true);
      else expect([read.value, read.step].every(Number.isFinite)).toBe(true);
    }),
    { numRuns: 3000 },
  );
});

test('a text with no figure and no word for one is never a quantity', () => {
  const letters = fc.array(fc.constantFrom(...'bcdfgjklmpqrsvz'.split(''), ' ', '-', '.', '%', '°'), { maxLength: 30 }).map((some) => some.join('')); // prettier-ignore
  fc.assert(
    fc.property(letters, fc.constantFrom(...every), (text, kind) => {
      expect(readQuantity(text, { kind })).toHaveProperty('refused');
    }),
  );
});
