// What a desk tells before it is needed: every part of the points, by the house's own figures; and the desk as it was left.
import { expect, test, vi } from 'vitest';
import { line } from '../../src/core/line/line.ts';
import * as casks from '../../src/core/shift/casks/score.ts';
import { rigOfCasks as casksRig } from '../../src/core/shift/casks/rig.ts';
import * as still from '../../src/core/shift/still/score.ts';
import { rigOfStill as stillRig } from '../../src/core/shift/still/rig.ts';
import * as tun from '../../src/core/shift/tun/score.ts';
import { rigOfTun as tunRig } from '../../src/core/shift/tun/rig.ts';
import * as washback from '../../src/core/shift/washback/score.ts';
import { rigOfWashback as washbackRig } from '../../src/core/shift/washback/rig.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { houseOfCasks, roundOfCasks } from '../../src/shift/casks/shift.ts';
import { drawStillEvents as drawStill } from '../../src/shift/still/draw.ts';
import { firstStillShift, houseOfStill, setupOfStill as stillSetup } from '../../src/shift/still/shift.ts';
import { drawTunEvents as drawTun } from '../../src/shift/tun/draw.ts';
import { houseOfTun, setupOfTun as tunSetup } from '../../src/shift/tun/shift.ts';
import { drawWashbackEvents as drawWashback } from '../../src/shift/washback/draw.ts';
import { houseOfWashback, setupOfWashback as washbackSetup } from '../../src/shift/washback/shift.ts';
import { keeperOf } from '../../src/islands/shift-kept.ts';
import { answer } from '../core/draw.ts';

const own = answer(line(builtInHouse));
const first = firstStillShift(7, houseOfStill('Harrowmere', own, { charge: 3700, hours: 8 }));
if ('refused' in first) throw new Error(String(first.refused));
const atWashback = { house: houseOfWashback('Harrowmere', own), done: [] };
const atTun = { house: houseOfTun('Harrowmere', own), done: [] };
const inStores = roundOfCasks({ seed: 7, house: houseOfCasks('Harrowmere', own), done: [] });

const goals = {
  still: [still.stillPoints, still.goalsOfStill(answer(stillRig(stillSetup(first), drawStill(7, 1))))],
  washback: [washback.washbackPoints, washback.goalsOfWashback(answer(washbackRig(washbackSetup({ seed: 7, log: [], step: 0, ...atWashback }), drawWashback(7, 1, own.house.fermentationHours))))],
  tun: [tun.tunPoints, tun.goalsOfTun(answer(tunRig(tunSetup(atTun), drawTun(7, 1))))],
  casks: [casks.casksPoints, casks.goalsOfCasks(answer(casksRig(inStores.setup, inStores.events)))],
} as const; // prettier-ignore

test.each(Object.entries(goals))(
  'at the %s every part of the hundred points is told',
  (_, [points, told]) => {
    expect(told.map(({ id }) => id)).toEqual(Object.keys(points));
    expect(told.reduce((sum, { of }) => sum + of, 0)).toBe(100);
    for (const { goal } of told) expect(goal).not.toMatch(/undefined|NaN|Infinity/);
  },
);

test('what is told is what the house does', () => {
  const said = (kind: keyof typeof goals) => goals[kind][1].map(({ goal }) => goal).join('\n');
  expect(said('still')).toContain(`At ${builtInHouse.heartEnd.toFixed(1)} % vol in the safe`);
  expect(said('tun')).toContain(`${builtInHouse.mashTemperature.toFixed(1)} °C; all within 0.4 K`);
  expect(said('tun')).toContain('7,500 L; all within 1 %');
  expect(said('washback')).toContain(`Wort at ${builtInHouse.setTemperature.toFixed(1)} °C`);
  expect(said('washback')).toContain('over 5,000 ppm nobody goes in');
});

test('a desk is kept with its pace and its last words, and read whole or not at all', () => {
  const texts = new Map<string, string>();
  vi.stubGlobal('localStorage', { getItem: (key: string) => texts.get(key) ?? null, setItem: (key: string, text: string) => void texts.set(key, text) }); // prettier-ignore
  const keeper = keeperOf('shift-mash-tun', () => '', () => ({ problem: 'none' })); // prettier-ignore
  expect(keeper.desk()).toBeUndefined();
  const desk = { seed: 3, round: 0, step: 40, pace: 20, said: 'The mash is in.' };
  expect(keeper.keepDesk(desk)).toBe(true);
  expect(keeper.desk()).toEqual(desk);
  const [key] = [...texts.keys()];
  for (const text of ['nonsense', '{"seed":3}', JSON.stringify({ ...desk, pace: 'fast' }), JSON.stringify({ ...desk, said: 'x'.repeat(3000) })]) {
    texts.set(key!, text);
    expect(keeper.desk(), text.slice(0, 40)).toBeUndefined();
  }
  vi.unstubAllGlobals();
}); // prettier-ignore
