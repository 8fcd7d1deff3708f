// A type means one thing: no two files of the book export a type of one name, but those that are alike on purpose.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

/** Each kind of shift has its own of these, in a file of the same place; three pages ask alike how a house knows its figures. */
const alike = new Set(['Action', 'Happening', 'Rig', 'Wrong', 'HowKnown']);

const src = join(import.meta.dirname, '..', 'src');
/** What each name is exported as, by its files. */
function exported(): ReadonlyMap<string, readonly string[]> {
  const places = new Map<string, string[]>();
  for (const file of readdirSync(src, { recursive: true, encoding: 'utf8' }).filter((each) => /\.tsx?$/.test(each)))
    for (const [, name] of readFileSync(join(src, file), 'utf8').matchAll(/^export (?:interface|type) (\w+)/gm))
      places.set(name!, [...(places.get(name!) ?? []), file]);
  return places;
} // prettier-ignore

test('a name of a type means one thing', () => {
  const places = exported();
  expect(places.size).toBeGreaterThan(500);
  const twice = [...places].filter(([name, files]) => files.length > 1 && !alike.has(name));
  expect(twice.map(([name, files]) => `${name}: ${files.join(', ')}`)).toEqual([]);
});
