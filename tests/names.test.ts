// A name means one thing: no two files of the book export a type, a function, a constant or a component of one name, but those that are alike on purpose.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

/** Each kind of shift has its own of these, in a file of the same place; three pages ask alike how a house knows its figures. */
const alikeTypes = new Set(['Action', 'Happening', 'Rig', 'Wrong', 'HowKnown']);
/** Every page that is no page of text answers to `GET`, what is opened late goes into its place by `fill`. */
const alikeValues = new Set(['GET', 'fill']);
/** What the reader of talks calls alike: its own figures, a stage by its words, topics by their places, a number with its unit and one made of a name. */
const ofTalks = new Set(['figureIds', 'stageOf', 'topics', 'numberOf']);

const types = /^export (?:interface|type) (\w+)/gm;
const values = /^export (?:default )?(?:async )?(?:function\*?|const|class) (\w+|\[[^\]]*\])/gm;

const src = join(import.meta.dirname, '..', 'src');
const texts = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .filter((file) => /\.tsx?$/.test(file))
  .map((file) => [file, readFileSync(join(src, file), 'utf8')] as const);

/** The files that export each name, as a pattern finds it. */
function exported(all: typeof texts, pattern: RegExp): ReadonlyMap<string, readonly string[]> {
  const places = new Map<string, string[]>();
  for (const [file, text] of all)
    for (const [, found] of text.matchAll(pattern))
      for (const [name] of found!.matchAll(/\w+/g)) places.set(name, [...(places.get(name) ?? []), file]);
  return places;
}
const twiceIn = (places: ReadonlyMap<string, readonly string[]>, alike: ReadonlySet<string>) =>
  [...places]
    .filter(([name, files]) => files.length > 1 && !alike.has(name))
    .map(([name, files]) => `${name}: ${files.join(', ')}`);

test('a name of a type means one thing', () => {
  const places = exported(texts, types);
  expect(places.size).toBeGreaterThan(500);
  expect(twiceIn(places, alikeTypes)).toEqual([]);
});

test('a name of a function, a constant or a component means one thing', () => {
  const places = exported(texts, values);
  expect(places.size).toBeGreaterThan(2000);
  expect(twiceIn(places, new Set([...alikeValues, ...ofTalks]))).toEqual([]);
});

test('what is alike is so in two files at least', () => {
  for (const [pattern, alike] of [
    [types, alikeTypes],
    [values, alikeValues],
    [values, ofTalks],
  ] as const) {
    const places = exported(texts, pattern);
    expect([...alike].filter((name) => (places.get(name)?.length ?? 0) < 2)).toEqual([]);
  }
});

test.each(['export const line = 1;', 'export async function line() {}', 'export const [line, other] = [1, 2];', 'export default function line() {}'])(
  'a second meaning is found: %s',
  (text) => expect(twiceIn(exported([...texts, ['second.ts', text]], values), alikeValues).join()).toContain('line: core/line/line.ts, second.ts'),
); // prettier-ignore
