// A mash by hand and by the book's batch sum of waters, which shares no code with the clock: mass to 1e-9, heat, the bed; and replay.
import { expect, test } from 'vitest';
import { replay, type Logged } from '../../../src/core/shift/course.ts';
import { actAtTun, sampleOfWort, tunCourse, wortOf, type Action } from '../../../src/core/shift/tun/act.ts';
import { rigOfTun, type Rig, type TunEvents } from '../../../src/core/shift/tun/rig.ts';
import { tunPoints, scoreOfTun } from '../../../src/core/shift/tun/score.ts';
import { beginTun, type TunState } from '../../../src/core/shift/tun/state.ts';
import { stepTun, unaccountedInTun } from '../../../src/core/shift/tun/step.ts';
import { returnWeakWorts } from '../../../src/core/mashing/returned-worts.ts';
import { rescueWater } from '../../../src/core/mashing/rescue.ts';
import { celsius, litres, litresPerKilogram, percent } from '../../../src/core/quantity.ts';
import { line } from '../../../src/core/line/line.ts';
import { builtInHouse } from '../../../src/house/figures.ts';
import { houseOfTun, setupOfTun, type TunDone } from '../../../src/shift/tun/shift.ts';
import { answer, apart } from '../draw.ts';

const house = houseOfTun('Harrowmere', answer(line(builtInHouse)));
const calm: TunEvents = { grist: 15, stands: 1.2, converts: 20, jar: 25 };
const rigged = (events: Partial<TunEvents> = {}, done: readonly TunDone[] = []): Rig => answer(rigOfTun(setupOfTun({ house, done }), { ...calm, ...events })); // prettier-ignore

/** Mashes by rule: iodine, then slowly off at a mark; each water once the one before has drained; reads twice. */
function play(rig: Rig, valve = 4) {
  let state = beginTun(rig);
  const log: Logged<Action>[] = [];
  const states: TunState[] = [];
  const does = (action: Action) => {
    log.push({ step: state.step, action });
    ({ state } = actAtTun(rig, state, action));
  };
  const read = () => {
    const jar = answer(sampleOfWort(rig, state));
    does({ do: 'read', read: jar.stands, corrected: jar.was });
  };
  does({ do: 'liquor', to: Math.round(2 * rig.goal.strike) / 2 });
  does({ do: 'mash-in' });
  while (!state.isDone && state.step < 1500) {
    const before = state;
    state = stepTun(rig, state);
    states.push(state);
    const now = (id: string) => state.happened.slice(before.happened.length).some((each) => each.id === id);
    if (state.converted === 1 && before.converted < 1) {
      does({ do: 'iodine' });
      does({ do: 'valve', to: valve });
    }
    if (now('clear-run')) does({ do: 'run', to: 'washback' });
    if (now('sunk')) {
      does({ do: 'liquor', to: 75 });
      does({ do: 'valve', to: 0 }); // so that the water comes over a drained bed
      does({ do: 'water' });
      read();
    }
    if (now('water-in')) does({ do: 'valve', to: valve });
    if (now('drained') && state.waters === 2) {
      read();
      for (const action of [{ do: 'run', to: 'weak' }, { do: 'liquor', to: 85 }, { do: 'valve', to: 0 }, { do: 'water' }] as const) does(action); // prettier-ignore
    } else if (now('drained')) {
      does({ do: 'valve', to: 0 });
      does({ do: 'empty' });
    }
  }
  return { state, log, states };
}
const rig = rigged();
const played = play(rig);

test('no water and no extract is gained or lost, to 1e-9, at any step', () => {
  for (const state of [...played.states.filter(({ step }) => step % 20 === 0), played.state]) {
    const { water, extract } = unaccountedInTun(rig, state);
    expect(Math.abs(water) / rig.waters[0]).toBeLessThan(1e-9);
    expect(Math.abs(extract) / rig.extract).toBeLessThan(1e-9);
  }
});

test('what is collected and what stays is that of the batch sum of several waters', () => {
  const { wort, weak } = played.state;
  // The clock's bed is called drained with half a hundredth of the first water left on it: 29 kg.
  expect(apart(wort.extract, rig.goal.wort.extract)).toBeLessThan(0.01);
  expect(apart(weak.extract, rig.goal.weak.extract)).toBeLessThan(0.06);
  expect(apart(wortOf(wort).volume, house.collects)).toBeLessThan(0.02);
  expect(Math.abs(wortOf(wort).gravity - rig.goal.gravity)).toBeLessThan(0.0007);
});

test('the grains of the shift keep what the sum of the draff says', () => {
  // By hand: of 1,500 kg with 4.5 % moisture 1,432.5 kg are dry; 1,162.5 kg of extract take up 4 %, 46.5 kg; the wort has 97.36 % of it,
  // 1,131.8 kg. So 347.2 kg are dry in the draff; at 78 % moisture it has 347.2 × 78 ÷ 22 = 1,231 kg of water, 0.8206 kg for each kilogram.
  expect(house.kept).toBeCloseTo(0.8206, 3);
  expect(rig.held).toBeCloseTo(1231, 0);
  // What goes out at the end is draff of that moisture, but for extract that one washing more or less leaves.
  const { mobile, kept } = played.state;
  const dry = 1500 * 0.955 - 1162.5 * 0.96 + mobile.extract + kept.extract;
  const water = mobile.water + kept.water;
  expect(Math.abs((100 * water) / (water + dry) - builtInHouse.draffMoisture)).toBeLessThan(2);
});

test('a mash takes the six hours that the book tells', () => {
  expect((played.state.step * 0.5) / 60).toBeGreaterThan(5);
  expect((played.state.step * 0.5) / 60).toBeLessThan(6.5);
});

test('the first wort has the strength of a hand sum', () => {
  // 1,500 kg of malt with 77.5 % of extract: 1,162.5 kg; the first water of 5,873 kg, the malt's own 67.5 and less 4 % of the extract.
  const water = rig.waters[0] + 67.5 - 0.04 * 1162.5;
  const first = played.states.find(({ wort }) => wort.water > 0)!.wort;
  expect(first.extract / (first.water + first.extract)).toBeCloseTo(1162.5 / (1162.5 + water), 9);
});

test('the mash stands where the heat of grist and water puts it, and water to warm it does what a rescue says', () => {
  const stood = played.states.find(({ happened }) => happened.some(({ id }) => id === 'mashed'))!;
  // By hand: malt at 0.4 of water's heat, 4 L/kg, wetting 1.5 − 0.05 K at 2.68 L/kg or 1.02 here: (0.4 × 15 + 4 × strike) ÷ 4.4 + 1.
  expect(Math.abs(stood.temperature - ((0.4 * 15 + 4 * stood.temperatures[0]!) / 4.4 + 1))).toBeLessThan(
    0.15,
  );
  const cold: TunState = { ...stood, temperature: 62, comes: 0 };
  const warmed = actAtTun(rig, cold, { do: 'warm' }).state;
  const standing = { malt: rig.setup.bed.malt, water: litres(cold.mobile.water + cold.kept.water), maltMoisture: percent(4.5), temperature: celsius(62) }; // prettier-ignore
  expect(apart(answer({ litres: rescueWater(standing, celsius(warmed.temperature), celsius(90)) } as { litres: number }).litres, warmed.extra)).toBeLessThan(1e-9); // prettier-ignore
});

test('drawn too fast the bed sets, draws no more by force, and underletting frees it', () => {
  const at = play(rig, 10);
  const ids = at.state.wrong.map(({ id }) => id);
  expect(ids).toContain('set-bed');
  const set = at.states.find(({ isSet }) => isSet)!;
  const pulled = stepTun(rig, actAtTun(rig, { ...set, valve: 5 }, { do: 'valve', to: 8 }).state);
  expect(pulled.flow).toBe(0);
  expect(pulled.wrong.map(({ id }) => id)).toContain('forced');
  const shut = actAtTun(rig, set, { do: 'valve', to: 0 }).state;
  const freed = actAtTun(rig, shut, { do: 'underlet' }).state;
  const runs = stepTun(rig, actAtTun(rig, freed, { do: 'valve', to: 3 }).state);
  expect(freed.isSet).toBe(false);
  expect(runs.flow).toBeGreaterThan(0.4 * rig.usual);
  expect(played.state.wrong).toEqual([]);
});

test('wort taken before the iodine is clear, or cloudy, is a fault; nobody reaches in', () => {
  const mashed = played.states.find(({ happened }) => happened.some(({ id }) => id === 'mashed'))!;
  let state = actAtTun(rig, actAtTun(rig, mashed, { do: 'run', to: 'washback' }).state, {
    do: 'valve',
    to: 2,
  }).state;
  expect(actAtTun(rig, mashed, { do: 'iodine' }).says).toContain('blue-black');
  state = stepTun(rig, state);
  expect(state.wrong.map(({ id }) => id).toSorted()).toEqual(['blue', 'cloudy']);
  expect(actAtTun(rig, mashed, { do: 'let-in' }).state.wrong.map(({ id }) => id)).toEqual(['let-in']);
});

test('a mash by the house’s rule has nearly all its points, and the parts make a hundred', () => {
  expect(Object.values(tunPoints).reduce((sum, each) => sum + each, 0)).toBe(100);
  expect(scoreOfTun(rig, played.state).total).toBeGreaterThanOrEqual(95);
  expect(scoreOfTun(rig, beginTun(rig)).total).toBe(0);
});

test('round by round the weak wort comes to the balance that is solved at once', () => {
  // Each mash as the house makes it, lending its weak wort to the next; the balance is solved directly, by other code.
  let done: TunDone[] = [];
  for (let i = 0; i < 10; i++) {
    const { goal } = rigged({}, done);
    done = [...done, { volume: goal.volume, gravity: goal.gravity, water: goal.weak.water, extract: goal.weak.extract, score: 100 }]; // prettier-ignore
  }
  const last = rigged({}, done);
  const second = litresPerKilogram(last.waters[1] / 0.97485 / 1500); // L/kg at 75 °C, where water has 974.85 kg/m³ (published)
  const { bed, ratio } = last.setup;
  const waters = [{ ratio, temperature: celsius(last.goal.strike) }, { ratio: second, temperature: celsius(75) }, { ratio: litresPerKilogram(2), temperature: celsius(85) }]; // prettier-ignore
  const balance = answer(returnWeakWorts(bed, waters, 2));
  expect(apart(last.goal.weak.extract, balance.weak.extract)).toBeLessThan(1e-4);
  expect(apart(last.goal.wort.extract, balance.wort.extract)).toBeLessThan(1e-4);
});

test('the log replays to the same mash', () => {
  expect(replay(tunCourse, rig, played.log, 1500)).toEqual(played.state);
});

test('somebody asks to reach in at the minute that was drawn, once', () => {
  const asked = rigged({ asks: { at: 30 } }); // 60 steps of half a minute
  let state = beginTun(asked);
  const times = () => state.happened.filter(({ id }) => id === 'asks').length;
  for (const [steps, told] of [[59, 0], [60, 1], [70, 1]] as const) {
    while (state.step < steps) state = stepTun(asked, state);
    expect([steps, times(), state.isAsked]).toEqual([steps, told, told === 1]);
  }
}); // prettier-ignore
