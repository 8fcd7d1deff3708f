// Earlier versions of a house: read strictly, kept in order; and what changed between two of them.
import { expect, test } from 'vitest';
import { changesBetween, givenOtherwise } from '../../src/house/changes.ts';
import { decodeHouse, encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { lineOf } from '../../src/house/line-of.ts';
import { datesPart, dayProblem, LONGEST_VERSION_NAME, MOST_HOUSE_VERSIONS, withVersion, type HouseVersion } from '../../src/house/parts/dates.ts'; // prettier-ignore
import { nothingKnown, type Known } from '../../src/house/parts/known.ts';
import type { House } from '../../src/core/line/house.ts';

const version: HouseVersion = {
  day: '2026-05-14',
  name: 'Spring',
  figures: builtInHouse,
  known: nothingKnown,
};
const read = (change: object) => datesPart.read([version, { ...version, ...change }]);

test('versions come back as they were put down', () => {
  const known = { given: { heartEnd: 'set' }, counted: { casksInStore: 3000 } } as const;
  const given = [
    { ...version, known },
    { ...version, day: '2024-02-29', name: 'Leap day' },
  ];
  expect(datesPart.read(JSON.parse(JSON.stringify(given)))).toEqual({ value: given, problems: [] });
});

for (const [what, wrong, says] of [
  ['no day', { day: '' }, 'Version 2: The day: nothing was given'],
  ['a day that is not in the calendar', { day: '2025-02-29' }, '“2025-02-29” was given'],
  ['a day of another form', { day: '14/05/2026' }, 'such as 2026-05-14'],
  ['a name of two lines', { name: 'a\nb' }, 'What you call it'],
  ['a name without an end', { name: 'a'.repeat(LONGEST_VERSION_NAME + 1) }, 'up to 40 characters'],
  ['no name', { name: '' }, 'What you call it: nothing was given'],
  ['no figures', { figures: [] }, 'Version 2: it has no figures.'],
] as const)
  test(`a version with ${what} is told and left out`, () => {
    const { value, problems } = read(wrong);
    expect(value).toEqual([version]);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain(says);
  });

test('a figure that cannot be is told, and takes the built-in value as one that is missing does', () => {
  const { value, problems } = read({ figures: { heartEnd: 60, flour: 'white', ghosts: 2 } });
  expect(value[1]!.figures).toEqual({ ...builtInHouse, heartEnd: 60 });
  expect(problems).toHaveLength(2);
  expect(problems.join()).toContain('“white” was given');
  expect(problems.join()).toContain('“ghosts” is not a figure');
  expect(read({ known: { given: { ghosts: 'set' } } }).problems.join()).toContain('Version 2: “ghosts”');
  expect(read({ since: 1 }).problems).toEqual(['Version 2: “since” is nothing that a version holds.']);
});

// Every fourth year is a leap year, a century only when 400 divides it: the calendar of 1582.
test('days are those of the calendar', () => {
  for (const day of ['2024-02-29', '2000-02-29', '2026-04-30', '2026-12-31'])
    expect(dayProblem(day)).toBeUndefined();
  for (const day of ['1900-02-29', '2026-04-31', '2026-13-01', '2026-00-10', '2026-01-00', '0000-01-01'])
    expect(dayProblem(day), day).toBeDefined();
});

test('the latest day stands first, the same day and name is put down anew, and no more than 24 are kept', () => {
  const later = { ...version, day: '2026-09-01', name: 'Autumn' };
  const older = { ...version, day: '2025-01-01', name: 'New year' };
  const all = [older, later, version].reduce<readonly HouseVersion[]>(withVersion, []);
  expect(all.map(({ name }) => name)).toEqual(['Autumn', 'Spring', 'New year']);
  const anew = { ...version, figures: { ...builtInHouse, heartEnd: 60 } as House };
  expect(withVersion(all, anew)).toEqual([later, anew, older]);
  const many = Array.from({ length: MOST_HOUSE_VERSIONS + 1 }, () => version);
  expect(datesPart.read(many).value).toHaveLength(MOST_HOUSE_VERSIONS);
  expect(datesPart.read(many).problems).toEqual(['There are 25 earlier versions; the first 24 are kept.']);
});

test('a house with as many versions as it may keep fits in its text', () => {
  const dates = Array.from({ length: MOST_HOUSE_VERSIONS }, (_, i) => ({ ...version, name: `Version ${i}` }));
  const text = encodeHouse({ name: 'Sallowby', house: builtInHouse, parts: { dates } });
  expect(decodeHouse(text)).toMatchObject({ problems: [], parts: { dates } });
  expect(text.length).toBeLessThan(100_000);
});

const at = (change: object = {}, known: Known = nothingKnown) => ({
  line: lineOf({ ...builtInHouse, ...change } as House),
  known,
});

test('nothing changed is nothing told', () => {
  expect(changesBetween(at(), at())).toEqual({ given: [], counted: [], computed: [], cards: [] });
});

test('a figure, a choice and a count that changed are told from what to what', () => {
  const counted = { given: {}, counted: { casksInStore: 3000 } };
  const { given, counted: found } = changesBetween(at(), at({ mashesPerWeek: 7, dilution: 'never' }, counted));
  expect(given.map(({ what }) => what)).toEqual(['Mashes in a week', expect.stringMatching(/^[A-Z]/)]);
  expect(given[0]).toEqual({ what: 'Mashes in a week', was: String(builtInHouse.mashesPerWeek), now: '7' });
  expect(given[1]!.was).not.toBe(given[1]!.now);
  expect(found).toEqual([{ what: expect.stringMatching(/casks/i), was: 'not counted', now: '3,000' }]);
  expect(givenOtherwise(builtInHouse, { ...builtInHouse, mashesPerWeek: 7 } as House)).toEqual(['Mashes in a week']);
}); // prettier-ignore

test('what is computed moves by as much as a week has more mashes, no more and no less', () => {
  // A year of 7/6 the mashes: each amount of a year is 7/6 of what it was, and the strengths of a mash stay.
  const more = at({ mashesPerWeek: (builtInHouse.mashesPerWeek * 7) / 6 });
  const { computed, cards } = changesBetween(at(), more);
  expect(computed.length).toBeGreaterThan(0);
  const number = (text: string) => Number(/[\d,.]+/.exec(text)![0].replaceAll(',', ''));
  for (const { what, was, now } of computed)
    if (number(was) > 1000) expect(number(now) / number(was), what).toBeCloseTo(7 / 6, 2);
  expect(computed.map(({ what }) => what).join()).not.toMatch(/strength/i);
  expect(cards.length).toBeGreaterThan(0);
});

test('what moved most stands first, and what a table would print alike is not told', () => {
  const { computed } = changesBetween(at(), at({ heartEnd: 60 }));
  const number = (text: string) => Number(/[\d,.]+/.exec(text)![0].replaceAll(',', ''));
  const part = computed.filter(({ was }) => number(was) > 20).map(({ was, now }) => Math.abs(number(now) - number(was)) / Math.max(number(now), number(was))); // prettier-ignore
  expect(part.length).toBeGreaterThan(5);
  for (const [i, each] of part.entries()) if (i > 0) expect(each).toBeLessThan(part[i - 1]! + 0.01); // printed to a hundredth
  expect(part.every((each) => each > 0)).toBe(true);
});

test('a card says what was counted, so a count that changes changes the card', () => {
  const known = (casks: number) => ({ given: {}, counted: { casksInStore: casks } });
  const { computed, cards, counted } = changesBetween(at({}, known(3000)), at({}, known(4000)));
  expect(computed).toEqual([]);
  expect(counted).toHaveLength(1);
  expect(cards.length).toBeLessThanOrEqual(1);
});
