// A washback by hand and by the book's closed forms: mass to 1e-9, heat, the S of Reid et al., the gas of a room; and replay.
import { expect, test } from 'vitest';
import { replay, type Logged } from '../../../src/core/shift/course.ts';
import {
  actAtWashback,
  sampleOfWash,
  washbackCourse,
  type Action,
} from '../../../src/core/shift/washback/act.ts';
import {
  houseAt,
  rigOfWashback,
  WASHBACK_STEP,
  type Rig,
  type WashbackEvents,
} from '../../../src/core/shift/washback/rig.ts';
import { washbackPoints, scoreOfWashback } from '../../../src/core/shift/washback/score.ts';
import { beginWashback, type WashbackState } from '../../../src/core/shift/washback/state.ts';
import {
  gravityAt,
  hourSinceFirstWort,
  stepWashback,
  washOf,
} from '../../../src/core/shift/washback/step.ts';
import { jarOf } from '../../../src/core/shift/gravity-jar.ts';
import { celsius, gravity, hours, kilograms, litres20 } from '../../../src/core/quantity.ts';
import { answer, apart } from '../draw.ts';

const setup = { wort: { volume: litres20(7500), gravity: gravity(1.058) }, final: gravity(0.998), hours: hours(72), set: celsius(19), yeast: kilograms(30) }; // prettier-ignore
const calm: WashbackEvents = { air: 15, hasCoil: false, lively: 0.9, jar: 0, charger: 0 };
const rigged = (events: Partial<WashbackEvents> = {}): Rig =>
  answer(rigOfWashback(setup, { ...calm, ...events }));

/** Runs a washback: yeast in once all the wort is there, what is asked for at its hour, handed over at the end. */
function play(rig: Rig, at: Readonly<Record<number, readonly (Action | 'read')[]>> = {}, until = 72) {
  let state = beginWashback(rig);
  const log: Logged<Action>[] = [];
  const does = (action: Action) => {
    log.push({ step: state.step, action });
    ({ state } = actAtWashback(rig, state, action));
  };
  const states: WashbackState[] = [];
  while (hourSinceFirstWort(state) < until - 1e-9) {
    state = stepWashback(rig, state);
    states.push(state);
    if (state.step === 3 / WASHBACK_STEP) does({ do: 'pitch' });
    for (const action of at[Math.round(state.step * WASHBACK_STEP * 100) / 100] ?? []) {
      const jar = action === 'read' ? answer(sampleOfWash(rig, state)) : undefined;
      does(jar ? { do: 'read', read: jar.stands, corrected: jar.was } : (action as Action));
    }
  }
  return { state, log, states, does };
}
const rig = rigged();
const quiet = play(rig);

test('wort in is wash, gas, yeast and what frothed over, to 1e-9, also when it froths over', () => {
  const over = play(rigged({ lively: 1.7 }));
  expect(over.state.over).toBeGreaterThan(50);
  for (const { state, states } of [quiet, over])
    for (const each of [...states.filter(({ step }) => step % 60 === 0), state]) {
      const wash = each.filled >= rig.mass ? washOf(rig, each).mass : undefined;
      if (wash) expect(Math.abs(rig.mass - wash - each.gas - each.grown - each.over) / rig.mass).toBeLessThan(1e-9);
    }
  // Balling's numbers by hand: 0.9565 of gas and 0.11 of yeast to each kilogram of ethanol, and 789.24 g to its litre.
  const ethanol = washOf(rig, quiet.state).alcohol * 0.78924;
  expect(apart(quiet.state.gas, 0.9565 * ethanol)).toBeLessThan(1e-4);
  expect(apart(quiet.state.grown, 0.11 * ethanol)).toBeLessThan(1e-4);
}); // prettier-ignore

test('heat given is warming, what the room took and what the coil took, to 1e-9', () => {
  const cooled = play(rigged({ hasCoil: true }), { 12: [{ do: 'cooling', to: 4 }] }).state;
  const start = quiet.states[3 / WASHBACK_STEP - 1]!;
  for (const state of [quiet.state, cooled]) {
    const warming = (rig.mass * 4 * (state.temperature - start.temperature)) / 1000; // 4.0 kJ/(kg K)
    const spent = state.lost - start.lost + state.cooled - start.cooled;
    expect(Math.abs(state.released - warming - spent) / state.released).toBeLessThan(1e-9);
  }
  expect(cooled.cooled).toBeGreaterThan(50);
  // By hand, from 14.28 °P and −0.51 apparent: real 0.1808 × 14.28 − 0.8192 × 0.51 = 2.16; ethanol 12.12 ÷ (2.0665 − 1.0665 × 0.1428) =
  // 6.33 % of the wash, which is 0.937 of the wort; 2.0665 of extract to each: 0.1225 kg of a kilogram of wort, at 586 kJ.
  expect(apart(quiet.state.released, (7500 * 1.058 * 0.9982 * 0.1225 * 586) / 1000)).toBeLessThan(0.003);
});

test('with the house’s own settings the gravity falls along the S of Reid et al., as the closed form has it', () => {
  // 1 ÷ (1 + e^(−b (t − m))) with m 16 h and b 0.2, from the pitching; straight in degrees Plato by 1.058 → 14.28 and 0.998 → −0.51.
  const s = (t: number) => 1 / (1 + Math.exp(-0.2 * (t - 16)));
  for (const t of [8, 16, 24, 40, 60]) {
    const state = quiet.states[(t + 3) / WASHBACK_STEP - 1]!;
    const part = (s(t) - s(0)) / (1 - s(0));
    // The room here is the house's own; the wort lost half a degree while it ran in, which slows it by some hundredths.
    expect(Math.abs(state.part - part)).toBeLessThan(0.03);
    const plato = 14.28 - 14.79 * state.part;
    expect(Math.abs(gravityAt(rig, state.part) - 1 - (0.003868 * plato + 0.0000132 * plato ** 2))).toBeLessThan(0.0015);
    expect(Math.abs(state.temperature - houseAt(rig, state.part))).toBeLessThan(1);
  }
}); // prettier-ignore

test('twice the yeast is as far on as the house’s was ln 2 ÷ b later', () => {
  const double = { ...beginWashback(rig), filled: rig.mass, dose: 10, step: 3 / WASHBACK_STEP };
  let [two, one] = [double, { ...double, dose: 5 }].map((each) => actAtWashback(rig, each as WashbackState, { do: 'pitch' }).state) as [WashbackState, WashbackState]; // prettier-ignore
  for (let i = 0; i < 4 / WASHBACK_STEP; i++) [two, one] = [stepWashback(rig, two), stepWashback(rig, one)];
  expect(two.odds - one.odds).toBeCloseTo(Math.log(2), 2); // a little more: it is warmer by then
  // By hand: odds of e^−3.2 = 0.0408 grow by e^0.8 to 0.0907, and twice 0.0408 to 0.1814; less what stood before hour 0.
  expect(Math.abs(one.part - 0.0458)).toBeLessThan(0.002);
  expect(Math.abs(two.part - 0.0846)).toBeLessThan(0.002);
});

test('without its fan the room fills as the gas comes, by the gas law and a sum of hours', () => {
  const { states } = play(rigged({ fan: { at: 16, mended: 1 } }), {}, 17);
  const [from, to] = [states.find(({ isFanOff }) => isFanOff)!, states.at(-1)!];
  // 44.01 kg of gas are 24.6 m³ at 26 °C. The room has 600 m³; its mixed air leaves as the gas and what little air come in: 134 and 12 m³/h.
  const came = ((to.gas - from.gas) / 44.01) * 24.6;
  const left = ((134 + 12) / 600) * (to.step - from.step) * WASHBACK_STEP * ((from.ppm + to.ppm) / 2);
  expect(apart(to.ppm - from.ppm, (1e6 * came) / 600 - left)).toBeLessThan(0.03);
  expect(to.happened.map(({ id }) => id)).toContain('alarm');
});

test('nobody goes in unmeasured, nor above the limit; a reported fan runs again', () => {
  const alarmed = play(rigged({ fan: { at: 16, mended: 1 } }), {}, 18);
  const ids = (state: WashbackState) => state.wrong.map(({ id }) => id);
  const own = rigged({ fan: { at: 16, mended: 1 } });
  expect(ids(actAtWashback(own, quiet.state, { do: 'go-in' }).state)).toEqual(['unmeasured']);
  expect(ids(actAtWashback(own, alarmed.state, { do: 'go-in' }).state)).toEqual(['went-in']);
  const measured = actAtWashback(own, quiet.state, { do: 'meter' }).state;
  const inside = actAtWashback(own, measured, { do: 'go-in' }).state;
  expect(ids(inside)).toEqual([]);
  expect(ids(actAtWashback(own, inside, { do: 'go-in' }).state)).toEqual(['unmeasured']); // each entry has its own reading
  expect(
    ids(actAtWashback(own, stepWashback(own, stepWashback(own, measured)), { do: 'antifoam' }).state),
  ).toEqual(['unmeasured']);
  let state = actAtWashback(own, alarmed.state, { do: 'report' }).state;
  for (let i = 0; i < 6 / WASHBACK_STEP; i++) state = stepWashback(own, state);
  expect(state.isFanOff).toBe(false);
  expect(state.ppm).toBeLessThan(5000);
  expect(ids(actAtWashback(own, quiet.state, { do: 'let-in' }).state)).toEqual(['climbed']);
});

test('however often one tries to go in under one alarm, it is refused each time and counts once', () => {
  const own = rigged({ fan: { at: 16, mended: 1 } });
  let { state } = play(own, {}, 18);
  for (const what of ['go-in', 'meter', 'go-in', 'antifoam'] as const) {
    const acted = actAtWashback(own, state, { do: what });
    expect(acted.isRefused ?? false).toBe(what !== 'meter');
    if (what !== 'meter') expect(acted.says).toContain('You stay out');
    state = stepWashback(own, acted.state); // so that each is at another minute
  }
  expect(state.wrong.map(({ id }) => id)).toEqual(['went-in']);
  expect(state.doses).toBe(0);
  const { rows, wrong } = scoreOfWashback(own, state);
  expect(rows.find(({ id }) => id === 'danger')?.points).toBe(-20);
  expect(wrong[0]?.why).toContain('refused');
  expect(wrong[0]?.why).not.toContain('entered');
});

test('handed over while it works is a fault, and costs its alcohol; finished and read it has all its points', () => {
  const early = play(rig, {}, 30);
  const given = actAtWashback(rigged({ charger: -44 }), early.state, { do: 'hand-over' }).state;
  expect(given.wrong.map(({ id }) => id)).toEqual(['early']);
  const whole = play(rig, { 60: ['read'], 66: ['read'], 70: ['read'] });
  whole.does({ do: 'hand-over' });
  expect(whole.state.wrong).toEqual([]);
  const done = actAtWashback(rig, whole.state, { do: 'hand-over' }).state;
  const score = scoreOfWashback(rig, done);
  expect(score.rows.filter(({ of, points }) => points < of).map(({ id }) => id)).toEqual([]);
  expect(score.total).toBe(100);
  expect(Object.values(washbackPoints).reduce((sum, each) => sum + each, 0)).toBe(100);
});

test('the log replays to the same washback', () => {
  const { state, log } = play(rigged({ lively: 1.4, hasCoil: true, trips: { at: 15 } }), { 8: [{ do: 'switcher', on: true }], 20: [{ do: 'cooling', to: 7 }] }); // prettier-ignore
  expect(replay(washbackCourse, rigged({ lively: 1.4, hasCoil: true, trips: { at: 15 } }), log, state.step)).toEqual(state); // prettier-ignore
});

test('a warm jar shows less than it has, by water’s own swelling', () => {
  // Water at 30 °C has 995.65 kg/m³ and at 20 °C 998.20 (published); the glass grows by 25 millionths a kelvin.
  const { stands } = answer(jarOf(gravity(1.04), 30));
  expect(Math.abs(stands - 1.04 * (995.65 / 998.2) * (1 + 25e-6 * 10))).toBeLessThan(1e-4);
  expect(jarOf(gravity(1.04), 45)).toHaveProperty('refused');
});

test('a washback that is none for a shift is refused in a sentence', () => {
  expect(rigOfWashback({ ...setup, hours: hours(12) }, calm)).toHaveProperty('refused');
  expect(rigOfWashback({ ...setup, final: gravity(1.06) }, calm)).toHaveProperty('refused');
});

test('a switcher that runs trips at the hour that was drawn, once, and runs again when it is put on', () => {
  const { state, states } = play(rigged({ lively: 1.4, trips: { at: 15 } }), { 8: [{ do: 'switcher', on: true }], 16: [{ do: 'switcher', on: true }] }); // prettier-ignore
  const trips = ({ happened }: WashbackState) => happened.filter(({ id }) => id === 'trips').length;
  const tripped = states.find((each) => trips(each) === 1)!;
  expect([Math.round(tripped.step * WASHBACK_STEP * 100) / 100, tripped.isSwitching]).toEqual([15, false]);
  expect([trips(state), state.isSwitching]).toEqual([1, true]);
}); // prettier-ignore
