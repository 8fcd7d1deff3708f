// The fact sheet as a part of the house: what is given comes back, what cannot be is told by its label, and what a card says of it.
import { expect, test } from 'vitest';
import { factIds, factKind, factSays, facts } from '../../src/house/facts.ts';
import { builtInParts } from '../../src/house/parts/built-in.ts';
import { factsPart, MOST_WORDS, withFact } from '../../src/house/parts/facts.ts';
import { readPart } from '../../src/house/parts/part.ts';
import { brokenNames, injections } from '../hostile-texts.ts';

test('a fact sheet comes back as it was given, in the order of the list', () => {
  const given = { colouring: { is: 'no', words: 'No, never.' }, water: { words: 'A spring.' }, phenols: { is: 0 } };
  const { value, problems } = factsPart.read(given);
  expect(problems).toEqual([]);
  expect(value).toEqual(given);
  expect(Object.keys(value)).toEqual(['water', 'phenols', 'colouring']);
}); // prettier-ignore

for (const [what, wrong, says] of [
  ['a choice that is none', { colouring: { is: 'perhaps' } }, 'Colouring: “perhaps” was given; it can be no, some, yes.'],
  ['a choice of the prototype', { colouring: { is: 'constructor' } }, '“constructor” was given'],
  ['a choice where there are only words', { water: { is: 'soft' } }, 'The water: “soft” was given; it is given in words alone.'],
  ['phenols in words', { phenols: { is: 'smoky' } }, 'Phenols of the malt: “smoky” was given; it can be from 0 to 400 ppm.'],
  ['too much phenol', { phenols: { is: 401 } }, 'it can be from 0 to 400 ppm.'],
  ['words without an end', { water: { words: 'a'.repeat(MOST_WORDS + 1) } }, 'up to 300 characters'],
  ['words that are a number', { water: { words: 7 } }, '“7” was given'],
  ['words on two lines', { water: { words: 'a\nb' } }, 'on one line'],
  ['no words', { water: { words: '' } }, 'The water: nothing was given'],
  ['what a fact does not hold', { water: { words: 'A spring.', since: 1900 } }, '“since” is nothing that a fact holds'],
  ['a fact that is none', { ghosts: { words: 'Two.' } }, '“ghosts” is not a fact'],
  ['a fact that is a text', { water: 'A spring.' }, 'this is no fact.'],
] as const)
  test(`${what} is told, and the rest is taken`, () => {
    const { value, problems } = factsPart.read({ lyneArm: { is: 'level' }, ...wrong });
    expect(value).toMatchObject({ lyneArm: { is: 'level' } });
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain(says);
  }); // prettier-ignore

test('words that cannot be seen or draw over their lines are refused, and marks of a page are words', () => {
  for (const [what, words] of Object.entries(brokenNames)) {
    const { value } = factsPart.read({ water: { words } });
    if (what !== 'a pair cut in two at the limit') expect(value, what).toEqual({}); // two whole letters longer than a name
  }
  for (const words of injections) expect(factsPart.read({ water: { words } }).problems).toEqual([]);
});

test('a card says the house’s own words first, with a full stop, else the sentence of its choice', () => {
  expect(factSays({ colouring: { is: 'no', words: 'No, never' } }, 'colouring')).toBe('No, never.');
  expect(factSays({ colouring: { words: 'Never!' } }, 'colouring')).toBe('Never!');
  expect(factSays({ colouring: { is: 'no' } }, 'colouring')).toBe('We add no colour.');
  expect(factSays({ phenols: { is: 35 } }, 'phenols')).toBe(
    'Our malt has 35\u00a0ppm of phenols, measured on the malt.',
  );
  expect(factSays({ phenols: { is: 2.5 } }, 'phenols')).toContain('2.5\u00a0ppm');
  expect(factSays({}, 'colouring')).toBeUndefined();
});

test('every choice has a sentence, and every fact a question of its own', () => {
  for (const id of factIds)
    for (const is of Object.keys(factKind(id).choices ?? {}))
      expect(factSays({ [id]: { is } }, id)).toMatch(/^[A-Z].*\.$/);
  expect(new Set(Object.values(facts).map(({ asks }) => asks)).size).toBe(factIds.length);
});

test('a fact of which nothing is said any more is left out', () => {
  const given = withFact(withFact({}, 'colouring', { is: 'no' }), 'colouring', { words: 'Never.' });
  expect(given).toEqual({ colouring: { is: 'no', words: 'Never.' } });
  expect(withFact(given, 'colouring', { is: undefined })).toEqual({ colouring: { words: 'Never.' } });
  expect(withFact({ colouring: { is: 'no' } }, 'colouring', { is: undefined })).toEqual({});
});

test('the built-in house says something of every fact', () => {
  const { value, problems } = readPart(factsPart, builtInParts.facts);
  expect(problems).toEqual([]);
  expect(factIds.filter((id) => factSays(value, id) === undefined)).toEqual([]);
});
