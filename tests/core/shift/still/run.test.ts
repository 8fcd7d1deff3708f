// A whole run at the still against reckonings that share no code with it, and against itself: balance and replay.
import { expect, test } from 'vitest';
import { actAtStill, stillCourse } from '../../../../src/core/shift/still/act.ts';
import { madeOf } from '../../../../src/core/shift/still/made.ts';
import { replay } from '../../../../src/core/shift/course.ts';
import { rigOfStill, STILL_STEP } from '../../../../src/core/shift/still/rig.ts';
import { kilopascals, litres20, share, strength } from '../../../../src/core/quantity.ts';
import { hasHappened, lastHappened } from '../../../../src/core/shift/course.ts';
import { beginStill, type ShiftState } from '../../../../src/core/shift/still/state.ts';
import { litresOver, stepStill, unaccountedInStill } from '../../../../src/core/shift/still/step.ts';
import { portionOf } from '../../../../src/core/spirit/amounts.ts';
import densities from '../../../../src/published/reference/density-published.json' with { type: 'json' };
import measured from '../../../../src/published/reference/vle-ethanol-water-101325.json' with { type: 'json' };
import thermal from '../../../../src/published/reference/thermal.json' with { type: 'json' };
import { apart } from '../../draw.ts';
import { calm, play, rigged, setup } from './stillman.ts';

const [ETHANOL, WATER] = [46.069, 18.0153]; // kg/kmol; IUPAC
const rig = rigged();
const played = play(rig);

/** Straight between two columns. */
function between(table: readonly (readonly [number, number])[], at: number): number {
  const i = Math.max(
    1,
    Math.min(
      table.length - 1,
      table.findIndex(([x]) => x >= at),
    ),
  );
  const [[x0, y0], [x1, y1]] = [table[i - 1]!, table[i]!];
  return y0 + ((at - x0) / (x1 - x0)) * (y1 - y0);
}
/** Density at 20 °C by strength: the alcoholometric table of OIML R 22. */
const byStrength = densities
  .filter((row) => row.abv_pct !== undefined)
  .map((row) => [row.abv_pct!, row.rho_published] as const)
  .sort(([a], [b]) => a - b);
const pure = between(byStrength, 100);
/** Litres and % vol of so many kilomoles, by the table alone. */
function volumeAndStrength(ethanol: number, water: number) {
  const mass = ethanol * ETHANOL + water * WATER;
  const alcohol = (1000 * ethanol * ETHANOL) / pure;
  let strength = 50;
  for (let i = 0; i < 60; i++) strength = (100 * alcohol) / ((1000 * mass) / between(byStrength, strength));
  return { volume: (100 * alcohol) / strength, strength, alcohol };
}
/** Vapour over a liquid by Carey and Lewis, Ind. Eng. Chem. 24, 882 (1932): relative volatility straight between the rows. */
const volatility = measured.data.map(({ x, y }) => [x, (y * (1 - x)) / (x * (1 - y))] as const);
const vapourOver = (x: number) => {
  const alpha = between(volatility, Math.max(x, 0.019));
  return (alpha * x) / (1 + (alpha - 1) * x);
};

/** The charge boiled down in small equal portions, with the heart from 3 % of its alcohol down to 62 % vol: no code of the still. */
function byHand() {
  const mass = (3600 * between(byStrength, 26.4)) / 1000;
  const ethanolMass = (3600 * 0.264 * pure) / 1000;
  let [ethanol, water] = [ethanolMass / ETHANOL, (mass - ethanolMass) / WATER];
  const all = ethanol;
  const portion = (ethanol + water) / 40_000;
  const heart = { ethanol: 0, water: 0 };
  for (;;) {
    const y = vapourOver(ethanol / (ethanol + water));
    if (volumeAndStrength(y, 1 - y).strength <= 62) return volumeAndStrength(heart.ethanol, heart.water);
    if (ethanol < 0.97 * all) {
      heart.ethanol += y * portion;
      heart.water += (1 - y) * portion;
    }
    ethanol -= y * portion;
    water -= (1 - y) * portion;
  }
}

test('the heart is that of a charge boiled down by hand over the vapour of Carey and Lewis', () => {
  const hand = byHand();
  const made = madeOf(played.state, STILL_STEP);
  // The book's vapour is within 0.012 mole fraction of the table (tests/core/equilibrium.test.ts): 1 % vol at most, and 4 % of the litres up to a cut.
  expect(Math.abs(made.heart.strength - hand.strength)).toBeLessThan(0.6);
  expect(apart(made.heart.alcohol, hand.alcohol)).toBeLessThan(0.04);
  expect(apart(made.heart.volume, hand.volume)).toBeLessThan(0.04);
});

test('what the house would make of the charge comes of its cuts, turned at their time', () => {
  const made = madeOf(played.state, STILL_STEP);
  expect(apart(made.heart.volume, rig.goal.heart.volume)).toBeLessThan(0.005);
  expect(Math.abs(made.heart.strength - rig.goal.heart.strength)).toBeLessThan(0.02);
  expect(apart(made.residue.volume, rig.goal.residue.volume)).toBeLessThan(0.01);
});

test('no ethanol and no water is gained or lost, to 1e-9 of the charge, at any step', () => {
  const { ethanol, water } = rig.charge;
  for (const state of [...played.states.filter(({ step }) => step % 50 === 0), played.state]) {
    const miss = unaccountedInStill(rig, state);
    expect(Math.abs(miss.ethanol) / ethanol).toBeLessThan(1e-9);
    expect(Math.abs(miss.water) / water).toBeLessThan(1e-9);
  }
  const { foreshots, heart, feints, lost, lees } = played.state;
  const alcohol = [foreshots, heart, feints, lost, lees].reduce(
    (sum, each) => sum + portionOf(each).alcohol,
    0,
  );
  expect(apart(alcohol, portionOf(rig.charge).alcohol)).toBeLessThan(1e-9);
});

test('the log replays to the same shift, also from the middle of it', () => {
  expect(replay(stillCourse, rig, played.log, 20_000)).toEqual(played.state);
  const halfway = replay(stillCourse, rig, played.log, 3000);
  expect(halfway.step).toBe(3000);
  const again = { ...played.states[2999]!, readings: halfway.readings, turns: halfway.turns };
  expect(apart(halfway.pot.ethanol, again.pot.ethanol)).toBeLessThan(1e-9);
  expect(apart(litresOver(halfway), litresOver(again))).toBeLessThan(1e-9);
});

test('at half the steam the run takes the hours of the still less one, as it is sized', () => {
  const { state } = play(rig, { warming: 5, fresh: 5, running: 5 });
  const hours = (lastHappened(state.happened, 'weak') * STILL_STEP) / 3600;
  // Sized for the liquid alone: the copper and what the hot head loses to the room come on top, about 3 % together.
  expect(apart(hours, 7)).toBeLessThan(0.05);
});

test('the charge boils when the heat put in has warmed it and its pot, by the closed form', () => {
  const specific = (name: RegExp) => Number(thermal.find(({ item }) => name.test(item))?.value);
  const [water, ethanol] = [4.184, 2.845]; // kJ/(kg K); Perry, table 3-183
  expect(specific(/^water latent heat/)).toBe(2260); // the rows are those of the same handbook
  const capacity = rig.charge.ethanol * ETHANOL * ethanol + rig.charge.water * WATER * water + 3600 * 0.3 * 0.385; // prettier-ignore
  const power = 8 * rig.heatOfMark;
  const boils = between(measured.data.map(({ x, T_C }) => [x, T_C] as const), rig.charge.ethanol / (rig.charge.ethanol + rig.charge.water)); // prettier-ignore
  const { pot } = rig.losses;
  const seconds = (capacity / pot) * Math.log((power - pot * (25 - 15)) / (power - pot * (boils - 15)));
  // The table's boiling points are within 0.3 K of the book's: half a percent of what it is warmed by.
  expect(apart(lastHappened(played.state.happened, 'boils') * STILL_STEP, seconds)).toBeLessThan(0.01);
});

test('head, drops and end come in their order', () => {
  const order = ['boils', 'head-warm', 'first-drops', 'weak'] as const;
  const steps = order.map((id) => lastHappened(played.state.happened, id));
  expect(steps.toSorted((a, b) => a - b)).toEqual(steps);
  expect(Math.min(...steps)).toBeGreaterThan(0);
  expect(played.state.wrong).toEqual([]);
});

/** Goes on for so many minutes with nobody at the still. */
function leave(rig: ReturnType<typeof rigged>, from: ShiftState, minutes: number): ShiftState {
  let state = from;
  for (let i = 0; i < minutes * 12; i++) state = stepStill(rig, state);
  return state;
}
const begun = (rig: ReturnType<typeof rigged>, steam: number, water: number): ShiftState => {
  const actions = [
    { do: 'charging', open: false },
    { do: 'air', open: false },
    { do: 'manhole', open: false },
    { do: 'water', to: water },
    { do: 'steam', to: steam },
  ] as const;
  return actions.reduce((state, action) => actAtStill(rig, state, action).state, beginStill(rig));
};

test('full steam into a fresh boil froths over, and steam taken off in time does not', () => {
  const over = leave(rig, begun(rig, 10, 10), 55);
  expect(hasHappened(over.wrong, 'carried-over')).toBe(true);
  expect(hasHappened(played.state.wrong, 'carried-over')).toBe(false);
});

test('without water all vapour comes to the safe and is lost', () => {
  const state = leave(rig, begun(rig, 3, 0), 190);
  expect(state.wrong.filter(({ id }) => id === 'vapour')).toHaveLength(1); // one warm condenser, three hours of it
  expect(portionOf(state.foreshots).volume).toBe(0);
  expect(portionOf(state.lost).alcohol).toBeGreaterThan(10);
});

test('a line that closes drives the pressure up to the relief valve, unless the steam is taken off', () => {
  const blocking = rigged({ ...calm, block: { at: 0.3, open: 0.12 } });
  const well = play(blocking);
  expect(hasHappened(well.state.happened, 'blocked') && hasHappened(well.state.happened, 'cleared')).toBe(
    true,
  );
  expect(well.state.wrong).toEqual([]);
  const at = well.states.find(({ happened }) => hasHappened(happened, 'blocked'))!;
  const before = well.states.findLast(({ line, flow }) => line === 1 && flow > 0)!;
  expect(before.step).toBeGreaterThan(0);
  const open = well.states.find(({ step }) => step === at.step - 240)!; // twenty minutes before
  expect(at.pressure).toBeGreaterThan(3 * open.pressure);
  expect(at.flow).toBeLessThan(0.8 * open.flow);
  expect(hasHappened(leave(blocking, at, 60).wrong, 'relief')).toBe(true);
});

test('a shift that nobody touches stays as it is', () => {
  const state = leave(rig, beginStill(rig), 60);
  expect(litresOver(state)).toBe(0);
  expect(state.happened).toEqual([]);
});

test.each<[string, Parameters<typeof rigged>[1]]>([
  ['a small still of strong low wines, up a hill', { charge: { volume: litres20(60), strength: strength(45) }, pressure: kilopascals(70), hours: 3 }], // prettier-ignore
  ['a large still with all the reflux of one more stage', { charge: { volume: litres20(25_000), strength: strength(24) }, reflux: share(1), hours: 14, cuts: { foreshots: { strength: strength(84) }, heart: strength(72), feints: strength(5) } }], // prettier-ignore
  ['foreshots by litres, a late cut', { cuts: { foreshots: { volume: litres20(60) }, heart: strength(45), feints: strength(0.5) } }], // prettier-ignore
])('%s runs to its end and makes what its house makes', (_, changes) => {
  const own = rigged(calm, changes);
  const { state } = play(own);
  expect(state.wrong).toEqual([]);
  expect(state.isDone).toBe(true);
  const made = madeOf(state, STILL_STEP);
  expect(apart(made.heart.volume, own.goal.heart.volume)).toBeLessThan(0.02);
  expect(Math.abs(made.heart.strength - own.goal.heart.strength)).toBeLessThan(0.1);
  const miss = unaccountedInStill(own, state);
  expect(Math.abs(miss.ethanol) / own.charge.ethanol).toBeLessThan(1e-9);
  expect(Math.abs(miss.water) / own.charge.water).toBeLessThan(1e-9);
});

test('a charge or a still that is none for a shift is refused in a sentence', () => {
  for (const changes of [
    { charge: { volume: litres20(5), strength: strength(26) } },
    { hours: 1 },
    { charge: { volume: litres20(3000), strength: strength(3) } },
  ])
    // prettier-ignore
    expect(rigOfStill({ ...setup, ...changes }, calm)).toHaveProperty('refused');
});
