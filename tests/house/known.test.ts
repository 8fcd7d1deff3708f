// What is known of a house: read strictly, kept through a text, and never moved by what is entered after it.
import { expect, test } from 'vitest';
import { line } from '../../src/core/line/line.ts';
import { countedIds, waysToKnow } from '../../src/core/figures/standing.ts';
import { figureTable, isGiven } from '../../src/core/figures/index.ts';
import { kilograms, litres20, gravity, quantity } from '../../src/core/quantity.ts';
import { decodeHouse, encodeHouse } from '../../src/house/codec.ts';
import { enterFigure, withYeast } from '../../src/house/entering.ts';
import { builtInHouse, numberFigures, type NumberName } from '../../src/house/figures.ts';
import {
  afterTyping,
  countedProblem,
  figuresThatCount,
  knownOf,
  knownPart,
  nothingKnown,
  withCounted,
  withGiven,
  type Known,
} from '../../src/house/parts/known.ts';
import { withPart } from '../../src/house/parts/part.ts';

const knowing = (...names: NumberName[]): Known =>
  names.reduce((known, name) => withGiven(known, name, waysToKnow(name)[0]), nothingKnown);

test('what is known comes back with the house', () => {
  const known = withCounted(withGiven(knowing('heartEnd'), 'maltPerMash', 'measured'), 'casksInStore', 55_000);
  const parts = withPart({}, knownPart, known);
  const { house, parts: read, problems } = decodeHouse(encodeHouse({ name: 'Sallowby', house: builtInHouse, parts }));
  expect(problems).toEqual([]);
  expect(knownOf({ house, parts: read })).toEqual(known);
  expect(known).toEqual({ given: { heartEnd: 'set', maltPerMash: 'measured' }, counted: { casksInStore: 55_000 } });
}); // prettier-ignore

test('an old house knows what differs from the built-in house, and nothing else', () => {
  const text = '{"format":"malt-spirit-handbook/house","version":1,"name":"Sallowby","figures":{"heartEnd":60,"maltPerMash":6500,"husk":20}}';
  expect(knownOf(decodeHouse(text))).toEqual({ given: { maltPerMash: 'set', heartEnd: 'set' }, counted: {} });
  const noise = { ...builtInHouse, wortVolume: litres20(builtInHouse.wortVolume * (1 + 1e-12)) };
  expect(knownOf({ house: noise, parts: {} })).toEqual(nothingKnown);
}); // prettier-ignore

test.each([
  [{ given: { portions: 'set' } }, '“portions” is not a figure that a house gives.'],
  [{ given: { foreshotsBy: 'set' } }, '“foreshotsBy” is not a figure that a house gives.'],
  [{ given: { heartEnd: 'guessed' } }, 'Heart ends at: “guessed” is not how it is known; it can be set or follows.'],
  [{ given: { wortVolume: 7 } }, 'Wort collected: “7” is not how it is known; it can be measured or set or follows.'],
  [{ counted: { casksInStore: -3 } }, 'Casks in store, as counted: “-3” was given; it can be from 1 to 50,000,000.'],
  [{ counted: { casksInStore: '9' } }, 'Casks in store, as counted: “9” was given'],
  [{ counted: { wortMass: 9 } }, '“wortMass” is not a figure that a house counts.'],
  [{ counted: { heartEnd: 60 } }, '“heartEnd” is not a figure that a house counts.'],
  [{ guesses: {} }, 'What is known: “guesses” is nothing that it holds.'],
  [[], 'What is known of the house cannot be read.'],
])('what cannot be read is told, and the rest taken: %j', (data, sentence) => {
  const rest = { given: { feintsEnd: 'set' }, counted: { draff: 900 } };
  const whole = Array.isArray(data) ? data : { given: { ...rest.given, ...('given' in data ? data.given : {}) }, counted: { ...rest.counted, ...('counted' in data ? data.counted : {}) }, ...('guesses' in data ? data : {}) }; // prettier-ignore
  const { value, problems } = knownPart.read(whole);
  expect(problems.join()).toContain(sentence);
  expect(problems).toHaveLength(1);
  expect(value).toEqual(Array.isArray(data) ? nothingKnown : rest);
}); // prettier-ignore

test('every figure that a house counts is computed, every other that it gives is measured or set', () => {
  expect(countedIds.length).toBeGreaterThan(20);
  for (const id of countedIds) {
    expect(isGiven(figureTable[id])).toBe(false);
    const [low, high] = figureTable[id].limits;
    expect(countedProblem(id, low)).toBeUndefined();
    expect(countedProblem(id, high)).toBeUndefined();
    expect(countedProblem(id, high * 1.01 + 1)).toContain('was given');
    expect(countedProblem(id, Number.NaN)).toContain('was given');
  }
  for (const name of Object.keys(numberFigures) as NumberName[])
    expect(waysToKnow(name).length).toBeGreaterThan(0);
});

test('only the figures of the foreshots that count are asked for', () => {
  const by = (foreshotsBy: typeof builtInHouse.foreshotsBy) => figuresThatCount({ ...builtInHouse, foreshotsBy });
  expect(by('share')).not.toContain('foreshotsVolume');
  expect(by('minutes')).toEqual(expect.arrayContaining(['foreshotsMinutes', 'foreshotsFlow']));
  expect(by('minutes').length).toBe(by('share').length + 1);
}); // prettier-ignore

const house = (given: object) => ({ ...builtInHouse, ...given }) as typeof builtInHouse;

test('malt, wort and gravity typed one after the other all stand as typed, in whichever order', () => {
  const typed = { maltPerMash: 6500, wortVolume: 32_000, originalGravity: 1.06 } as const;
  const names = Object.keys(typed) as (keyof typeof typed)[];
  for (const first of names)
    for (const second of names.filter((name) => name !== first)) {
      let [now, known] = [builtInHouse, nothingKnown];
      for (const name of [first, second, ...names.filter((each) => each !== first && each !== second)]) {
        const entered = enterFigure(now, name, typed[name], known);
        if ('problem' in entered) throw new Error(entered.problem);
        [now, known] = [entered.house, withGiven(known, name, 'measured')];
        for (const done of Object.keys(known.given) as (typeof first)[]) expect(now[done], `${name} ${done}`).toBe(typed[done]); // prettier-ignore
      }
      expect(now.holds).toBe('efficiency');
    }
});

test('what is not known gives way before what is, and a known final gravity stays', () => {
  const before = house({ finalGravity: 0.997 });
  const volumeKnown = enterFigure(before, 'originalGravity', 1.06, knowing('wortVolume', 'finalGravity'));
  expect(volumeKnown).toMatchObject({ gives: 'maltPerMash', house: { wortVolume: 7500, originalGravity: 1.06, finalGravity: 0.997 } }); // prettier-ignore
  const maltKnown = enterFigure(before, 'originalGravity', 1.06, knowing('maltPerMash'));
  expect(maltKnown).toMatchObject({
    house: { maltPerMash: kilograms(1500), originalGravity: gravity(1.06) },
  });
  expect('gives' in maltKnown).toBe(false);
  if ('problem' in maltKnown) throw new Error(maltKnown.problem);
  // More gravity from the same extract fills less: 7,500 L × 0.058 / 0.060 by the rule of gravity points, to half a per cent.
  expect(maltKnown.house.wortVolume / (7500 * (58 / 60))).toBeCloseTo(1, 2);
  expect(maltKnown.house.finalGravity).not.toBe(0.997);
});

test('readings that cannot be together are refused in a sentence', () => {
  const known = knowing('maltPerMash', 'wortVolume');
  expect(enterFigure(builtInHouse, 'originalGravity', 1.1, known)).toHaveProperty(
    'problem',
    expect.stringContaining('it cannot hold more than all of it'),
  );
  expect(enterFigure(builtInHouse, 'heartEnd', 400, known)).toHaveProperty(
    'problem',
    expect.stringContaining('“400” was given'),
  );
  expect(enterFigure(house({ holds: 'readings' }), 'wortVolume', quantity('volume20', 7000), nothingKnown)).toMatchObject({ gave: [] }); // prettier-ignore
});

test('a figure that gave way is no longer called measured, and is again once it is typed', () => {
  const typed = afterTyping(afterTyping(nothingKnown, 'wortVolume', []), 'originalGravity', ['wortVolume', 'finalGravity']);
  expect(typed.given).toEqual({ wortVolume: 'follows', originalGravity: 'measured' });
  expect(afterTyping(typed, 'wortVolume', ['originalGravity']).given).toEqual({ wortVolume: 'measured', originalGravity: 'follows' });
}); // prettier-ignore

test('yeast that nobody has given goes with the malt; what was given stays', () => {
  const typing = (known: Known) => {
    const entered = enterFigure(builtInHouse, 'maltPerMash', 3000, known);
    return withYeast(entered, builtInHouse, 'maltPerMash', known);
  };
  // By hand: twice the malt, twice the yeast.
  expect(typing(knowing('maltPerMash'))).toMatchObject({ house: { yeast: 2 * builtInHouse.yeast } });
  expect(typing(knowing('maltPerMash'))).toMatchObject({ gave: expect.arrayContaining([{ figure: 'yeast', from: builtInHouse.yeast, to: 2 * builtInHouse.yeast }]) });
  expect(typing(knowing('maltPerMash', 'yeast'))).toMatchObject({ house: { yeast: builtInHouse.yeast } });
}); // prettier-ignore

test('three readings of a mash stand as given, and an extract that nobody has given follows from them', () => {
  // 33,500 L at 1.060 hold about 5,225 kg of extract: 33,500 × 0.9982 × 1.060 × 14.74 %, by the sugar table of NBS Circular C440.
  const extract = 33_500 * 0.9982 * 1.06 * 0.1474;
  const sizes = { maltPerMash: kilograms(6500), wortVolume: litres20(33_500) };
  const before = { ...builtInHouse, ...sizes, originalGravity: gravity(1.056) };
  const known = knowing('maltPerMash', 'wortVolume');
  const entered = enterFigure(before, 'originalGravity', 1.06, known);
  if ('problem' in entered) throw new Error(entered.problem);
  expect(entered.house).toMatchObject({ ...sizes, originalGravity: 1.06, holds: builtInHouse.holds });
  expect(entered.gave.map(({ figure }) => figure)).toEqual(['solubleExtract']);
  const efficiency = line(before);
  if ('refused' in efficiency) throw new Error(efficiency.refused);
  expect((entered.house.solubleExtract * 65 * efficiency.mash.efficiency) / 100 / extract).toBeCloseTo(1, 2); // the table is of brix, read to two places
  expect(
    enterFigure(before, 'originalGravity', 1.06, knowing('maltPerMash', 'wortVolume', 'solubleExtract')),
  ).toHaveProperty('problem', expect.stringContaining('of the extract that the malt has'));
});

test('a house that holds its readings is not refused by an extract that nobody has given either', () => {
  const sizes = { maltPerMash: kilograms(6500), wortVolume: litres20(33_500) };
  const before = { ...builtInHouse, ...sizes, originalGravity: gravity(1.056), holds: 'readings' } as const;
  const entered = enterFigure(before, 'originalGravity', 1.06, knowing('maltPerMash', 'wortVolume'));
  expect(entered).toMatchObject({ house: { ...sizes, originalGravity: 1.06, holds: 'readings' } });
  expect(enterFigure(before, 'originalGravity', 1.06, knowing('solubleExtract'))).toHaveProperty('problem');
});

test('readings that the malt can hold stand as given, and the efficiency follows', () => {
  const known = knowing('maltPerMash', 'wortVolume', 'finalGravity');
  const entered = enterFigure(builtInHouse, 'originalGravity', 1.055, known);
  expect(entered).toMatchObject({ gave: [], gives: 'efficiency', house: { originalGravity: 1.055, solubleExtract: builtInHouse.solubleExtract } }); // prettier-ignore
});

test('a house with a name can hold its readings', () => {
  expect(enterFigure(builtInHouse, 'holds', 'readings', nothingKnown)).toMatchObject({
    house: { holds: 'readings' },
  });
});
