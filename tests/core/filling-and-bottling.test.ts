// Into casks, out of casks, onto scales and labels.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bottleSpirit } from '../../src/core/maturing/bottling.ts';
import { dutyOn, dutyStrength } from '../../src/core/maturing/duty.ts';
import { fillCasks } from '../../src/core/maturing/fill-casks.ts';
import { fullCask, WOOD } from '../../src/core/maturing/full-cask.ts';
import { vat } from '../../src/core/maturing/vatting.ts';
import {
  celsius,
  count,
  litres,
  litres20,
  percent,
  quantity,
  strength,
  years,
} from '../../src/core/quantity.ts';
import { blend, reduce } from '../../src/core/spirit/mixing.ts';
import kept from '../../src/published/reference/maturing.json' with { type: 'json' };
import uk from '../../src/published/reference/uk-eu.json' with { type: 'json' };
import { always, apart, between, ordered, strengths } from './draw.ts';

const sum = (id: string) =>
  kept.sums.rows.find((row) => row.id === id)! as { given: Record<string, number>; answer: number };
const group = (size: number, many: number) => ({ size: litres(size), count: count(many) });
const groups = fc.array(
  fc.tuple(between(20, 700), fc.integer({ min: 0, max: 30 })).map(([size, many]) => group(size, many)),
  { minLength: 1, maxLength: 6 },
);

test('5,000 L of pure alcohol fill 39 casks, and what is over would fill the rest of the worked sum', () => {
  const { given, answer } = sum('T5');
  const filling = fillCasks({ volume: litres20((given.A! / given.q!) * 100), strength: strength(given.q!) }, strength(given.q!), [group(given.V!, 100)]);
  expect(filling.groups[0]!.filled).toBe(39);
  expect(filling.groups[0]!.filled + filling.left / given.V!).toBeCloseTo(answer, 4);
}); // prettier-ignore

test('alcohol in the casks and in the vat is the alcohol that came; no cask that is left would still be filled', () => {
  always(fc.tuple(between(1, 20_000), ordered(40, 95, 0.1), groups), ([volume, [to, from], casks]) => {
    const { groups: filled, left, reduction } = fillCasks({ volume: litres20(volume), strength: strength(from) }, strength(to), casks);
    const inCasks = filled.reduce((whole, { alcohol }) => whole + alcohol, 0);
    expect(apart(inCasks + (left * to) / 100, (volume * from) / 100)).toBeLessThan(1e-9);
    expect(reduction).toEqual(reduce({ volume: litres20(volume), strength: strength(from) }, strength(to)));
    for (const one of filled) {
      expect(one.filled).toBeLessThanOrEqual(one.count);
      if (one.filled < one.count) expect(left).toBeLessThan(one.size);
    }
  });
}); // prettier-ignore

test('a vat that is a whole number of casks leaves nothing', () => {
  always(fc.tuple(fc.integer({ min: 1, max: 40 }), between(20, 700)), ([many, size]) => {
    const filling = fillCasks({ volume: litres20(many * size), strength: strength(63.5) }, strength(63.5), [group(size, many)]);
    expect(filling.groups[0]!.filled).toBe(many);
    expect(filling.left).toBeLessThan(1e-6);
  });
}); // prettier-ignore

test('bottles of the worked sum, and every litre of alcohol is in a bottle or told as lost', () => {
  const { given, answer } = sum('T6');
  const plan = { to: strength(46), lost: percent(0), bottle: quantity('bottle', 100 * given.v!), perCase: count(12) };
  const run = bottleSpirit({ volume: litres20(given.A!), strength: strength(100) }, plan);
  expect(run.bottles).toBe(Math.floor(answer));
  expect([run.cases, run.loose]).toEqual([26, 10]);
  always(fc.tuple(between(10, 5000), ordered(37, 80, 0.1), between(0, 20), between(2, 450), fc.integer({ min: 1, max: 48 })), ([volume, [to, from], lost, bottle, per]) => {
    const made = bottleSpirit({ volume: litres20(volume), strength: strength(from) }, { to: strength(to), lost: percent(lost), bottle: quantity('bottle', bottle), perCase: count(per) });
    expect(made.cases * per + made.loose).toBe(made.bottles);
    expect(made.loose).toBeLessThan(per);
    expect(apart(made.alcohol + made.alcoholLost, (volume * from) / 100)).toBeLessThan(1e-9);
    const over = made.bottled - (made.bottles * bottle) / 100;
    expect(over).toBeGreaterThan(-1e-6);
    expect(over).toBeLessThan(bottle / 100);
  });
}); // prettier-ignore

test('losing a tenth loses a tenth of the volume, after the water is in', () => {
  const run = (lost: number) => bottleSpirit({ volume: litres20(1000), strength: strength(60) }, { to: strength(40), lost: percent(lost), bottle: quantity('bottle', 100), perCase: count(6) });
  expect(run(10).bottled).toBeCloseTo(1350, 9);
  expect(run(10).reduction).toEqual(run(0).reduction);
}); // prettier-ignore

test('a full hogshead is the worked sum; barrel, hogshead and butt are near what is remembered', () => {
  const { given, answer } = sum('S4');
  const at = (cask: Parameters<typeof fullCask>[0]) => fullCask(cask, strength(63.5), celsius(20)).total;
  expect(Math.abs(at({ size: litres(given.V!), wood: quantity('mass', given.w!) }) - answer)).toBeLessThan(0.15); // density cut to 0.901
  const remembered = kept.facts.find(({ item }) => item === 'full casks, kg')!.value as unknown as Record<keyof typeof WOOD, [number, number]>;
  for (const name of ['barrel', 'hogshead', 'butt'] as const) {
    const [low, high] = remembered[name];
    expect(at(WOOD[name])).toBeGreaterThan(low - 2.5);
    expect(at(WOOD[name])).toBeLessThan(high + 2.5);
  }
}); // prettier-ignore

test('weaker and colder spirit weighs more', () => {
  const of = (s: number, t: number) => fullCask(WOOD.barrel, strength(s), celsius(t)).total;
  always(fc.tuple(ordered(20, 95, 0.1), ordered(-5, 35, 0.1)), ([[weak, strong], [cold, warm]]) => {
    expect(of(weak, 20)).toBeGreaterThan(of(strong, 20));
    expect(of(63.5, cold)).toBeGreaterThan(of(63.5, warm));
  });
});

test('duty of the printed case of 2002, of the worked sum, and strength cut as the guide says', () => {
  const printed = uk.find(({ item }) => item === 'duty example, spirits')!.value as string;
  const [, alcohol, rate, paid] = /-> (\d+) L alcohol; x ([\d.]+) GBP\/L \(2002\) = ([\d.]+) GBP/.exec(printed)!.map(Number);
  const duty = dutyOn(count(1200), quantity('bottle', 75), strength(40), quantity('money', rate!));
  expect(duty.alcohol).toBeCloseTo(alcohol!, 9);
  expect(duty.duty).toBeCloseTo(paid!, 9);
  const { given, answer } = sum('X4');
  expect(dutyOn(count(given.n!), quantity('bottle', 100 * given.v!), strength(given.q!), quantity('money', given.R!)).duty).toBeCloseTo(answer, 9);
  const cut = uk.find(({ item }) => item === 'duty strength')!.value as string;
  expect(cut).toMatch(/7\.59 -> 7\.5/);
  expect(dutyStrength(strength(7.59), 'down')).toBe(7.5);
  expect(dutyStrength(strength(7.59), 'none')).toBe(7.59);
}); // prettier-ignore

test('cutting never raises a strength, takes less than a tenth, and leaves tenths alone', () => {
  always(strengths(), (s) => {
    const cut = dutyStrength(s, 'down');
    expect(cut).toBeLessThanOrEqual(s + 1e-9);
    expect(s - cut).toBeLessThan(0.1);
  });
  for (let tenth = 0; tenth <= 1000; tenth++)
    expect(dutyStrength(strength(tenth / 10), 'down')).toBe(tenth / 10);
});

test('a vatting is as old as its youngest part, however small; the mean is by alcohol', () => {
  const { given, answer } = sum('X1');
  const part = (share: number, age: number, s = 60) => ({
    volume: litres20(1000 * share),
    strength: strength(s),
    age: years(age),
  });
  const parts = [part(given.s!, given.a!), part(given.t!, given.b!), part(given.u!, given.c!)];
  expect(vat(parts).age).toBe(answer);
  expect(vat([...parts, part(1e-6, 3.9)]).age).toBe(3);
  // 30 and 10 L of alcohol, of 10 and 20 years: (30 × 10 + 10 × 20) ÷ 40.
  expect(vat([part(0.05, 10), part(0.025, 20, 40)]).meanAge).toBeCloseTo(12.5, 12);
});

test('a vatting mixes as spirits do, and its mean age lies between youngest and oldest', () => {
  const parts = fc.array(fc.record({ volume: between(1, 700).map(litres20), strength: strengths(20, 80), age: between(0, 60).map(years) }), { minLength: 1, maxLength: 8 });
  always(parts, (all) => {
    const made = vat(all);
    expect(made).toMatchObject({ ...blend(all) });
    expect(made.age).toBeLessThanOrEqual(Math.min(...all.map(({ age }) => age)));
    expect(made.meanAge).toBeGreaterThanOrEqual(Math.min(...all.map(({ age }) => age)) - 1e-9);
    expect(made.meanAge).toBeLessThanOrEqual(Math.max(...all.map(({ age }) => age)) + 1e-9);
  });
}); // prettier-ignore
