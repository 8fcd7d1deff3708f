// A shift as it is drawn, written down and linked: the same number for everybody, and a strict door.
import { expect, test } from 'vitest';
import { line } from '../../src/core/line/line.ts';
import { rigOfStill, type ShiftEvents } from '../../src/core/shift/still/rig.ts';
import { cutAmounts } from '../../src/core/distilling/cuts.ts';
import { amountsOf, portionOf, plus } from '../../src/core/spirit/amounts.ts';
import { scoreOfStill } from '../../src/core/shift/still/score.ts';
import { backOf } from '../../src/core/shift/still/made.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { drawStillEvents } from '../../src/shift/still/draw.ts';
import { isSeed, ROUNDS_OF_SHIFT } from '../../src/shift/seed.ts';
import { codeOfHouse, linkOfShift, resultLine, seedOfLink } from '../../src/shift/link.ts';
import {
  firstStillShift,
  houseOfStill,
  nextOfShift,
  setupOfStill,
  type StillShift,
} from '../../src/shift/still/shift.ts';
import { decodeStill, encodeStill } from '../../src/shift/still/text.ts';
import { LONGEST_SHIFT_TEXT, MOST_ACTIONS } from '../../src/shift/text.ts';
import { answer, apart } from '../core/draw.ts';
import { play } from '../core/shift/still/stillman.ts';
import { injections, nested, notNumbers, prototypeKeys } from '../hostile-texts.ts';

const house = houseOfStill('Harrowmere', answer(line(builtInHouse)), { charge: 3700, hours: 8 });
const shift = firstStillShift(7, house);

test('a seed draws the same each time, and others draw others', () => {
  expect(drawStillEvents(7, 1)).toEqual(drawStillEvents(7, 1));
  const drawn = new Set(Array.from({ length: 500 }, (_, i) => JSON.stringify(drawStillEvents(i + 1, 1))));
  expect(drawn.size).toBe(500);
  expect(drawStillEvents(7, 2)).not.toEqual(drawStillEvents(7, 1));
});

test('of every seed something comes, within what the model takes, and everything comes of some', () => {
  const seen: Record<keyof ShiftEvents, number> = { lively: 0, warm: 0, block: 0, asks: 0, jar: 0, clears: 0, hazesBelow: 0 };
  for (let seed = 1; seed <= 2000; seed++) {
    const events = drawStillEvents(seed, 1 + (seed % ROUNDS_OF_SHIFT));
    expect(events.warm ?? events.block ?? events.asks).toBeDefined();
    for (const key of Object.keys(events) as (keyof ShiftEvents)[]) if (events[key]) seen[key]++;
    expect(events.lively.stands).toBeGreaterThanOrEqual(0.6);
    expect(events.clears).toBeLessThanOrEqual(1);
    for (const event of [events.warm, events.block, events.asks])
      expect(event === undefined || (event.at > 0.1 && event.at < 0.9)).toBe(true);
  }
  expect(Math.min(...Object.values(seen))).toBeGreaterThan(600);
}); // prettier-ignore

test.each([1, 2, 3, 4, 999_999])(
  'shift %s can be run without a danger, and for at least 95 points',
  (seed) => {
    const rig = answer(rigOfStill(setupOfStill(shift), drawStillEvents(seed, 1)));
    const { state } = play(rig);
    expect(state.isDone).toBe(true);
    expect(state.wrong).toEqual([]);
    expect(scoreOfStill(rig, state).total).toBeGreaterThanOrEqual(95);
  },
);

test('twelve rounds by the house’s own cuts settle at the heart of its balanced round', () => {
  // Each charge cut by the house’s figures, as a shift without a fault is; the balance is solved directly, by other code.
  let now: StillShift = shift;
  for (let round = 1; round <= ROUNDS_OF_SHIFT; round++) {
    const { reflux, pressure, cuts } = now.house;
    const parts = answer(cutAmounts(amountsOf(now.charge), { reflux, pressure }, cuts));
    const heart = portionOf(parts.heart);
    const back = portionOf(plus(parts.foreshots, parts.feints));
    if (round === 1) expect(apart(heart.alcohol, house.settles)).toBeGreaterThan(0.1);
    if (round === ROUNDS_OF_SHIFT) expect(apart(heart.alcohol, house.settles)).toBeLessThan(0.01);
    now = nextOfShift(now, { charge: now.charge, heart, back, score: 100 });
  }
  expect(now.done.length).toBe(ROUNDS_OF_SHIFT);
});

test('what a round sends back is in the next charge, and nothing of it is lost', () => {
  const rig = answer(rigOfStill(setupOfStill(shift), drawStillEvents(7, 1)));
  const back = backOf(play(rig).state);
  const { charge, waits } = nextOfShift(shift, {
    charge: shift.charge,
    heart: rig.goal.heart,
    back,
    score: 1,
  });
  const alcohol = ({ volume, strength }: StillShift['charge']) => (volume * strength) / 100;
  expect(alcohol(charge) + alcohol(waits)).toBeCloseTo(alcohol(house.lowWines) + back.alcohol, 6);
});

const rig = answer(rigOfStill(setupOfStill(shift), drawStillEvents(7, 1)));
const played = play(rig);
const whole: StillShift = { ...shift, log: [...played.log, { step: played.state.step, action: { do: 'note', text: 'Quiet <b>night</b>' } }], step: played.state.step, done: [{ charge: shift.charge, heart: shift.charge, back: shift.charge, score: 88 }] }; // prettier-ignore

test('a shift with its log is read again as it was written', () => {
  expect(decodeStill(encodeStill(whole))).toEqual(whole);
  expect(decodeStill(encodeStill(shift))).toEqual(shift);
});

const changed = (change: (data: Record<string, unknown>) => void) => {
  const data = JSON.parse(encodeStill(whole)) as Record<string, unknown>;
  change(data);
  return JSON.stringify(data);
};
test.each<[string, string]>([
  ['nothing', ''],
  ['no text of one', '{'],
  ['a list', '[]'],
  ['a text without an end', nested(50_000)],
  ['another format', changed((data) => (data['format'] = 'other'))],
  ['a later version', changed((data) => (data['version'] = 2))],
  ['a key that is not known', changed((data) => (data['more'] = 1))],
  ['a seed of 0', changed((data) => (data['seed'] = 0))],
  ['a seed that is text', changed((data) => (data['seed'] = '7'))],
  ['a step of ten days', changed((data) => (data['step'] = 172_800))],
  ['thirteen charges', changed((data) => (data['done'] = Array.from({ length: 13 }, () => whole.done[0])))],
  ['a charge of pure alcohol', changed((data) => (data['charge'] = { volume: 3000, strength: 100 }))],
  ['a charge of 1e999 L', encodeStill(whole).replace(/"volume":[\d.]+/, '"volume":1e999')],
  ['steam at 11', changed((data) => (data['log'] = [{ step: 1, action: { do: 'steam', to: 11 } }]))],
  ['an action of the prototype', changed((data) => (data['log'] = [{ step: 1, action: { do: 'constructor' } }]))],
  ['a log out of order', changed((data) => (data['log'] = [...whole.log].reverse()))],
  ['too long a log', changed((data) => (data['log'] = Array.from({ length: MOST_ACTIONS + 1 }, () => whole.log[0])))],
  ['too long a text', 'x'.repeat(LONGEST_SHIFT_TEXT + 1)],
  ['foreshots in two ways', encodeStill(whole).replace('{"share":', '{"volume":5,"share":')],
])('%s is refused in a sentence', (_, text) => {
  const read = decodeStill(text);
  expect('problem' in read && /[a-z].*\.$/.test(read.problem)).toBe(true);
}); // prettier-ignore

test('a key of the prototype is no key of a shift', () => {
  for (const key of prototypeKeys) expect(decodeStill(`{"${key}":1}`)).toHaveProperty('problem');
});

test('a link carries a number of a shift, and no other text is one', () => {
  for (const seed of [1, 7, 999_999]) expect(seedOfLink(linkOfShift(seed))).toBe(seed);
  expect(seedOfLink('#house=x')).toBeUndefined();
  expect(seedOfLink('')).toBeUndefined();
  for (const bad of ['', '0', '-1', '1000000', '7.5', '007', '7 ', '%37', ...notNumbers, ...injections])
    expect(seedOfLink(`#shift=${bad}`)).toHaveProperty('problem');
  for (const bad of [0, 1_000_000, 1.5, '7', null, undefined, Number.NaN]) expect(isSeed(bad)).toBe(false);
});

test('the line of a result says shift, still, charge, points and day; the same figures have the same code', () => {
  expect(resultLine(whole, { at: 'still', round: 'charge' }, 88, '2026-05-14')).toBe(`Shift 7, still ${codeOfHouse(house)}, charge 2: 88 of 100, 2026-05-14`); // prettier-ignore
  expect(codeOfHouse({ ...house, name: 'Sallowby' })).toBe(codeOfHouse(house));
  expect(codeOfHouse({ ...house, hours: 9 })).not.toBe(codeOfHouse(house));
  expect(codeOfHouse(house)).toMatch(/^[0-9A-Z]{7}$/);
});
