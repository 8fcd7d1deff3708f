// The part of weeks and periods: read back as it is given, and every thing that cannot be used told by name.
import { expect, test } from 'vitest';
import { builtInHouse } from '../../src/house/figures.ts';
import { builtInParts } from '../../src/house/parts/built-in.ts';
import { freshPeriod, MOST_PERIODS, periodsPart } from '../../src/house/parts/periods.ts';
import { balanceOf } from '../../src/core/week/period.ts';
import { usualWeek } from '../../src/core/week/settings.ts';
import { line, type Line } from '../../src/core/line/line.ts';

const { value: built } = periodsPart.read(builtInParts.periods);
const [week12] = built.periods;
const problemsOf = (data: unknown) => periodsPart.read(data).problems;

test('a fresh period of a whole house is read, and balances at nothing', () => {
  const fresh = freshPeriod('Period 2', builtInHouse);
  const given = { week: usualWeek, periods: [week12, fresh] };
  expect(periodsPart.read(JSON.parse(JSON.stringify(given)))).toEqual({ value: given, problems: [] });
  expect(balanceOf(fresh, line(builtInHouse) as Line)).toMatchObject({
    came: 0,
    left: 0,
    loss: 0,
    problems: [],
  });
});

test('the built-in house’s own period balances, and no step gives more than came to it', () => {
  const balance = balanceOf(week12!, line(builtInHouse) as Line);
  expect(balance).toMatchObject({ problems: [], worst: { step: 'wash' } });
});

test('what cannot be used is told by name, and the rest is taken', () => {
  const { value, problems } = periodsPart.read({ week: { mashDays: 9, stillHours: 20 }, periods: [week12, { ...week12, malt: -3 }, 7] });
  expect(value.week).toEqual({ stillHours: 20 }); // what was not given is usual, and not kept as the house’s own
  expect(value.periods).toEqual([week12]);
  expect(problems).toEqual([
    'Mashed on: “9” was given; it can be from 1 to 7.',
    'Period “Week 12”: the malt: “-3” was given; it can be from 0 to 20,000,000 kg.',
    'Period 3: “7” is no period.',
  ]);
  expect(problemsOf({ week: { mashDays: 2.5 } })[0]).toContain('a whole number from 1 to 7');
  expect(problemsOf({ weeks: {} })[0]).toContain('“weeks” is nothing that is known');
  expect(problemsOf({ periods: [{ ...week12, name: '' }] })[0]).toContain('a name of 1 to 40 characters');
  expect(problemsOf({ periods: [{ ...week12, spiritSent: { volume: 1, strength: 200 } }] })[0]).toContain('spirit sent on, strength');
  expect(problemsOf({ periods: [{ ...week12, opening: {} }] })[0]).toContain('Wash at the opening: litres and strength are missing');
  expect(problemsOf({ periods: [{ ...week12, extra: 1 }] })[0]).toContain('“extra” is nothing that is known');
  expect(periodsPart.read({ periods: Array.from({ length: MOST_PERIODS + 5 }, () => week12) }).value.periods).toHaveLength(MOST_PERIODS);
}); // prettier-ignore
