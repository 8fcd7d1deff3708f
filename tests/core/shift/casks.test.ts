// Two casks by hand: alcohol and water to 1e-9, 2 % a year compounded, a leak by its litres; what each look tells; and replay.
import { expect, test } from 'vitest';
import { replay, type Logged } from '../../../src/core/shift/course.ts';
import {
  casksCourse,
  unaccountedInCask,
  type Action,
  type CasksState,
} from '../../../src/core/shift/casks/course.ts';
import {
  bottlesInCask,
  rigOfCasks,
  type CasksEvents,
  type CasksSetup,
  type Rig,
} from '../../../src/core/shift/casks/rig.ts';
import { casksPoints, scoreOfCasks } from '../../../src/core/shift/casks/score.ts';
import { amountsOf, portionOf } from '../../../src/core/spirit/amounts.ts';
import { celsius, litres20, percent, quantity, strength } from '../../../src/core/quantity.ts';
import { answer, apart } from '../draw.ts';

const setup: CasksSetup = {
  filling: { volume: litres20(200), strength: strength(63.5) },
  indrink: percent(0),
  stores: [
    { name: 'dunnage', temperature: celsius(10), humidity: percent(65) },
    { name: 'racked store', temperature: celsius(20), humidity: percent(55) },
  ],
  alcoholLoss: percent(2),
  foundAt: celsius(10),
  steadyHumidity: percent(65),
  residue: litres20(1),
  filterLoss: percent(0),
  bottle: quantity('bottle', 70),
  strength: strength(46),
};
const events: CasksEvents = {
  age: 120,
  slack: [24, 24],
  leak: { cask: 0, from: 60, litres: 0.5 },
  asks: { at: 30 },
};
const rig = answer(rigOfCasks(setup, events));
const tight = answer(rigOfCasks(setup, { ...events, leak: { ...events.leak, from: 400 } }));

/** Lets the months go, with what is done at each. */
function play(own: Rig, months: number, at: (state: CasksState) => readonly Action[] = () => []) {
  let state = casksCourse.begin(own);
  const log: Logged<Action>[] = [];
  while (state.step < months && !state.isDone) {
    state = casksCourse.step(own, state);
    for (const action of at(state)) {
      log.push({ step: state.step, action });
      ({ state } = casksCourse.act(own, state, action));
    }
  }
  return { state, log };
}
const regauge: Action = { do: 'regauge', cask: 0 };

test('filled is in the cask, in the air, on the floor, in samples and in the vat, to 1e-9', () => {
  const { state } = play(rig, 150, ({ step }) => (step === 100 ? [regauge, { do: 'mend', cask: 0 }] : step === 130 ? [{ do: 'bottle', cask: 1 }] : []));
  for (const i of [0, 1] as const) {
    const { ethanol, water } = unaccountedInCask(rig, state, i);
    expect(Math.abs(ethanol)).toBeLessThan(1e-9);
    expect(Math.abs(water)).toBeLessThan(1e-9);
  }
  // 40 months of half a litre; a regauge takes 0.2 L.
  expect(portionOf(state.casks[0].leaked).volume).toBeCloseTo(20, 6);
  expect(portionOf(state.casks[0].sampled).volume).toBeCloseTo(0.2, 6);
}); // prettier-ignore

test('at the humidity that keeps 63.5 % vol, alcohol goes by 2 % a year, compounded', () => {
  for (const years of [1, 5, 10, 20]) {
    const { alcohol, strength: is } = portionOf(play(tight, 12 * years).state.casks[0].left);
    expect(apart(alcohol, 127 * 0.98 ** years)).toBeLessThan(1e-5);
    expect(is).toBeCloseTo(63.5, 4);
  }
});

test('ten degrees warmer it loses as the vapour pressure of ethanol does, and in dry air its strength rises', () => {
  const { alcohol, strength: is } = portionOf(play(tight, 12).state.casks[1].left);
  // Vapour pressure of ethanol at 10 and 20 °C: 3.13 and 5.85 kPa (published tables): 1.87 times as fast.
  expect(Math.abs(100 * (1 - alcohol / 127) - 100 * (1 - 0.98 ** 1.87))).toBeLessThan(0.1);
  expect(is).toBeGreaterThan(63.6);
});

test('a leak shows to the hand after two months and in a regauge when it is more than 2 %; the cooper ends it', () => {
  const said = (months: number, action: Action) => {
    const { state } = play(rig, months);
    return casksCourse.act(rig, state, action);
  };
  expect(said(61, { do: 'look', cask: 0 }).says).toContain('Dry staves');
  expect(said(62, { do: 'look', cask: 0 }).says).toContain('it leaks');
  expect(said(64, regauge).says).toContain('As expected'); // 2 of 180 L
  expect(said(70, regauge).says).toContain('less alcohol than expected'); // 5 of 180 L
  const mended = said(70, { do: 'mend', cask: 0 }).state;
  const later = casksCourse.step(rig, mended);
  expect(later.casks[0].leaked).toEqual(mended.casks[0].leaked);
  expect(mended.wrong).toEqual([]);
  expect(said(90, { do: 'mend', cask: 0 }).state.wrong.map(({ id }) => id)).toEqual(['dripping']);
});

test('bottles are those of a hand sum, and none of a cask weaker than the bottle', () => {
  // 199 L at 63.5 % vol hold 126.37 L of pure alcohol, 274.7 L at 46 % vol: 392 bottles of 70 cL.
  expect(bottlesInCask(setup, amountsOf({ volume: litres20(200), strength: strength(63.5) }))).toBe(392);
  expect(bottlesInCask(setup, amountsOf({ volume: litres20(200), strength: strength(45) }))).toBe(0);
});

test('bottled young is a fault, a flame a danger; looked after in time it has all its points', () => {
  const young = play(rig, 100, ({ step }) => (step === 100 ? [{ do: 'bottle', cask: 0 }] : [])).state;
  expect(young.wrong.map(({ id }) => id)).toEqual(['young']);
  const flame = play(rig, 31, ({ isAsked }) => (isAsked ? [{ do: 'flame' }] : [])).state;
  expect(scoreOfCasks(rig, flame).rows.find(({ id }) => id === 'danger')!.points).toBe(-20);
  const well = play(rig, 130, (state) => {
    if (state.isAsked) return [{ do: 'refuse' }];
    if (state.step === 63) return [{ do: 'look', cask: 0 }, { do: 'mend', cask: 0 }];
    if (state.step === 121) return [regauge, { do: 'regauge', cask: 1 }, { do: 'bottle', cask: 0 }, { do: 'bottle', cask: 1 }];
    return [];
  });
  expect(well.state.isDone).toBe(true);
  expect(scoreOfCasks(rig, well.state).total).toBe(100);
  expect(Object.values(casksPoints).reduce((sum, each) => sum + each, 0)).toBe(100);
  expect(replay(casksCourse, rig, well.log, 360)).toEqual(well.state);
}); // prettier-ignore

test('a filling weaker than the bottle, and an age at which nothing is left, are refused', () => {
  expect(rigOfCasks({ ...setup, strength: strength(70) }, events)).toHaveProperty('refused');
  expect(rigOfCasks({ ...setup, alcoholLoss: percent(25) }, events)).toHaveProperty('refused');
});
