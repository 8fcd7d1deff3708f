// The cross-check: its arithmetic against closed forms, its findings in houses where the truth is known, and its sentences.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chanceAbove, normalLimit } from '../../src/core/numerics/chi-square.ts';
import { leastSquares } from '../../src/core/numerics/orthogonal.ts';
import {
  quotableFigures,
  quotableNames,
  type Quoted,
  type QuotableName,
  type Said,
} from '../../src/core/line/quoted.ts';
import { reconcile, type Reconciliation } from '../../src/core/line/reconcile.ts';
import { relationNames, relations, type Relation, type Values } from '../../src/core/line/relations.ts';
import { spoken } from '../../src/core/line/spoken.ts';
import { rangeInWords, sentences } from '../../src/core/line/verdict.ts';
import { answer, between } from './draw.ts';
import { tally } from './planted.ts';
import { chanceFrom, houses, truthOf } from './quoted-houses.ts';

const exact = (value: number): Said => ({ as: 'exact', value });
const about = (value: number, spread?: number): Said => ({ as: 'about', value, ...(spread && { spread }) });
const judged = (found: Reconciliation, figure: QuotableName) =>
  found.figures.find((each) => each.figure === figure)!;
const findings = (found: Reconciliation) => Object.fromEntries(found.figures.map(({ figure, finding }) => [figure, finding])); // prettier-ignore

describe('the numerics', () => {
  // 5 % points of the chi-square table that every statistics text prints, to three decimals; from memory.
  test.each([[3.841, 1], [5.991, 2], [7.815, 3], [18.307, 10], [124.342, 100]])('5 in a hundred of chi-square lie above %d with %d degrees of freedom', (sum, freedom) => {
    expect(chanceAbove(sum, freedom)).toBeCloseTo(0.05, 4);
  }); // prettier-ignore

  test('with two degrees of freedom chi-square is an exponential, with four nearly so', () => {
    for (const x of [0.01, 1, 3, 5, 20, 300]) {
      expect(chanceAbove(x, 2) / Math.exp(-x / 2)).toBeCloseTo(1, 11);
      expect(chanceAbove(x, 4) / (Math.exp(-x / 2) * (1 + x / 2))).toBeCloseTo(1, 11);
    }
    expect(chanceAbove(0, 3)).toBe(1);
  });

  test('limits of the normal law', () => {
    expect(normalLimit(0.05)).toBeCloseTo(1.959964, 5); // table, from memory
    expect(normalLimit(0.01)).toBeCloseTo(2.575829, 5);
  });

  // A stream is split and the parts are mixed again, every flow measured: the usual first example of texts on
  // data reconciliation, with numbers of our own. Closed form: x − V Aᵀ (A V Aᵀ)⁻¹ A x, worked by hand for
  // A = [1 −1 −1 0; 0 1 1 −1], V = diag(4, 1, 1, 4): A V Aᵀ = [6 −2; −2 6], its inverse [6 2; 2 6] ÷ 32.
  test('flows round a splitter and a mixer come out as the closed form has them', () => {
    const [measured, spreads] = [[101.9, 64.45, 34.65, 98.88], [2, 1, 1, 2]];
    const [first, second] = [101.9 - 64.45 - 34.65, 64.45 + 34.65 - 98.88]; // A x = 2.80, 0.22
    const [p, q] = [(6 * first + 2 * second) / 32, (2 * first + 6 * second) / 32];
    const closed = [101.9 - 4 * p, 64.45 + p - q, 34.65 + p - q, 98.88 + 4 * q];
    const rows = spreads.map((s, i) => spreads.map((_, j) => (i === j ? 1 / s : 0)));
    const balances = [[1, -1, -1, 0], [0, 1, 1, -1]].map((row) => row.map((a) => a * 1e6)); // prettier-ignore
    const { solution, covariance } = leastSquares([...rows, ...balances], [...measured.map((m, i) => m / spreads[i]!), 0, 0]);
    solution.forEach((flow, i) => expect(flow).toBeCloseTo(closed[i]!, 7));
    expect(solution[0]! - solution[1]! - solution[2]!).toBeCloseTo(0, 7);
    // Covariance of the first flow: 4 − 4·(6 ÷ 32)·4 = 1.
    expect(covariance[0]![0]).toBeCloseTo(1, 7);
  }); // prettier-ignore

  test('an unknown that no row fixes is told of', () => {
    expect(() => leastSquares([[1, 0], [2, 0]], [1, 2])).toThrow(RangeError); // prettier-ignore
  });
});

// ln week = ln mash + ln mashes: one balance, so each figure moves by its own variance over the sum of the three.
test('one balance of three figures comes out as the closed form has it', () => {
  const quoted: Quoted = { maltPerMash: about(2000, 40), mashesPerWeek: about(6, 0.06), maltPerWeek: about(12_600, 378) };
  const parts = [0.02, 0.01, 0.03];
  const sum = parts.reduce((total, part) => total + part ** 2, 0);
  const gap = Math.log(12_600 / 12_000);
  const found = answer(reconcile(quoted));
  expect(found.overall.freedom).toBe(1);
  expect(found.overall.statistic).toBeCloseTo(gap ** 2 / sum, 4);
  expect(judged(found, 'maltPerMash').adjusted.value).toBeCloseTo(2000 * Math.exp((gap * 0.02 ** 2) / sum), 1);
  expect(judged(found, 'maltPerWeek').adjusted.value).toBeCloseTo(12_600 * Math.exp((-gap * 0.03 ** 2) / sum), 0);
  for (const { test } of found.figures) expect(Math.abs(test!)).toBeCloseTo(gap / Math.sqrt(sum), 4);
  const { fits } = judged(found, 'maltPerWeek');
  expect(fits!.value).toBeCloseTo(12_000, 0);
  expect(fits!.standard / 12_000).toBeCloseTo(Math.hypot(0.02, 0.01), 4);
}); // prettier-ignore

describe('what is counted', () => {
  test.each<[string, Quoted, number]>([
    ['one figure', { heartVolume: exact(5000) }, 0],
    ['two that have nothing to do with each other', { heartVolume: exact(5000), bottleSize: exact(70) }, 0],
    ['volume and strength', { heartVolume: exact(5000), heartStrength: exact(69) }, 0],
    ['volume, strength and alcohol', { heartVolume: exact(5000), heartStrength: exact(69), heartAlcohol: exact(3450) }, 1],
    ['two weeks and their year', { maltPerMash: about(2000), mashesPerWeek: about(6), maltPerWeek: about(12_000), weeksPerYear: about(46), maltPerYear: about(552_000) }, 2],
  ])('degrees of freedom: %s', (_, quoted, freedom) => {
    expect(answer(reconcile(quoted)).overall.freedom).toBe(freedom);
  }); // prettier-ignore

  test('a figure on which nothing bears is never called wrong, wherever it lies', () => {
    fc.assert(
      fc.property(fc.constantFrom(...quotableNames), between(0, 1), (name, part) => {
        const [low, high] = quotableFigures[name].range;
        const found = answer(reconcile({ [name]: exact(low + part * (high - low)) }));
        const { finding } = found.figures[0]!;
        expect(finding).toBe('not checkable');
      }),
    );
  });

  test('what follows from the figures is filled in, and nothing else', () => {
    const found = answer(reconcile({ heartVolume: exact(5000), heartStrength: exact(69), mashesPerWeek: exact(10) }));
    const filled = new Map(found.filled.map((each) => [each.figure, each]));
    expect(filled.get('heartAlcohol')!.value).toBeCloseTo(3450, 0);
    expect(filled.get('alcoholPerWeek')!.value).toBeCloseTo(34_500, -1);
    for (const name of ['alcoholPerYear', 'fillingStrength', 'casksPerWeek', 'bottlesPerCask', 'weeksPerYear', 'yearsInWood', 'originalGravity', 'finalGravity', 'alcoholLoss'] as const)
      expect(filled.has(name)).toBe(false);
  }); // prettier-ignore
});

describe('houses whose figures are true', () => {
  const drawn = houses(4000, 40).map(truthOf);
  const all = (truth: Values, names: readonly QuotableName[] = quotableNames): Quoted =>
    Object.fromEntries(names.map((name) => [name, exact(truth[name])]));

  test('the line keeps every relation within three of its spreads', () => {
    for (const truth of drawn)
      for (const name of relationNames) {
        const { sides, times = 1, spread, as, only }: Relation = relations[name];
        const [left, right] = sides(truth);
        const gap = (as === 'own' ? left - times * right : Math.log(left / (times * right))) / spread;
        expect(only === 'ceiling' ? Math.max(0, gap) : Math.abs(gap), name).toBeLessThan(3);
      }
  });

  test('all agree, and are hardly moved', () => {
    for (const truth of drawn) {
      const found = answer(reconcile(all(truth)));
      expect(found.settled).toBe(true);
      expect(new Set(Object.values(findings(found)))).toEqual(new Set(['agrees']));
      expect(found.suspects).toEqual([]);
      for (const { figure, value, adjusted, spread } of found.figures)
        expect(Math.abs(adjusted.value - value), figure).toBeLessThan(2.5 * spread);
    }
  });

  test('a figure left out is filled in to within its own range, nine times in ten or more', () => {
    let [within, told] = [0, 0];
    drawn.forEach((truth, i) => {
      const { pick } = chanceFrom(i);
      const name = pick(quotableNames);
      const found = answer(
        reconcile(
          all(
            truth,
            quotableNames.filter((each) => each !== name),
          ),
        ),
      );
      const filled = found.filled.find(({ figure }) => figure === name);
      if (!filled) return;
      told++;
      if (truth[name] >= filled.low && truth[name] <= filled.high) within++;
    });
    expect(told).toBeGreaterThan(25);
    expect(within / told).toBeGreaterThanOrEqual(0.9);
  });

  test('the order of quoting does not matter', () => {
    const truth = drawn[0]!;
    const quoted = Object.entries(all({ ...truth, heartVolume: truth.heartVolume * 1.2 }));
    const [one, other] = [quoted, quoted.toReversed()].map((list) => answer(reconcile(Object.fromEntries(list))));
    expect(other).toEqual(one);
  }); // prettier-ignore

  test('one more figure that fits exactly changes no finding', () => {
    for (const truth of drawn.slice(0, 15)) {
      const names: QuotableName[] = ['maltPerMash', 'mashesPerWeek', 'weeksPerYear', 'wortVolume', 'originalGravity', 'finalGravity', 'washStrength', 'heartVolume', 'heartStrength', 'alcoholPerWeek'];
      for (const by of [1, 1.3]) {
        const quoted = { ...all(truth, names), heartVolume: exact(truth.heartVolume * by) };
        const before = answer(reconcile(quoted));
        expect(judged(before, 'heartVolume').finding === 'agrees').toBe(by === 1);
        const adjusted = judged(before, 'maltPerMash').adjusted.value * judged(before, 'mashesPerWeek').adjusted.value;
        const after = answer(reconcile({ ...quoted, maltPerWeek: exact(adjusted) }));
        expect(findings(after)).toMatchObject(findings(before));
        expect(judged(after, 'maltPerWeek').finding).toBe('agrees');
      }
    }
  }); // prettier-ignore
});

describe('one figure moved', () => {
  test('with all figures quoted, the one moved by a fifth is found', () => {
    let [found, asked] = [0, 0];
    houses(9000, 40).forEach((house, i) => {
      const truth = truthOf(house);
      const name = chanceFrom(i).pick(['maltPerMash', 'wortVolume', 'washVolume', 'heartVolume', 'heartAlcohol', 'mashesPerWeek', 'casksPerWeek', 'alcoholPerWeek'] as const);
      const quoted = Object.fromEntries(quotableNames.map((each) => [each, exact(truth[each] * (each === name ? 1.2 : 1))]));
      const result = answer(reconcile(quoted));
      asked++;
      if (judged(result, name).finding === 'disagrees' && result.suspects[0]!.figure === name) found++;
      expect(result.figures.filter(({ figure, finding }) => figure !== name && finding === 'disagrees')).toEqual([]);
      const { needed } = result.suspects[0]!;
      if (result.suspects[0]!.figure === name) expect(Math.abs(needed.value / truth[name] - 1)).toBeLessThan(0.05);
    });
    expect(found / asked).toBeGreaterThan(0.9);
  }); // prettier-ignore

  test('the study in small: forty houses, twelve figures read from the book', () => {
    const sound = tally(20_000, 40, 0, 'exact');
    expect(sound.noticed).toBeLessThanOrEqual(3); // a twentieth of forty is two
    expect(sound.soundCalled).toBe(0);
    const gross = tally(20_000, 40, 0.2, 'exact');
    expect(gross.checkable).toBeGreaterThan(12);
    expect((gross.called + gross.doubted) / gross.checkable).toBeGreaterThan(0.7);
    expect(gross.first / gross.checkable).toBeGreaterThan(0.4);
    expect(gross.soundCalled / gross.sound).toBeLessThan(0.01);
  });
});

describe('a whole line as it is told', () => {
  // Common practice, no source: 9.4 t of malt, 42,500 L of wort, wash of 9 % vol, low wines of 22 % vol, cuts 74 and 62.5 % vol.
  const told: Quoted = {
    maltPerMash: exact(9400),
    wortVolume: exact(42_500),
    washStrength: exact(9),
    lowWinesStrength: exact(22),
    heartBegins: exact(74),
    heartEnds: exact(62.5),
    heartVolume: { as: 'range', low: 5500, high: 6000 },
  };

  test('six thousand litres hold more than the wash did, and what fits is told', () => {
    const found = answer(reconcile(told));
    const heart = judged(found, 'heartVolume');
    expect(heart.ends).toEqual({ low: 'fits', high: 'too high' });
    expect(heart.finding).toBe('doubtful');
    // By hand: 42,500 L at 9 % vol hold 3,825 L; at 69.4 % vol as a whole no more than 5,512 L, and a few hundredths are lost.
    expect(heart.fits!.value).toBeGreaterThan(5300);
    expect(heart.fits!.value).toBeLessThan(5512);
    expect(heart.fits!.low).toBeGreaterThan(5100);
    expect(heart.fits!.high).toBeLessThan(5650);
    expect(found.suspects[0]!.figure).toBe('heartVolume');
    const [broken] = found.broken;
    expect(broken).toMatchObject({ figure: 'heartVolume', end: 'high', quoted: 6000, relation: 'throughBothStills', impossible: true });
    expect(broken!.left).toBeGreaterThan(broken!.right);
    expect(sentences(found).join(' ')).toMatch(/6,000 L, the new spirit would hold more alcohol than the wash did.*5,[12]\d0 to 5,[56]\d0 L would fit\./);
    for (const { figure, finding } of found.figures)
      if (figure !== 'heartVolume') expect(finding, figure).not.toBe('disagrees');
  }); // prettier-ignore

  test('a heart that fits makes all agree', () => {
    const found = answer(reconcile({ ...told, heartVolume: about(5400) }));
    expect(found.suspects).toEqual([]);
    expect(sentences(found)[0]).toMatch(/agree\.$/);
  });

  test('a heart far too large is named, alone', () => {
    const found = answer(reconcile({ ...told, heartVolume: about(6600) }));
    expect(findings(found)).toMatchObject({
      heartVolume: 'disagrees',
      washStrength: 'agrees',
      wortVolume: 'agrees',
    });
  });
});

describe('a script whose store, years and bottles do not go together', () => {
  const rounded = (value: number): Said => ({ as: 'rounded', value });
  const found = answer(
    reconcile({
      casksPerYear: about(17_000),
      casksInStore: about(150_000),
      yearsInWood: rounded(12),
      bottlesPerCask: about(380),
      bottlesPerYear: about(9_000_000),
    }),
  );
  const said = sentences(found).join('\n');
  test('the sentences reckon with the figures as they were said', () => {
    // By hand: 17,000 × 12 = 204,000; 380 × 17,000 = 6,460,000.
    expect(said).toMatch(/150,000/);
    expect(said).toMatch(/204,000|6,460,000/);
    expect(said).not.toMatch(/150,0[1-9]|8,99\d,/);
  });
  test('a figure that the house sets is sent back to be checked, not put right by a sum', () => {
    expect(said).not.toMatch(/Years in wood: .* would fit/);
  });
  test('a range that can only be nothing is still told', () => {
    expect(rangeInWords('alcoholLoss', -3, -1)).toMatch(/^0(?:\.0+)? to 0(?:\.0+)? %$/);
  });
  test('nothing follows from figures that are in doubt', () => {
    expect(found.figures.some(({ finding }) => finding !== 'agrees')).toBe(true);
    expect(found.filled.map(({ figure }) => figure)).not.toContain('bottleSize');
  });
});

describe('three figures of one balance that break it', () => {
  const found = answer(
    reconcile({ maltPerMash: exact(2000), mashesPerWeek: exact(6), maltPerWeek: exact(15_000) }),
  );
  test('none is called wrong, for nothing tells which', () => {
    expect(new Set(Object.values(findings(found)))).toEqual(new Set(['doubtful']));
    expect(found.suspects.length).toBe(3);
    expect(found.overall.chance).toBeLessThan(1e-6);
  });
  test('each is told what would mend it', () => {
    const needed = (figure: QuotableName) => found.suspects.find((each) => each.figure === figure)!.needed.value;
    expect(needed('maltPerWeek')).toBeCloseTo(12_000, -1);
    expect(needed('mashesPerWeek')).toBeCloseTo(7.5, 2);
    expect(needed('maltPerMash')).toBeCloseTo(2500, 0);
    expect(sentences(found)[0]).toMatch(/nothing else quoted tells which/);
  }); // prettier-ignore
});

describe('figures that cannot be', () => {
  test.each<[string, unknown, RegExp]>([
    ['not a number', { maltPerMash: about(NaN) }, /^Malt a mash: /],
    ['below nothing', { wortVolume: exact(-5) }, /^Wort a mash: /],
    ['beyond all houses', { washStrength: exact(60) }, /^Wash strength: /],
    ['without end', { heartVolume: exact(Infinity) }, /^New spirit from a mash: /],
    ['a range upside down', { heartVolume: { as: 'range', low: 6000, high: 5500 } }, /^New spirit from a mash: the range .* does not rise/],
    ['a spread below nothing', { heartVolume: about(5000, -3) }, /^New spirit from a mash: its spread/],
    ['said in no way', { heartVolume: { as: 'perhaps', value: 5 } }, /^New spirit from a mash: /],
    ['nothing at all', { heartVolume: null }, /^New spirit from a mash: /],
    ['text', { heartVolume: exact('5000' as never) }, /^New spirit from a mash: /],
    ['a heart that ends before it begins', { heartBegins: exact(60), heartEnds: exact(70) }, /^Strength at which the heart ends is 70 % vol/],
    ['wort that grows heavier', { originalGravity: exact(1.03), finalGravity: exact(1.035) }, /^Final gravity is 1.035/],
    ['no such figure', { moonlight: exact(5) }, /“moonlight”/],
  ])('%s', (_, quoted, sentence) => {
    expect(reconcile(quoted as Quoted)).toEqual({ refused: expect.stringMatching(sentence) });
  }); // prettier-ignore

  test('whatever is quoted within the ranges gives findings and sentences without a hole', () => {
    const said = (name: QuotableName) => {
      const [low, high] = quotableFigures[name].range;
      return fc.tuple(fc.constantFrom('exact', 'about', 'rounded', 'range'), between(low, high), between(low, high)).map(
        ([as, a, b]): Said => (as === 'range' ? { as, low: Math.min(a, b), high: Math.max(a, b) + 1e-9 * high } : ({ as, value: a } as Said)),
      );
    };
    const some = fc.record(Object.fromEntries(quotableNames.map((name) => [name, said(name)])), { requiredKeys: [] });
    fc.assert(
      fc.property(some, (quoted) => {
        const found = reconcile(quoted as Quoted);
        if ('refused' in found) {
          expect(found.refused).toMatch(/\.$/);
          return;
        }
        expect(JSON.stringify(found)).not.toContain('null'); // NaN and Infinity become null
        for (const says of sentences(found)) {
          expect(says).toMatch(/^[A-Z].*\.$/);
          expect(says).not.toMatch(/NaN|undefined|Infinity|−/);
        }
      }),
      { numRuns: 25, endOnFailure: true },
    );
  }, 120_000); // prettier-ignore
});

describe('figures as they are said', () => {
  test.each<[QuotableName, number, string]>([
    ['heartVolume', 5511, 'just over five and a half thousand litres'],
    ['heartVolume', 5587, 'about five and a half thousand litres'],
    ['heartVolume', 5364, 'just over 5,350 litres'],
    ['wortVolume', 42_500, '42,500 litres'],
    ['washStrength', 8.93, 'just under 9 % vol'],
    ['washStrength', 9, '9 % vol'],
    ['fillingStrength', 63.5, '63.5 % vol'],
    ['spiritYield', 408.6, 'some 410 litres of pure alcohol a tonne'],
    ['maltPerMash', 1500, 'one and a half tonnes'],
    ['maltPerMash', 9400, '9.4 tonnes'],
    ['casksInStore', 10_430, 'just under ten and a half thousand casks'],
    ['casksPerWeek', 1, '1 cask'],
    ['originalGravity', 1.058, '1058'],
  ])('%s %d', (figure, value, says) => expect(spoken(figure, value)).toBe(says));

  test('what is said is never far from what is meant', () => {
    fc.assert(
      fc.property(fc.constantFrom('heartVolume', 'wortVolume', 'casksPerYear', 'bottlesPerYear', 'alcoholPerYear'), between(1, 8), (figure, power) => {
        const value = 10 ** power;
        const text = spoken(figure as QuotableName, value);
        const words = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];
        const spelt = words.findIndex((word) => new RegExp(`\\b${word}\\b`).test(text)) + 1;
        const number = spelt > 0 ? spelt + (/and a half/.test(text) ? 0.5 : 0) : Number(/[\d,.]+/.exec(text)![0].replaceAll(',', ''));
        const said = number * (/million/.test(text) ? 1e6 : /thousand/.test(text) ? 1000 : 1);
        expect(Math.abs(said / value - 1)).toBeLessThan(0.032);
        if (/just under/.test(text)) expect(value).toBeLessThan(said);
        if (/just over/.test(text)) expect(value).toBeGreaterThan(said);
      }),
    );
  }); // prettier-ignore
});
