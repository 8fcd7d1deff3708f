// Points and refusals by cases made by hand: what is given for what, and what is never done.
import { expect, test } from 'vitest';
import { actAtStill, type Action } from '../../../../src/core/shift/still/act.ts';
import { nextCharge } from '../../../../src/core/shift/still/made.ts';
import { shareOfPoints } from '../../../../src/core/shift/points.ts';
import { stillPoints, scoreOfStill } from '../../../../src/core/shift/still/score.ts';
import { beginStill, type ShiftState } from '../../../../src/core/shift/still/state.ts';
import { litres20, strength } from '../../../../src/core/quantity.ts';
import { amountsOf, plus, portionOf } from '../../../../src/core/spirit/amounts.ts';
import { play, rigged } from './stillman.ts';

const rig = rigged();
const good = play(rig).state;
const of = (state: ShiftState, id: string) =>
  scoreOfStill(rig, state).rows.find((row) => row.id === id)!.points;

test('the parts make a hundred, and a good run has all of them', () => {
  expect(Object.values(stillPoints).reduce((sum, each) => sum + each, 0)).toBe(100);
  expect(scoreOfStill(rig, good)).toMatchObject({ total: 100, wrong: [] });
});

test.each([
  [0, 20],
  [0.3, 20],
  [-0.3, 20],
  [0.9, 10], // halfway from 0.3 to 1.5
  [-1.5, 0],
  [5, 0],
])('a heart that misses its strength by %s has %s of 20', (miss, wanted) => {
  expect(shareOfPoints(20, miss, [0.3, 1.5])).toBeCloseTo(wanted, 9);
});

test('a cut 1.75 % vol early has half of its points, one of 3 has none', () => {
  const cutAt = (at: number) => ({ ...good, turns: good.turns.map((turn) => (turn.to === 'feints' ? { ...turn, strength: at } : turn)) }); // prettier-ignore
  expect(of(cutAt(62), 'heart')).toBe(20);
  expect(of(cutAt(63.75), 'heart')).toBeCloseTo(10, 9);
  expect(of(cutAt(59), 'heart')).toBe(0);
});

test('a run that goes on to water has nothing for its end, one that ends near the house’s has all', () => {
  expect(of(good, 'end')).toBe(10);
  expect(of({ ...good, vapour: 1e-6 }, 'end')).toBe(0);
});

test('each danger takes 20 of the whole, never below nothing; a fault takes 5 of care', () => {
  const wrong = (...ids: readonly ShiftState['wrong'][number]['id'][]) => ({ ...good, wrong: ids.map((id) => ({ step: 9, id })) }); // prettier-ignore
  expect(scoreOfStill(rig, wrong('manhole')).total).toBe(80);
  expect(scoreOfStill(rig, wrong('manhole', 'vapour', 'relief', 'vacuum', 'bare', 'air-hot')).total).toBe(0);
  expect(scoreOfStill(rig, wrong('left-warm')).total).toBe(95);
  expect(scoreOfStill(rig, wrong('left-warm', 'hazy-heart', 'open-steam')).total).toBe(90); // no more than care has
  expect(scoreOfStill(rig, wrong('manhole')).wrong[0]).toMatchObject({ step: 9, isDanger: true });
});

test('readings count when the glass is read and brought to 20 °C, each to 0.3', () => {
  const one = good.readings[0]!;
  const read = (shown: number, made: number) => ({ ...good, readings: [one, { ...one, step: one.step + 60, read: one.stood + shown, corrected: one.was + made }] }); // prettier-ignore
  expect(of(read(0.3 - 1e-9, -0.3 + 1e-9), 'readings')).toBe(10);
  expect(of(read(0.4, 0), 'readings')).toBe(5);
  expect(of(read(0, 0.4), 'readings')).toBe(5);
  expect(of({ ...good, readings: [] }, 'readings')).toBe(0);
  expect(of({ ...good, readings: [one, one, { ...one, step: one.step + 59 }] }, 'readings')).toBe(5); // one glass, read thrice within five minutes
});

test('a shift in which nothing was done has no points', () => {
  expect(scoreOfStill(rig, beginStill(rig)).total).toBe(0);
});

test('somebody who asks and gets no answer is a fault', () => {
  expect(of({ ...good, isAsked: true }, 'care')).toBe(5);
});

const hot: ShiftState = { ...beginStill(rig), isChargingOpen: false, isAirOpen: false, isManholeOpen: false, temperature: 88, boiled: 9, steam: 5, pressure: 0.5 }; // prettier-ignore
test.each<[string, Action, string]>([
  ['the manhole', { do: 'manhole', open: true }, 'manhole'],
  ['the air valve', { do: 'air', open: true }, 'air-hot'],
  ['the charging valve', { do: 'charging', open: true }, 'charging-hot'],
])('%s of a still under steam stays shut, and the attempt counts', (_, action, id) => {
  const { state, says } = actAtStill(rig, hot, action);
  expect(state).toMatchObject({ isManholeOpen: false, isAirOpen: false, isChargingOpen: false });
  expect(state.wrong.map((each) => each.id)).toEqual([id]);
  expect(says).toContain('stays shut');
});

test('the manhole stays shut on a hot still that is off and vented, and opens on a cold one', () => {
  const off = { ...hot, steam: 0, pressure: 0, isAirOpen: true };
  expect(actAtStill(rig, off, { do: 'manhole', open: true }).state.isManholeOpen).toBe(false);
  expect(actAtStill(rig, { ...off, temperature: 30, isAirOpen: false }, { do: 'manhole', open: true }).state.isManholeOpen).toBe(false); // prettier-ignore
  expect(
    actAtStill(rig, { ...off, temperature: 30 }, { do: 'manhole', open: true }).state.isManholeOpen,
  ).toBe(true);
});

test('no steam into an open still, no discharge without air', () => {
  const open = actAtStill(rig, beginStill(rig), { do: 'steam', to: 3 });
  expect(open.state.steam).toBe(0);
  expect(open.says).toContain('charging valve and the air valve and the manhole are open');
  const shut = actAtStill(rig, { ...hot, steam: 0, pressure: 0 }, { do: 'discharge' });
  expect(shut.state.isDone).toBe(false);
  expect(shut.state.wrong.map(({ id }) => id)).toEqual(['vacuum']);
});

test('marks that no valve has are refused', () => {
  for (const to of [-1, 11, 2.5, Number.NaN]) {
    expect(actAtStill(rig, hot, { do: 'steam', to }).state).toBe(hot);
    expect(actAtStill(rig, hot, { do: 'water', to }).state).toBe(hot);
  }
});

test('the next charge holds the low wines and what came back, with water to its limit, and what finds no room waits', () => {
  const spirit = (volume: number, s: number) => ({ volume: litres20(volume), strength: strength(s) });
  const [lowWines, back] = [spirit(2500, 23), spirit(1000, 40)];
  const { charge, dilution, waits } = nextCharge(lowWines, [back], strength(25), 3000);
  const alcohol = ({ volume, strength }: typeof charge) => (volume * strength) / 100;
  expect(alcohol(charge) + alcohol(waits)).toBeCloseTo(575 + 400, 6);
  expect(charge.volume).toBeCloseTo(3000, 6);
  expect(charge.strength).toBeCloseTo(25, 9);
  const together = [lowWines, back, spirit(dilution, 0)].map(amountsOf).reduce(plus);
  expect(portionOf(together).volume).toBeCloseTo(charge.volume + waits.volume, 6);
});
