// A week of mashes against integer programming, which knows nothing of how the handbook sets one out; and rule by rule.
import { expect, test } from 'vitest';
import type { WeekNeeds } from '../../src/core/week/run-weeks.ts';
import { lackForMashes } from '../../src/core/week/lack.ts';
import { mostMashes, timetable } from '../../src/core/week/timetable.ts';
import { brokenRules } from './week-rules.ts';
import plants from '../study/week/plants.json' with { type: 'json' };
import solved from '../study/week/solved.json' with { type: 'json' };

const HOUR = 1; // h; the solver's step
/** Plants of which the handbook finds fewer mashes than the solver, with the reason in tests/study/week/reasons.md. */
const fewer: Readonly<Record<number, number>> = { 31: 6 };
const all = plants as readonly WeekNeeds[];
const answers = solved as Readonly<Record<string, { most: number; undecided: readonly number[] }>>;

test('every plant was given to the solver, and it decided on nearly all', () => {
  expect(Object.keys(answers)).toHaveLength(all.length);
  expect(all.length).toBeGreaterThanOrEqual(30);
  expect(Object.values(answers).filter(({ undecided }) => undecided.length > 0).length).toBeLessThanOrEqual(
    2,
  );
});

for (const [i, plant] of all.entries())
  test(`plant ${i}: the most mashes are the solver’s, and their week keeps every rule`, () => {
    const { most, undecided } = answers[i]!;
    const own = mostMashes(plant, 100, HOUR);
    if (undecided.length === 0) expect(own).toBe(fewer[i] ?? most);
    else {
      expect(own).toBeGreaterThanOrEqual(most);
      expect([most, ...undecided]).toContain(own);
    }
    const week = timetable(plant, own, HOUR)!;
    expect(week.mashes).toHaveLength(own);
    expect(brokenRules(week)).toEqual([]);
    expect(timetable(plant, own + 1, HOUR)).toBeUndefined();
    const lack = lackForMashes(plant, own + 1, HOUR);
    const named = lack.uses.find(({ kind }) => kind === lack.kind);
    if (named) expect(lack.hours).toBeCloseTo(Math.max(0, named.needed - named.available), 9);
    else expect(['receiver', 'charger']).toContain(lack.kind);
  });

test('in quarters of an hour the weeks keep the rules as well', () => {
  for (const plant of all.slice(0, 8)) {
    const most = mostMashes(plant);
    expect(brokenRules(timetable(plant, most)!)).toEqual([]);
  }
});

test('the rules are awake: a week that is tampered with breaks them', () => {
  const week = timetable(all[13]!, 6, HOUR)!;
  expect(brokenRules(week)).toEqual([]);
  const sooner = week.washbacks.map((each, i) => (i === 0 ? { ...each, emptied: each.ready - 10 } : each));
  expect(brokenRules({ ...week, washbacks: sooner })).not.toEqual([]);
  const runs = week.runs.map((stage, s) =>
    s === 0 ? stage.map((run) => ({ ...run, vessel: 0, start: 0, end: 9 })) : stage,
  );
  expect(brokenRules({ ...week, runs })).not.toEqual([]);
  expect(brokenRules({ ...week, needs: { ...week.needs, receiver: week.most - 10 } })).not.toEqual([]);
});
