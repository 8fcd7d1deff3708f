// The cross-check: its arithmetic against closed forms, its findings in houses where the truth is known, and its sentences.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chanceAbove, normalLimit } from '../../src/core/numerics/chi-square.ts';
import { leastSquares } from '../../src/core/numerics/householder.ts';
import {
  quotableFigures,
  quotableNames,
  type Quoted,
  type QuotableName,
  type SaidValue,
} from '../../src/core/cross-check/quoted.ts';
import { accusedFigures, reconcile, type Reconciliation } from '../../src/core/cross-check/reconcile.ts';
import {
  relationNames,
  relations,
  type Relation,
  type Values,
} from '../../src/core/cross-check/relations.ts';
import { spokenFigure } from '../../src/core/line/spoken.ts';
import { rangeInWords, findingSentences } from '../../src/core/cross-check/verdict.ts';
import { answer, between } from './draw.ts';
import { tally } from './planted.ts';
import { chanceFrom, houses, truthOf } from './quoted-houses.ts';

const exact = (value: number): SaidValue => ({ as: 'exact', value });
const about = (value: number, spread?: number): SaidValue => ({
  as: 'about',
  value,
  ...(spread && { spread }),
});
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
  expect(found.overall.statistic).toBeCloseTo(gap ** 2 / sum, 3); // what is usual of figures not quoted adds a few parts in a hundred thousand
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
        // What no malt can give is a bound that one figure breaks; every other figure alone stands.
        const limits = name === 'spiritYield' ? ['not checkable', 'cannot be'] : ['not checkable'];
        expect(limits).toContain(finding);
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
      const { finding, fits } = judged(result, name);
      if ((finding === 'disagrees' || finding === 'cannot be') && accusedFigures(result)[0] === name) found++;
      expect(result.figures.filter((each) => each.figure !== name && each.finding === 'disagrees')).toEqual([]);
      if (accusedFigures(result)[0] === name) expect(Math.abs(fits!.value / truth[name] - 1)).toBeLessThan(0.05);
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
    expect(findingSentences(found).join(' ')).toMatch(/6,000 L, the new spirit would hold more alcohol than the wash did.*5,[12]\d0 to 5,[56]\d0 L would fit\./);
    for (const { figure, finding } of found.figures)
      if (figure !== 'heartVolume') expect(finding, figure).not.toBe('disagrees');
  }); // prettier-ignore

  test('a heart that fits makes all agree', () => {
    const found = answer(reconcile({ ...told, heartVolume: about(5400) }));
    expect(found.suspects).toEqual([]);
    expect(findingSentences(found)[0]).toMatch(/agree\.$/);
  });

  test('a heart far too large is named, alone', () => {
    const found = answer(reconcile({ ...told, heartVolume: about(6600) }));
    expect(findings(found)).toMatchObject({
      heartVolume: 'cannot be', // 6,600 L at 69.4 % vol hold 4,580 L, and 42,500 L of wash at 9 % vol 3,825 L
      washStrength: 'agrees',
      wortVolume: 'agrees',
    });
  });
});

describe('a script whose store, years and bottles do not go together', () => {
  const rounded = (value: number): SaidValue => ({ as: 'rounded', value });
  const found = answer(
    reconcile({
      casksPerYear: about(17_000),
      casksInStore: about(150_000),
      yearsInWood: rounded(12),
      bottlesPerCask: about(380),
      bottlesPerYear: about(9_000_000),
    }),
  );
  const said = findingSentences(found).join('\n');
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
    expect(findingSentences(found)[0]).toMatch(/nothing else quoted tells which/);
  }); // prettier-ignore
});

describe('figures that have no value', () => {
  test.each<[string, unknown, RegExp]>([
    ['not a number', { maltPerMash: about(NaN) }, /^Malt a mash: /],
    ['without end', { heartVolume: exact(Infinity) }, /^New spirit from a mash: /],
    ['a spread below nothing', { heartVolume: about(5000, -3) }, /^New spirit from a mash: its spread/],
    ['said in no way', { heartVolume: { as: 'perhaps', value: 5 } }, /^New spirit from a mash: /],
    ['nothing at all', { heartVolume: null }, /^New spirit from a mash: /],
    ['text', { heartVolume: exact('5000' as never) }, /^New spirit from a mash: /],
    ['no such figure', { moonlight: exact(5) }, /“moonlight”/],
  ])('%s', (_, quoted, sentence) => {
    expect(reconcile(quoted as Quoted)).toEqual({ refused: expect.stringMatching(sentence) });
  }); // prettier-ignore

  test('whatever is quoted within the ranges gives findings and sentences without a hole', () => {
    const said = (name: QuotableName) => {
      const [low, high] = quotableFigures[name].range;
      return fc.tuple(fc.constantFrom('exact', 'about', 'rounded', 'range'), between(low, high), between(low, high)).map(
        ([as, a, b]): SaidValue => (as === 'range' ? { as, low: Math.min(a, b), high: Math.max(a, b) + 1e-9 * high } : ({ as, value: a } as SaidValue)),
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
        for (const says of findingSentences(found)) {
          expect(says).toMatch(/^[A-Z].*\.$/);
          expect(says).not.toMatch(/NaN|undefined|Infinity|−/);
        }
      }),
      { numRuns: 25, endOnFailure: true },
    );
  }, 120_000); // prettier-ignore
});

describe('figures that cannot be', () => {
  // A house that agrees, by hand: 42,500 L at 9 % vol hold 3,825 L; 5,400 L at 69.4 % vol 3,748 L, 98 % of it.
  const sound: Quoted = { wortVolume: about(42_500), washStrength: about(9), heartVolume: about(5400), heartStrength: about(69.4) };
  test.each<[string, Quoted, readonly QuotableName[], RegExp]>([
    ['below nothing', { maltPerMash: exact(-5) }, ['maltPerMash'], /^Malt a mash: −5 kg/],
    ['beyond all houses', { lowWinesStrength: exact(60) }, ['lowWinesStrength'], /^Low-wines strength: 60 % vol/],
    ['a range upside down', { maltPerMash: { as: 'range', low: 9500, high: 9000 } }, ['maltPerMash'], /^Malt a mash: the range .* does not rise/],
    ['a heart that ends before it begins', { heartBegins: exact(60), heartEnds: exact(70) }, ['heartBegins', 'heartEnds'], /^Strength at which the heart ends is 70 % vol/],
    ['wort that grows heavier', { originalGravity: exact(1.03), finalGravity: exact(1.035) }, ['originalGravity', 'finalGravity'], /^Final gravity is 1.035/],
  ])('%s: it is marked, and the rest is judged', (_, quoted, wrong, reason) => {
    const found = answer(reconcile({ ...sound, ...quoted }));
    for (const figure of wrong) expect(judged(found, figure)).toMatchObject({ finding: 'cannot be', reason: expect.stringMatching(reason) });
    for (const figure of Object.keys(sound)) expect(judged(found, figure as QuotableName).finding).toBe('agrees');
    expect(accusedFigures(found).toSorted()).toEqual(wrong.toSorted());
    expect(findingSentences(found)[0]).toMatch(/^This cannot be\. /);
    expect(findingSentences(found)[1]).toMatch(/^Apart from that, the 4 figures that can be checked agree\.$/);
  });

  // By hand: 600 × 0.70 L × 46 % is 193.2 L; 250 L × 63.5 % is 158.75 L; 158.75 ÷ 0.322 is 493 bottles; 193.2 ÷ 63.5 % is 304.3 L.
  test('bottles that hold more than the cask got', () => {
    const found = answer(reconcile({ bottlesPerCask: about(600), bottleSize: exact(70), bottlingStrength: exact(46), caskSize: exact(250), fillingStrength: exact(63.5) }));
    for (const figure of ['bottlesPerCask', 'caskSize'] as const) expect(judged(found, figure).finding).toBe('cannot be');
    for (const figure of ['bottleSize', 'bottlingStrength', 'fillingStrength'] as const) expect(judged(found, figure).finding).not.toBe('cannot be');
    expect(findingSentences(found)[0]).toMatch(/600 bottles of 70 cL at 46 % vol hold 193 L .* 250 L filled at 63\.5 % vol got 159 L .*no more than 493.*no less than 305 L/);
  });
  test.each<[string, Quoted, boolean]>([
    // Filled at 75 % vol, 250 L get 187.5 L, whatever the filling strength was; 620 bottles hold 199.6, and “about 600” 193.2.
    ['a cask whose filling is not said', { bottlesPerCask: exact(620), bottleSize: exact(70), bottlingStrength: exact(46), caskSize: exact(250) }, true],
    ['a cask of about so much', { bottlesPerCask: about(600), bottleSize: exact(70), bottlingStrength: exact(46), caskSize: about(250) }, false],
    ['a cut and the whole', { heartBegins: exact(72), heartStrength: exact(75) }, true],
    ['the other cut and the whole', { heartEnds: exact(66), heartStrength: exact(64) }, true],
    ['a heart as strong as its first cut, as said', { heartBegins: about(72), heartStrength: about(72.5) }, false],
    ['a charge smaller than its low wines', { chargeVolume: exact(14_000), lowWinesVolume: exact(15_000) }, true],
    // 91 % of 83 % of a tonne, at 6.06 L for a per cent, is 458 L.
    ['a yield that no malt gives', { spiritYield: exact(480) }, true],
    ['a yield that a malt may give', { spiritYield: exact(440) }, false],
    // 42,500 × 9 % = 3,825 L; at 60 % vol and above 7,000 L hold 4,200 or more.
    ['a heart without its strength', { washVolume: exact(42_500), washStrength: exact(9), heartVolume: exact(7000) }, true],
  ])('a bound with few figures: %s', (_, quoted, broken) => {
    const { impossible } = answer(reconcile(quoted));
    expect(impossible.length > 0).toBe(broken);
  });
  test('in sound houses, all figures quoted, nothing cannot be', () => {
    for (const house of houses(6000, 30)) {
      const truth = truthOf(house);
      const found = answer(reconcile(Object.fromEntries(quotableNames.map((name) => [name, exact(truth[name])]))));
      expect(found.impossible).toEqual([]);
    }
  });
}); // prettier-ignore

describe('what is said of figures that agree', () => {
  // By hand: 42,500 L at 9 % vol hold 3,825 L; 6,000 L between 74 and 62.5 % vol, at some 69.4 % vol, about 4,160 L.
  test('figures that agree only because they were said roughly', () => {
    const found = answer(reconcile({ wortVolume: about(42_500), washStrength: about(9), heartBegins: about(74), heartEnds: about(62.5), heartVolume: about(6000) }));
    expect(new Set(Object.values(findings(found)))).toEqual(new Set(['agrees']));
    expect(findingSentences(found).join(' ')).toMatch(/42,500 L at 9 % vol holds 3,825 L of pure alcohol; 6,000 L of new spirit between 74 % vol and 62\.5 % vol holds about 4,1\d\d\. They agree only if .*9 % vol was rounded down from 9\.\d/);
  });
  test('figures that agree as they were said', () => {
    const found = answer(reconcile({ wortVolume: about(42_500), washStrength: about(9), heartBegins: about(74), heartEnds: about(62.5), heartVolume: about(5400) }));
    expect(findingSentences(found).join(' ')).not.toMatch(/only if/);
  });
  test('what to say besides', () => {
    const few = { maltPerMash: exact(2000), maltPerWeek: exact(12_000) };
    const { ask } = answer(reconcile(few));
    expect(ask).toMatchObject({ figures: ['mashesPerWeek'], checks: ['maltPerMash', 'maltPerWeek'] });
    const more = answer(reconcile({ ...few, mashesPerWeek: exact(6) }));
    for (const figure of ask!.checks) expect(judged(more, figure).finding).toBe('agrees');
    expect(findingSentences(answer(reconcile(few))).at(-1)).toBe('If you also say the mashes a week, the malt a mash and malt a week can be checked too.');
  });
}); // prettier-ignore

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
  ])('%s %d', (figure, value, says) => expect(spokenFigure(figure, value)).toBe(says));

  test('what is said is never far from what is meant', () => {
    fc.assert(
      fc.property(fc.constantFrom('heartVolume', 'wortVolume', 'casksPerYear', 'bottlesPerYear', 'alcoholPerYear'), between(1, 8), (figure, power) => {
        const value = 10 ** power;
        const text = spokenFigure(figure as QuotableName, value);
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
