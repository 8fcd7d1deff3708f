// The working week by hand: shifts, charges, one mash followed to its spirit, levels, heat, and what is said of it.
import { expect, test } from 'vitest';
import { builtInHouse } from '../../src/house/figures.ts';
import { builtInParts } from '../../src/house/parts/built-in.ts';
import { plantPart } from '../../src/house/parts/plant.ts';
import type { Line } from '../../src/core/line/line.ts';
import { lineWithPlant } from '../../src/core/plant/line.ts';
import { vesselsAtHour, vesselStretches } from '../../src/core/week/vessels-at-hour.ts';
import { fermentationOf, openFrom, spreadOverWeek } from '../../src/core/week/calendar.ts';
import { chargesInOrder } from '../../src/core/week/charges.ts';
import { dayAndTime } from '../../src/core/week/clock.ts';
import { heatOfLiquor, heatOfMash, heatOfWeek } from '../../src/core/week/heat.ts';
import { lackForMashes } from '../../src/core/week/lack.ts';
import { emptyings, lowWinesLevel, spiritLevel } from '../../src/core/week/levels.ts';
import { weekNeeds } from '../../src/core/week/needs.ts';
import type { WeekNeeds } from '../../src/core/week/run-weeks.ts';
import { fitsSentence, lackSentence, mostSentence } from '../../src/core/week/sentences.ts';
import { shiftsOf, usualWeek, warmthOf } from '../../src/core/week/settings.ts';
import { mostMashes, timetable } from '../../src/core/week/timetable.ts';
import { overWeekend, usableHours, usesOf } from '../../src/core/week/uses.ts';
import { warmerChange } from '../../src/core/week/warmer.ts';
import { brokenRules } from './week-rules.ts';

const always = { days: 7, from: 6, hours: 24 };
/** One tun, four washbacks, one still of each kind; a charge of each to a mash. */
const small: WeekNeeds = {
  tuns: [{ number: 1, hours: 6 }],
  washbacks: 4,
  turnRound: 6,
  short: 60,
  weekend: 60,
  wash: 8000,
  charger: 0,
  receiver: 9000,
  spiritReceiver: 2000,
  stages: [
    { id: 'wash', groups: [{ number: 1, charge: 8000, hours: 7 }], charged: 8000, drawn: 0, back: 2800, spirit: 0 },
    { id: 'spirit', groups: [{ number: 1, charge: 4500, hours: 8 }], charged: 4500, drawn: 4500, back: 1700, spirit: 900 },
  ],
  mashing: always,
  distilling: always,
}; // prettier-ignore

const plant = plantPart.read(builtInParts.plant).value;
const line = lineWithPlant(builtInHouse, plant) as Line;
const needs = weekNeeds(line, plant, shiftsOf(usualWeek)) as WeekNeeds;
const warmth = warmthOf(usualWeek);

test('work goes on while its shift is open, over midnight and over Sunday', () => {
  const day = openFrom({ days: 1, from: 6, hours: 8 }, 1);
  expect([day[5], day[6], day[13], day[14]]).toEqual([0, 8, 1, 0]);
  const nights = openFrom({ days: 7, from: 22, hours: 8 }, 1);
  expect([nights[166], nights[0], nights[6]]).toEqual([8, 6, 0]); // Sunday 22:00 goes on to Monday 06:00
  expect(openFrom({ days: 5, from: 6, hours: 24 }, 1)[6]).toBe(120); // five days and nights in one
  expect(openFrom(always, 1)[0]).toBe(Infinity);
  expect(usableHours({ days: 5, from: 6, hours: 16 }, 7)).toBe(70); // two runs of 7 h in each of five days
  expect(usableHours({ days: 5, from: 6, hours: 24 }, 7)).toBe(119); // 17 of them in 120 h
});

test('a fermentation that would reach into the weekend has the weekend’s hours', () => {
  const stills = { days: 5, from: 6, hours: 24 }; // to Saturday 06:00, hour 126
  const hours = { short: 60, weekend: 100 };
  expect(fermentationOf(66, hours, stills)).toBe(60); // full on Wednesday 18:00, over as the stills stop
  expect(fermentationOf(67, hours, stills)).toBe(100);
  expect(fermentationOf(2, hours, stills)).toBe(100); // on Monday at 02:00 it is still the weekend
  expect(fermentationOf(6, hours, stills)).toBe(60);
  expect(fermentationOf(67, hours, always)).toBe(60);
});

test('mashes are spread over days, and over the hours of each', () => {
  const shift = { days: 5, from: 6, hours: 24 };
  expect(spreadOverWeek(7, shift, 6)).toEqual([6, 18, 30, 54, 66, 78, 102]); // 2, 1, 2, 1 and 1
  expect(spreadOverWeek(3, { days: 1, from: 6, hours: 18 }, 6)).toEqual([6, 12, 18]);
  expect(spreadOverWeek(0, shift, 6)).toEqual([]);
});

test('charges are whole from each mash, or the fewest from the week', () => {
  const two = [{ number: 2, charge: 16_000, hours: 7 }];
  // 18 mashes of 30,500 L are 549,000 L: 35 charges of 15,686 L, or two of 15,250 L from each.
  expect(chargesInOrder(30_500, 18, two, 'fewest')).toHaveLength(35);
  expect(chargesInOrder(30_500, 18, two, 'by-mash')).toHaveLength(36);
  expect(chargesInOrder(30_500, 18, two, 'by-mash').at(-1)!.upTo).toBeCloseTo(1, 12);
  // Unequal stills share by what they hold: of 26,000 L the larger has 16,000.
  const unequal = [...two.map((still) => ({ ...still, number: 1 })), { number: 1, charge: 10_000, hours: 6 }];
  expect(chargesInOrder(26_000, 1, unequal, 'fewest').map(({ part }) => Math.round(26_000 * part))).toEqual([16_000, 10_000]);
  // A still that takes three mashes: one charge a mash, or two of the week's six.
  const large = [{ number: 1, charge: 24_000, hours: 9 }];
  expect(chargesInOrder(8000, 6, large, 'fewest')).toHaveLength(2);
}); // prettier-ignore

test('one mash a week, by hand', () => {
  const week = timetable(small, 1)!;
  const hours = (n: number) => n * week.step;
  // Monday 06:00 to 12:00; 60 h later, Thursday 00:00, the wash run of 7 h, and the washback is free at 06:00.
  expect(week.mashes.map(({ start, end }) => [hours(start), hours(end)])).toEqual([[6, 12]]);
  const [washback] = week.washbacks;
  expect([washback!.full, washback!.ready, washback!.emptied, washback!.end].map(hours)).toEqual([12, 72, 72, 78]);
  expect(week.runs[0]!.map(({ start, end }) => [hours(start), hours(end)])).toEqual([[72, 79]]);
  // The spirit charge of 4,500 L is there once low wines of two weeks are: at 79 h as well.
  expect(week.runs[1]!.map(({ start, end }) => [hours(start), hours(end)])).toEqual([[79, 87]]);
  expect(vesselsAtHour(week, 75).filter(({ doing }) => doing)).toEqual([
    { vessel: 'Washback', which: expect.any(Number), doing: 'clean', since: 3, left: 3 },
    { vessel: 'Wash still', which: 1, doing: 'run', since: 3, left: 4 },
  ]);
  expect(brokenRules(week)).toEqual([]);
}); // prettier-ignore

test('what does not fit is named, with the hours that are too little', () => {
  // Each mash has a washback for 6 + 60 + 6 = 72 h: five need 360 of 2 × 168 = 336 h.
  const two = { ...small, washbacks: 2 };
  expect(mostMashes(two)).toBe(4);
  expect(timetable(two, 5)).toBeUndefined();
  expect(lackForMashes(two, 5)).toMatchObject({ kind: 'washbacks', hours: 24 });
  expect(lackSentence(lackForMashes(two, 5), 5, two)).toBe(
    '5 mashes a week do not fit: the washbacks are needed for 360 h of 336 h in the week, 24 h too little.',
  );
  // Wash runs of 30 h: six need 180 of 168 h, five fit.
  const slow = { ...small, stages: [{ ...small.stages[0]!, groups: [{ number: 1, charge: 8000, hours: 30 }] }, small.stages[1]!] }; // prettier-ignore
  expect(mostMashes(slow)).toBe(5);
  expect(lackSentence(lackForMashes(slow, 6), 6, slow)).toContain('the wash still is needed for 180 h of 168 h in the week, 12 h too little'); // prettier-ignore
  // A mash a day of 8 h in shifts of 10 h: seven fit, and no eighth.
  const days = { ...small, washbacks: 9, tuns: [{ number: 1, hours: 8 }], mashing: { days: 7, from: 6, hours: 10 } }; // prettier-ignore
  expect(mostMashes(days)).toBe(7);
  expect(lackForMashes(days, 8)).toMatchObject({ kind: 'tuns', hours: 8 });
});

test('a fermentation over the weekend is counted with its own hours, and the weekend is named as the cause', () => {
  // Eight washbacks, mashes of 6 h from Monday to Friday, stills to Sunday 06:00, 6 h to empty and clean: 72 h, or 122 h over the weekend.
  const mashing = { days: 5, from: 6, hours: 24 };
  const house = { ...small, washbacks: 8, weekend: 110, receiver: Infinity, mashing, distilling: { ...mashing, days: 6 } };
  const needed = (begins: readonly number[]) => usesOf(house, begins, 'fewest').find(({ kind }) => kind === 'washbacks')!.needed;
  const [early, late] = [[6, 12, 18, 24, 30, 36], [86, 92, 98, 104, 110, 116, 117, 118]];
  expect(needed([...early, ...late])).toBe(6 * 72 + 8 * 122); // 1,408 h of 8 × 168 = 1,344 h
  expect(needed([...early.slice(1), ...late])).toBe(5 * 72 + 8 * 122); // 1,336 h
  expect(overWeekend(house, [...early, ...late])).toBe(8);
  // 14 spread: Thursday 06:00, 14:00, 22:00 and Friday 06:00, 18:00 are the last; all but the first are full less than 60 h before Sunday 06:00.
  expect(mostMashes(house)).toBe(13);
  const lack = lackForMashes(house, 14);
  expect(lack).toMatchObject({ kind: 'washbacks', hours: 0, weekend: { long: 4, isCause: true } });
  const says = lackSentence(lack, 14, house);
  expect(says).toContain('needed for 1,208 h of 1,344 h in the week, with 4 fermentations of 110 h over the weekend, but not free'); // 10 × 72 + 4 × 122
  expect(says).toContain('The weekend is the cause: were no fermentation longer than 60 h, it would do.');
  expect(timetable({ ...house, weekend: 60 }, 14)).toBeDefined();
  expect(mostSentence(13, lack, house, 14)).toBe('The most is 13 mashes.'); // said of 14 already
  expect(mostSentence(13, lack, house, 6)).toContain('one more does not fit');
  // Stills that run all seven days have no weekend to wait for.
  const seven = { ...house, distilling: always };
  expect(lackSentence(lackForMashes(seven, mostMashes(seven) + 1), mostMashes(seven) + 1, seven)).not.toContain('weekend');
}); // prettier-ignore

test('a receiver that is too small is named, with about what it would have to hold', () => {
  // A charge of 4,500 L needs low wines of 2,800 L and 1,700 L of feints: no less than 4,500 L can do.
  const tight = { ...small, receiver: 4200 };
  expect(mostMashes(tight)).toBe(0);
  const lack = lackForMashes(tight, 1);
  expect(lack).toMatchObject({ kind: 'receiver', behind: Infinity, alone: true });
  expect(lack.litres).toBeGreaterThanOrEqual(4500);
  expect(lack.litres).toBeLessThanOrEqual(4550);
  expect(timetable({ ...small, receiver: lack.litres! }, 1)).toBeDefined();
  expect(mostSentence(0, lack, tight)).toContain('the low wines receiver holds 4,200 L, and would have to hold about 4,500 L');
}); // prettier-ignore

test('where another order of the work might do, it says how much shorter, or how many more', () => {
  const next = mostMashes(needs) + 1;
  const lack = lackForMashes(needs, next);
  // Seven of 8 + 72 + 6 h, those of Thursday and Friday 38 h longer: 678 h of 4 × 168 = 672 h.
  expect(next).toBe(7);
  expect(lack).toMatchObject({ kind: 'washbacks', hours: 6, weekend: { long: 2 } });
  const short = (by: number) => ({ ...needs, short: needs.short - by, weekend: needs.weekend - by });
  expect(timetable(short(lack.shorter!), next)).toBeDefined();
  expect(timetable(short(lack.shorter! - 0.25), next)).toBeUndefined();
  expect(timetable({ ...needs, washbacks: needs.washbacks + lack.more! }, next)).toBeDefined();
});

test('the built-in house’s week fits its vessels and keeps the rules', () => {
  const week = timetable(needs, builtInHouse.mashesPerWeek)!;
  expect(brokenRules(week)).toEqual([]);
  expect(fitsSentence(week)).toMatch(/^6 mashes a week fit\. Nearest the limit: the washbacks, in use for \d+ h of 672 h, \d+ %\.$/); // prettier-ignore
  for (const { start, end } of vesselStretches(week)) expect(end).toBeGreaterThan(start);
  expect(vesselsAtHour(week, 10)).toHaveLength(1 + 4 + 1 + 1);
});

test('where no still ever rests, the week says that no fermentation takes the hours of a weekend', () => {
  const endless = { ...needs, mashing: always, distilling: always };
  const said = fitsSentence(timetable(endless, 6)!);
  expect(said).toContain(`no fermentation takes ${needs.weekend} h.`);
  expect(fitsSentence(timetable({ ...endless, weekend: needs.short }, 6)!)).not.toContain('no fermentation');
});

test('levels keep to their vessels and come back after a week, and no spirit is lost', () => {
  for (const [each, mashes] of [
    [small, 5],
    [needs, 6],
    [{ ...small, spiritReceiver: 1000 }, 8],
  ] as const) {
    // prettier-ignore
    const week = timetable(each, mashes)!;
    const [low, spirit] = [lowWinesLevel(week), spiritLevel(week)];
    for (const [levels, holds] of [
      [low, each.receiver],
      [spirit, each.spiritReceiver],
    ] as const) {
      // prettier-ignore
      expect(Math.min(...levels.map(({ litres }) => litres))).toBeGreaterThan(-1);
      expect(Math.max(...levels.map(({ litres }) => litres))).toBeLessThan(holds + 1);
      expect(Math.abs(levels.at(-1)!.litres - levels[0]!.litres)).toBeLessThan(1);
    }
    const falls = spirit.slice(1).map(({ litres }, i) => Math.max(0, spirit[i]!.litres - litres));
    const out = falls.reduce((sum, fall) => sum + fall, 0);
    expect(Math.abs(out - mashes * each.stages.at(-1)!.spirit)).toBeLessThan(1);
    expect(emptyings(week).length).toBeGreaterThan(0);
  }
});

test('heat of the mashing water, by hand', () => {
  // 6,000 L at 68.36 °C weigh 5,872 kg (0.9787 kg/L, steam tables, from memory); wort of 7,920.7 kg with 1,131.8 kg of extract and
  // draff of 1,578.1 kg at 78 % hold 8,019.9 kg; starch takes up 46.5 kg, malt brings 67.5 kg: 2,126 kg more, to 75 °C.
  const hand = (4.184 * (6000 * 0.9787 * (68.36 - 10) + (8019.9 + 46.5 - 67.5 - 6000 * 0.9787) * 65)) / 1000;
  expect(heatOfLiquor(line, warmth.water) / hand).toBeCloseTo(1, 3);
});

test('the week’s heat and water are those of its mashes and runs, and none is lost on the way', () => {
  const of = heatOfMash(line, warmth);
  if ('refused' in of) throw new Error(of.refused);
  const week = timetable(needs, 6)!;
  const { steam, flame, water } = heatOfWeek(week, of, plant);
  const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0);
  const stills = of.stills.wash!.heat + of.stills.spirit!.heat;
  expect(sum(steam)).toBeCloseTo(6 * (of.liquor + stills), 4);
  expect(sum(flame)).toBe(0);
  expect(sum(water)).toBeCloseTo(6 * (of.stills.wash!.water + of.stills.spirit!.water), 3);
  // One wash charge over 7 h: nothing else is on while it runs alone, and each whole hour has a seventh.
  const alone = {
    ...plant,
    washStills: plant.washStills.map((still) => ({ ...still, heating: 'flame' as const })),
  };
  const flames = heatOfWeek(week, of, alone).flame;
  expect(Math.max(...flames)).toBeCloseTo(of.stills.wash!.heat / 7, 6);
  expect(heatOfMash(line, { ...warmth, waterLeaves: warmth.water })).toHaveProperty('refused');
});

test('wash 5 °C warmer: heat, hours and no less water; cooling water 5 °C warmer: more of it', () => {
  const given = { line, needs, mashes: 6, warmth };
  const wash = warmerChange('wash', 5, given);
  if ('refused' in wash) throw new Error(wash.refused);
  // 7,447 L of 8 % vol weigh 7,351 kg (0.9871 kg/L, OIML R 22), 470 kg of it alcohol: 5 K are 5 × (470 × 2.845 + 6,881 × 4.184) kJ.
  const saved = (5 * (470 * 2.845 + 6881 * 4.184)) / 1000 / 0.9;
  expect((wash.before.stills.wash!.heat - wash.after.stills.wash!.heat) / saved).toBeCloseTo(1, 2);
  expect(wash.hoursOfRun).toBeCloseTo((-7 * saved) / wash.before.stills.wash!.heat, 2);
  expect(wash.hoursOfWeek).toBeCloseTo(6 * wash.hoursOfRun, 9);
  expect(wash.steam).toBeCloseTo((-6 * saved) / 2.108, -1);
  expect(wash.water).toBe(0);
  const water = warmerChange('water', 5, given);
  if ('refused' in water) throw new Error(water.refused);
  // Each litre warms by 35 K and not by 40, so 40 ÷ 35 times as many are needed.
  const before = 6 * (water.before.stills.wash!.water + water.before.stills.spirit!.water);
  expect(water.water / before).toBeCloseTo(40 / 35 - 1, 9);
  expect(water.hoursOfRun).toBe(0);
  expect(warmerChange('washback', 5, given)).toHaveProperty('refused');
  expect(warmerChange('wash', 75, given)).toHaveProperty('refused');
});

test('what can never run is refused by vessel', () => {
  const refused = (changed: object, set: object = {}) =>
    (weekNeeds(line, { ...plant, ...changed }, shiftsOf({ ...usualWeek, ...set })) as { refused?: string })
      .refused;
  expect(refused({ mashTuns: [] })).toContain('No mash tun');
  expect(refused({ washbacks: [] })).toContain('No washback is named');
  expect(refused({ washbacks: [{ number: 3, full: 6000, working: 5000, material: 'wood' }] })).toContain('the wort is 7,500 L, and the largest is filled to 5,000 L'); // prettier-ignore
  expect(refused({ spiritReceiver: { holds: 400 } })).toContain('The spirit receiver holds 400 L');
  expect(refused({}, { mashHours: 5 })).toContain('no mash would be over in its day');
  expect(refused({}, { stillHours: 5 })).toContain('no run would be over in its day');
  expect(refused({})).toBeUndefined();
});

test('a time is written with its day', () => {
  expect([38, 6.25, 167.999, -1, 168].map(dayAndTime)).toEqual(['Tue 14:00', 'Mon 06:15', 'Mon 00:00', 'Sun 23:00', 'Mon 00:00']); // prettier-ignore
});

test('a week is set out in well under 100 ms', () => {
  const took = Array.from({ length: 5 }, () => {
    const began = performance.now();
    timetable(needs, 6);
    return performance.now() - began;
  });
  expect(Math.min(...took)).toBeLessThan(100);
});
