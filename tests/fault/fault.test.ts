// The fault desk: what is planted can be told from everything else, by readings whose physics is checked by other ways.
import { describe, expect, test } from 'vitest';
import { cheapestReadings, leftOpen, tellsApart } from '../../src/core/fault/decide.ts';
import type { Truth } from '../../src/core/fault/truth.ts';
import { line, type Line } from '../../src/core/line/line.ts';
import { benches } from '../../src/fault/benches.ts';
import {
  readingInWords,
  complaintOf,
  drawFault,
  errorOf,
  truthOf,
  supposedTruths,
  valueInWords,
} from '../../src/fault/draw.ts';
import { readDone, wasShown, withDone, MOST_CASES_KEPT } from '../../src/fault/kept.ts';
import { faultLine, faultOfLink, linkOfFault } from '../../src/fault/link.ts';
import { readingsHad, markFault } from '../../src/fault/mark.ts';
import { minutes } from '../../src/fault/minutes.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { injections, nested, notNumbers } from '../hostile-texts.ts';

const here = line(builtInHouse) as Line;
const cases = Array.from({ length: 300 }, (_, i) => drawFault(i + 1, here));
const benchOf = (id: string) => benches.find((bench) => bench.id === id)!;
const truth = (bench: string, cause: string, size = 0.5): Truth => {
  const made = benchOf(bench).of(here)({ cause, size });
  if ('refused' in made) throw new Error(String(made.refused));
  return made as Truth;
};

describe('declared', () => {
  test('twelve faults and more over four benches, each with a first thing to do that does no harm, and each bench with things that do', () => {
    expect(benches).toHaveLength(4);
    expect(
      benches.flatMap(({ causes }) => causes).filter(({ id }) => id !== 'nothing').length,
    ).toBeGreaterThan(12);
    for (const { causes, firsts, readings } of benches) {
      expect(new Set(causes.map(({ first }) => first)).size).toBe(causes.length);
      for (const { first } of causes)
        expect(firsts.find(({ id }) => id === first)).toMatchObject({ says: expect.any(String) });
      for (const { first } of causes) expect(firsts.find(({ id }) => id === first)!.harms).toBeUndefined();
      expect(firsts.filter(({ harms }) => harms).length).toBeGreaterThan(1);
      expect(causes.filter(({ id }) => id === 'nothing')).toHaveLength(1);
      expect(readings.filter(({ minutes }) => minutes === 0)).toHaveLength(1);
    }
  });
});

describe('what a reading finds', () => {
  test('every answer is a sentence with its figure and unit, at the fault and in health', () => {
    for (const each of cases)
      for (const reading of each!.readings)
        for (const shown of [reading.shown, reading.usual]) {
          const says = readingInWords({ ...reading, shown });
          expect(says).toMatch(/^[A-Z].{12,}[^ .:;]\.$/);
          expect(says).not.toMatch(/:|undefined|NaN|−/);
          expect(says).toContain(valueInWords(reading, shown).replace('−', ''));
          expect(reading.asks).not.toContain(':');
        }
  });
  test('the meter at a leaking joint speaks of the lower explosive limit; a receiver that sank holds less', () => {
    const { readings } = drawFault(26, here)!;
    expect(readingInWords(readings.find(({ id }) => id === 'meter')!)).toBe(
      'At the joints the vapour meter shows at most 26 % of the lower explosive limit.',
    );
    const rounds = readings.find(({ id }) => id === 'rounds')!;
    expect(readingInWords({ ...rounds, shown: -18 })).toBe(
      'The feints receiver holds 18 % less pure alcohol than four rounds ago.',
    );
    expect(readingInWords({ ...rounds, shown: 4 })).toBe(
      'The feints receiver holds 4 % more pure alcohol than four rounds ago.',
    );
  });
  test('each fault is confirmed by a reading that leaves its usual, or the log, by more than both errors', () => {
    const log: Readonly<Record<string, string>> = {
      redip: 'volume',
      cooled: 'glass',
      degassed: 'glass',
      bench: 'strength',
    };
    for (const bench of benches)
      for (const { id: cause, confirms } of bench.causes) {
        expect(confirms.length > 0, cause).toBe(cause !== 'nothing');
        for (const id of confirms)
          for (const size of [0, 0.5, 1]) {
            const [wrong, well] = [truth(bench.id, cause, size), truth(bench.id, 'nothing')];
            const twice =
              2 *
              errorOf(
                bench.readings.find((each) => each.id === id)!,
                well[id]!,
              );
            const isOff = Math.abs(wrong[id]! - well[id]!) > twice;
            const isOffLog = Math.abs(wrong[id]! - (wrong[log[id]!] ?? wrong[id]!)) > twice;
            expect(isOff || isOffLog, `${bench.id}, ${cause}: ${id}`).toBe(true);
          }
      }
  });
});

describe('three hundred cases', () => {
  test('each number draws one, and the same again', () => {
    expect(cases.filter((each) => each === undefined)).toEqual([]);
    for (const seed of [1, 77, 300]) expect(truthOf(drawFault(seed, here)!.readings)).toEqual(truthOf(cases[seed - 1]!.readings));
  });
  test('every cause comes, and nothing wrong in about one of seven', () => {
    const came = new Set(cases.map((each) => `${each!.bench.id}/${each!.cause.id}`));
    expect([...came].sort()).toEqual(benches.flatMap(({ id, causes }) => causes.map((each) => `${id}/${each.id}`)).sort());
    const healthy = cases.filter((each) => each!.cause.id === 'nothing').length;
    expect(healthy).toBeGreaterThan(20);
    expect(healthy).toBeLessThan(70);
  });
  test('what everybody sees leaves three causes open, and all readings only one', () => {
    for (const each of cases) {
      const { readings, supposed, cause } = each!;
      expect(leftOpen(readings.filter(({ minutes }) => minutes === 0), truthOf(readings), supposed).length).toBeGreaterThan(2);
      expect(leftOpen(readings, truthOf(readings), supposed)).toEqual([cause.id]);
    }
  });
  test('the cheapest readings tell the cause from every other, by more than the error, at sizes between those that were looked at', () => {
    const finer = new Map(benches.map((bench) => [bench.id, supposedTruths(bench, here, Array.from({ length: 12 }, (_, i) => i / 11))!]));
    for (const each of cases) {
      const { readings, least, bench, cause, supposed } = each!;
      const found = truthOf(readings);
      const had = [...readings.filter(({ minutes }) => minutes === 0), ...least];
      expect([each!.seed, leftOpen(had, found, supposed)]).toEqual([each!.seed, [cause.id]]);
      for (const other of finer.get(bench.id)!.filter((one) => one.cause !== cause.id))
        expect(had.some(({ id, error }) => other.ends.every((end) => Math.abs(found[id]! - end[id]!) > error)), `case ${each!.seed}, ${other.cause}`).toBe(true);
    }
  });
  test('no dearer set is called the least: taking any reading out of it leaves a cause open', () => {
    for (const each of cases) {
      const { readings, least, supposed } = each!;
      const free = readings.filter(({ minutes }) => minutes === 0);
      for (const out of least)
        expect(leftOpen([...free, ...least.filter((one) => one !== out)], truthOf(readings), supposed).length).toBeGreaterThan(1);
    }
  });
  test('what is before the trainee names neither the cause nor the first thing to do', () => {
    for (const each of cases) {
      const says = complaintOf(each!).toLowerCase();
      expect(says).not.toContain('undefined');
      for (const word of ['leak', 'set bed', 'infect', 'yeast', 'thermometer', 'condenser', 'coarse']) expect(says).not.toContain(word);
    }
  });
  test('a reading that confirms the fault, or looks for a danger, takes no points beside the least', () => {
    for (const each of cases) {
      const { bench, cause, least, readings } = each!;
      const free = readings.filter(({ id, isDanger }) => isDanger || cause.confirms.includes(id)).map(({ id }) => id);
      const answer = { cause: cause.id, first: cause.first };
      for (const id of [...free, ...free.flatMap((one) => free.map((other) => `${one} ${other}`))])
        expect(markFault(each!, { ...answer, asked: [...least.map((one) => one.id), ...id.split(' ')] }).total, `${bench.id}, ${cause.id}: ${id}`).toBe(100);
    }
  });
  test('the meter alone calls the leak of case 26, though two cheap looks at the log would do by elimination', () => {
    const leak = drawFault(26, here)!;
    expect(leak.cause.id).toBe('joint');
    expect(leak.least.map(({ id, minutes }) => [id, minutes])).toEqual([['safe', 1], ['pumped', 3]]);
    const answer = { cause: 'joint', first: 'steam-clear' };
    expect(markFault(leak, { ...answer, asked: ['meter'] })).toMatchObject({ total: 100, spent: 6 });
    expect(markFault(leak, { ...answer, asked: ['safe', 'pumped', 'meter', 'vent'] })).toMatchObject({ total: 100, spent: 16, least: 16 });
    // 40 minutes of gauging beside 6 of the meter: needed are 4 and 6, so 80 + 20 × 10 ÷ 46 = 84.3.
    expect(markFault(leak, { ...answer, asked: ['meter', 'balance'] }).total).toBe(84);
    expect(markFault(leak, { ...answer, asked: ['meter', 'balance'] }).cost).toBeCloseTo(4.348, 3); // 20 × 10 ÷ 46
  });
  test('causes are offered under three heads and more, as many as one desk has', () => {
    for (const { causes } of benches) {
      const groups = new Set(causes.map(({ group }) => group));
      expect(groups.size).toBeGreaterThan(2);
      expect(groups.size).toBeLessThan(causes.length - 2);
      expect(causes.filter(({ group }) => group === 'None of these').map(({ id }) => id)).toEqual(['nothing']);
    }
  });
  test('other houses have cases too', () => {
    const other = line({ ...builtInHouse, yearsInWood: 4, fermentationHours: 60, setTemperature: 22, alcoholLoss: 3, maltPerMash: 3000, wortVolume: 15000 } as never) as Line;
    expect('refused' in other).toBe(false);
    for (let seed = 1; seed <= 30; seed++) expect(drawFault(seed, other)?.seed).toBe(seed);
  });
}); // prettier-ignore

describe('the physics by another way', () => {
  test('wort of 1.0553 reads about 6 thousandths low at 40 °C, as the plant chapter has 1.054 for 1.060', () => {
    const { glass, cooled } = truth('mash', 'warm-glass', 1); // 39 °C
    expect(cooled! - glass!).toBeGreaterThan(0.0045);
    expect(cooled! - glass!).toBeLessThan(0.0065);
  });
  test('a dip read short by 6 % loses 6 % of the extract in the log and none in the washback', () => {
    const [wrong, well] = [truth('mash', 'dip', 0), truth('mash', 'nothing')];
    expect(wrong['extract']! / well['extract']!).toBeCloseTo(0.94, 6);
    expect(wrong['redip']).toBeCloseTo(well['volume']!, 6);
  });
  test('a twentieth of the yeast is ln 20 ÷ 0.2 = 15 h behind, less what it makes up', () => {
    // By the logistic of half 16 h and 0.2 1/h: at 28 h the house has fallen 1 ÷ (1 + e^−2.4) = 0.917 of its way, one 15 h behind 0.355.
    const part = ({ glass }: Truth) => (1.058 - glass!) / (1.058 - 0.998);
    expect(part(truth('washback', 'nothing'))).toBeCloseTo(0.917, 1);
    expect(part(truth('washback', 'little', 0))).toBeLessThan(0.4); // colder besides, so slower than that alone
    expect(part(truth('washback', 'little', 0))).toBeGreaterThan(0.2);
  });
  test('water from the cooler: points of gravity go down as the volume goes up', () => {
    const wrong = truth('washback', 'water', 1); // 12 % of it is water
    expect((wrong['original']! - 1) / 0.058).toBeCloseTo(0.88, 1);
    expect(wrong['redip']! / 7500).toBeCloseTo(1 / 0.88, 6);
  });
  test('alcohol that leaves by a joint is what the balance misses, and the heart with it', () => {
    const [wrong, well] = [truth('still', 'joint', 1), truth('still', 'nothing')]; // 8 % of the vapour
    expect(wrong['heart']! / well['heart']!).toBeCloseTo(0.92, 6);
    expect(wrong['balance']).toBeGreaterThan(7.5);
    expect(wrong['balance']).toBeLessThan(8);
    expect(well['balance']).toBeCloseTo(0, 6);
  });
  test('a foul condenser lets its water go cooler, a dry one hotter, and both let hot spirit come', () => {
    const [foul, dry, well] = [truth('still', 'scale'), truth('still', 'thirsty'), truth('still', 'nothing')];
    expect(foul['leaves']).toBeLessThan(well['leaves']!);
    expect(dry['leaves']).toBeGreaterThan(well['leaves']!);
    for (const one of [foul, dry]) expect(one['safe']).toBeGreaterThan(well['safe']! + 20);
  });
  test('feints that are cut early: each round gives less back, and the heart is smaller', () => {
    const [wrong, well] = [truth('still', 'feints', 1), truth('still', 'nothing')];
    expect(wrong['rounds']).toBeLessThan(-15);
    expect(wrong['heart']).toBeLessThan(well['heart']!);
  });
  test('a cask filled 10 L short is light by a twentieth, at a year and ever after', () => {
    const wrong = truth('casks', 'short', 0);
    expect(wrong['light']).toBeCloseTo(5, 6);
    expect(wrong['first']).toBeCloseTo(5, 6);
    expect(wrong['ticket']).toBe(190);
  });
  test('a leak of 0.4 L for 24 months: 9.6 L, less what those litres would have lost to the air', () => {
    const lost = truth('casks', 'nothing')['volume']! - truth('casks', 'leak', 0)['volume']!;
    expect(lost).toBeGreaterThan(9.3);
    expect(lost).toBeLessThan(9.6);
  });
  test('a warm dry store: less volume, more strength', () => {
    const [wrong, well] = [truth('casks', 'hot'), truth('casks', 'nothing')];
    expect(wrong['volume']).toBeLessThan(well['volume']!);
    expect(wrong['strength']).toBeGreaterThan(well['strength']!);
  });
});

describe('deciding', () => {
  const reading = (id: string, minutes: number) => ({ id, minutes, error: 1 });
  const at = (cause: string, a: number, b: number) => ({ cause, ends: [{ a, b }, { a, b }] as const });
  test('two truths are told apart from twice the error on', () => {
    expect(tellsApart(reading('a', 1), { a: 3.1, b: 0 }, at('other', 1, 0))).toBe(true);
    expect(tellsApart(reading('a', 1), { a: 2.9, b: 0 }, at('other', 1, 0))).toBe(false);
    expect(tellsApart(reading('a', 1), { a: 5, b: 0 }, { cause: 'wide', ends: [{ a: 9 }, { a: 1 }] })).toBe(false);
  });
  test('the cheapest set is found, or none', () => {
    const supposed = [at('own', 9, 9), at('x', 0, 9), at('y', 9, 0)];
    expect(cheapestReadings([reading('a', 3), reading('b', 4)], 'own', { a: 9, b: 9 }, supposed)!.map(({ id }) => id)).toEqual(['a', 'b']);
    expect(cheapestReadings([reading('a', 3)], 'own', { a: 9, b: 9 }, supposed)).toBeUndefined();
    expect(cheapestReadings([reading('a', 3), reading('b', 4)], 'own', { a: 9, b: 9 }, supposed.slice(0, 2))!.map(({ id }) => id)).toEqual(['a']);
  });
}); // prettier-ignore

describe('marking', () => {
  const of = cases.find((each) => each!.least.length > 0 && each!.cause.id !== 'nothing')!;
  const asked = of.least.map(({ id }) => id);
  const all = of.readings.map(({ id }) => id);
  test('the least and both right is a hundred; all readings cost in their part', () => {
    expect(markFault(of, { asked, cause: of.cause.id, first: of.cause.first }).total).toBe(100);
    const dear = markFault(of, { asked: all, cause: of.cause.id, first: of.cause.first });
    expect(dear.total).toBe(Math.round(80 + (20 * dear.least) / dear.spent));
    expect(dear.total).toBeLessThan(100);
  });
  test('a guess scores nothing, whatever comes first, and so does one by a reading that bears on nothing', () => {
    for (const each of cases) {
      const answer = { cause: each!.cause.id, first: each!.cause.first };
      expect(markFault(each!, { ...answer, asked: [] })).toMatchObject({ total: 0, bears: false, isCause: true });
      const before = markFault(each!, { ...answer, asked: [] }).open.length;
      for (const { id } of readingsHad(each!, each!.readings.map((one) => one.id))) {
        const { total, open } = markFault(each!, { ...answer, asked: [id] });
        if (open.length === before) expect(total).toBe(0);
        else expect(total).toBeGreaterThanOrEqual(80);
      }
    }
  }); // prettier-ignore
  test('a reading that rules out the cause named is said to speak against it, though it told no open causes apart', () => {
    let met = 0;
    for (const each of cases)
      for (const reading of each!.readings.filter(({ minutes }) => minutes > 0))
        for (const { id } of each!.bench.causes) {
          const found = truthOf(each!.readings);
          const isAgainst = each!.supposed.filter((one) => one.cause === id).every((one) => tellsApart(reading, found, one));
          const made = markFault(each!, { asked: [reading.id], cause: id, first: each!.cause.first });
          expect(made.isAgainst).toBe(isAgainst);
          if (isAgainst) expect(made.isCause).toBe(false);
          if (isAgainst && !made.bears) met++;
        }
    expect(met).toBeGreaterThan(0);
  }); // prettier-ignore
  test('a wrong cause keeps the first act’s points; harm first scores nothing', () => {
    expect(markFault(of, { asked, cause: 'no', first: of.cause.first }).total).toBe(30);
    expect(markFault(of, { asked, cause: of.cause.id, first: 'no' }).total).toBe(70);
    const harms = of.bench.firsts.find((each) => each.harms)!;
    expect(markFault(of, { asked, cause: of.cause.id, first: harms.id })).toMatchObject({
      total: 0,
      harm: harms.harms,
    });
    expect(markFault(of, { asked, cause: 'no', first: harms.id }).total).toBe(0);
  });
  test('a wrong cause still open earns the part that the readings ruled out, by a count of its own', () => {
    let met = 0;
    for (const each of cases) {
      const { readings, supposed, cause, bench } = each!;
      const found = Object.fromEntries(readings.map(({ id, shown }) => [id, shown]));
      const causesLeft = (had: typeof readings) =>
        bench.causes.filter(({ id }) =>
          supposed.some(
            (one) => one.cause === id && had.every((reading) => !tellsApart(reading, found, one)),
          ),
        );
      const free = readings.filter(({ minutes }) => minutes === 0);
      const atFirst = causesLeft(free).length;
      for (const reading of readings.filter(({ minutes }) => minutes > 0)) {
        const left = causesLeft([...free, reading]);
        const wrong = left.find(({ id }) => id !== cause.id);
        if (!wrong || left.length === atFirst) continue;
        met++;
        const safe = bench.firsts.find(({ id, harms }) => !harms && id !== cause.first)!.id;
        const points = Math.round((20 * (atFirst - left.length)) / (atFirst - 1));
        const answer = { asked: [reading.id], cause: wrong.id };
        expect(markFault(each!, { ...answer, first: safe }).total).toBe(points);
        expect(markFault(each!, { ...answer, first: cause.first }).total).toBe(30 + points);
        expect(points).toBeLessThan(20); // so a wrong cause stays below the right one
        expect(
          markFault(each!, { ...answer, first: bench.firsts.find(({ harms }) => harms)!.id }).total,
        ).toBe(0);
        expect(markFault(each!, { ...answer, asked: [], first: safe }).total).toBe(0);
        const ruled = bench.causes.find(({ id }) => !left.some((one) => one.id === id))!;
        expect(markFault(each!, { ...answer, cause: ruled.id, first: safe }).total).toBe(0);
      }
    }
    expect(met).toBeGreaterThan(20);
  });
});

describe('links and what is kept', () => {
  test('a link there and back, and what is none', () => {
    expect(faultOfLink(linkOfFault(412))).toBe(412);
    expect(faultOfLink('')).toBeUndefined();
    for (const bad of ['#fault=0', '#fault=1000000', '#fault=', '#fault=1e3', '#fault=-4', '#fault=7x']) expect(faultOfLink(bad)).toHaveProperty('problem');
  });
  test('the line of a result has the form that the class book takes, and a name on one line', () => {
    const mark = { total: 86, spent: 10, least: 7, named: 'The cask leaks', isCause: true, harm: undefined, isAgain: false };
    expect(faultLine('Åsa', 26, '0G4RJ8T', mark, '2026-05-14')).toBe('Åsa: Case 26, house 0G4RJ8T: 86 of 100. 10 min asked for, 7 needed; named “The cask leaks” (right), 2026-05-14');
    expect(faultLine('', 26, '0G4RJ8T', { ...mark, total: 0, isCause: false, harm: 'The vapour at the bung burns.', isAgain: true }, '2026-05-14')).toBe('Case 26, house 0G4RJ8T: 0 of 100. 10 min asked for, 7 needed; named “The cask leaks” (wrong); a dangerous act first; second go or later, 2026-05-14');
    expect(faultLine('  ', 26, '0G4RJ8T', mark, '2026-05-14')).toMatch(/^Case 26, house 0G4RJ8T: 86 of 100\. /);
    expect(faultLine('Åsa:\n Berg ', 26, '0G4RJ8T', mark, '2026-05-14')).toMatch(/^Åsa Berg: Case 26/);
    expect(faultLine('x'.repeat(200), 1, '0G4RJ8T', mark, '2026-05-14').indexOf(':')).toBe(60);
  });
  test('what cannot be read is told from what can', () => {
    const one = { seed: 7, total: 80, day: '2026-05-14' };
    expect(readDone(JSON.stringify([one]))).toEqual([one]);
    for (const text of [...injections, ...notNumbers.filter((each) => each !== '[]'), nested(50_000), '{}', '[1]', '[null]', JSON.stringify([{ ...one, total: 101 }]), JSON.stringify([{ ...one, seed: 0 }])]) expect(readDone(text)).toBeUndefined();
    const many = Array.from({ length: MOST_CASES_KEPT }, (_, i) => ({ ...one, seed: i + 1000 }));
    expect(withDone(many, { ...one, house: '0G4RJ8T' })).toHaveLength(MOST_CASES_KEPT);
  });
  test('a case whose answer was shown is known again in its house, and keeps the points of its first go', () => {
    const first = { seed: 417, total: 0, day: '2026-05-14', house: '0G4RJ8T' };
    expect(wasShown([], 417, '0G4RJ8T')).toBe(false);
    expect(wasShown([first], 417, '0G4RJ8T')).toBe(true);
    expect(wasShown([first], 417, '0000000')).toBe(false); // another house has another case
    expect(wasShown([first], 418, '0G4RJ8T')).toBe(false);
    expect(wasShown([{ seed: 417, total: 0, day: '2026-05-14' }], 417, '0G4RJ8T')).toBe(true); // kept before houses were
    expect(withDone([first], { ...first, total: 100 })).toEqual([first]);
    expect(readDone(JSON.stringify([first]))).toEqual([first]);
    for (const house of ['', 'x', '0g4rj8t', 7, null]) expect(readDone(JSON.stringify([{ ...first, house }]))).toBeUndefined();
  });
  test('minutes in words', () => {
    expect([0, 1, 8].map(minutes)).toEqual(['0 minutes', '1 minute', '8 minutes']);
  });
}); // prettier-ignore
