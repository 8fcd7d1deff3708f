// The table of figures: each figure said once, and true of the built-in house.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import {
  figureIds,
  figureTable,
  headOf,
  isGiven,
  nameWhereSaid,
  pathsOf,
} from '../../src/core/figures/index.ts';
import { numberAt } from '../../src/core/line/beside.ts';
import { builtInHouse, choiceFigures, figureNames, isChoiceName, isNumberName, numberFigures, stages } from '../../src/house/figures.ts'; // prettier-ignore
import { builtInLine } from '../../src/house/line-of.ts';

const src = join(import.meta.dirname, '..', '..', 'src');
const elsewhere = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .map((file) => file.replaceAll('\\', '/'))
  .filter((file) => /\.(ts|tsx|astro)$/.test(file) && !file.startsWith('core/figures/'))
  .map((file) => ({ file, text: readFileSync(join(src, file), 'utf8') }));

/** The innermost braces around a place of a text. */
function braces(text: string, at: number): string {
  let [start, end] = [at, at];
  for (let deep = 0; start > 0 && !(text[start] === '{' && deep-- === 0); start--)
    if (text[start] === '}') deep++;
  for (let deep = 0; end < text.length && !(text[end] === '}' && deep-- === 0); end++)
    if (text[end] === '{') deep++;
  return text.slice(start, end + 1);
}

/** What a text says of a figure of the house that the table says already. */
function repeated(text: string): string[] {
  return [...text.matchAll(/house: '(\w+)'/g)].flatMap(({ index, 1: name }) => {
    const told = braces(text, index);
    const figure = numberFigures[name as keyof typeof numberFigures];
    if (/\bkind:|\bstep:|\boptions:/.test(told)) return [told];
    const label = /label: '([^']*)'/.exec(told)?.[1];
    const range = /range: \[([^\]]*)\]/.exec(told)?.[1]?.split(',').map((end) => Number(end.replaceAll('_', ''))); // prettier-ignore
    return figure && (label === figure.label || range?.join() === figure.range.join()) ? [told] : [];
  });
}

test('a field that is a figure of the house says only what the table does not', () => {
  const all = elsewhere.flatMap(({ text }) => [...text.matchAll(/house: '\w+'/g)]);
  expect(all.length).toBeGreaterThan(80);
  expect(elsewhere.flatMap(({ file, text }) => repeated(text).map((told) => `${file}: ${told}`))).toEqual([]);
});

test('the look for repetitions is awake', () => {
  expect(repeated("a: { house: 'heartEnd' }, b: { label: 'Heart', house: 'heartEnd' }")).toEqual([]);
  expect(repeated("{ label: 'Heart ends at', house: 'heartEnd' }")).toHaveLength(1);
  expect(repeated("{ house: 'heartEnd', range: [20, 85] }")).toHaveLength(1);
  expect(repeated("{ kind: 'strength', house: 'heartEnd' }")).toHaveLength(1);
});

test('no other file sets up a table with limits or kinds by the names of figures', () => {
  const names = figureIds.flatMap((id) => [id, nameWhereSaid(id)]).join('|');
  const entry = new RegExp(`^\\s*(?:${names}): \\{[^}]*\\b(?:range|limits|kind): (?:\\[|')`, 'gm');
  const found = elsewhere.filter(({ file }) => !file.startsWith('calculators/')).flatMap(({ file, text }) =>
    [...text.matchAll(entry)].map(([line]) => `${file}: ${line.trim()}`),
  ); // prettier-ignore
  // A script's own words for what is no kind of the core: a share of the grist, a loss, a humidity, weeks.
  expect(found.filter((each) => !/^talk\/figures\.ts: \w+: \{ kind: '$/.test(each))).toEqual([]);
  expect('\n  heartEnds: { label: 2, range: [1, 2] }'.match(entry)).toHaveLength(1);
});

test('names are unique, at fields and where they are said', () => {
  for (const of of [nameWhereSaid, headOf]) {
    const all = figureIds.map(of);
    expect(all.filter((name, i) => all.indexOf(name) !== i)).toEqual([]);
  }
  for (const id of figureIds) expect(headOf(id)).toMatch(/^[A-Z]/);
});

test.each(figureIds)('%s stands in the line, within its limits, and where it is said to be usual', (id) => {
  const { limits, usual, ...figure } = figureTable[id];
  expect(limits[0]).toBeLessThan(limits[1]);
  if (usual) {
    expect(usual.range[0]).toBeLessThanOrEqual(usual.range[1]);
    expect(usual.range[0]).toBeGreaterThanOrEqual(limits[0]);
    expect(usual.range[1]).toBeLessThanOrEqual(limits[1]);
  }
  if (figure.is === 'said') return expect(pathsOf(id)).toEqual([]);
  const places = [...pathsOf(id), ...(isGiven(figureTable[id]) ? [`house.${id}`] : [])];
  for (const path of places) {
    const value = numberAt(builtInLine(), path);
    if (value === undefined) expect(path, `the line has no number at ${path}: src/core/line/line.ts, or src/core/line/beside.ts (only a size of cask may be missing)`).toMatch(/^beside\.(barrel|hogshead|butt)$/);
    else expect(value >= limits[0] && value <= limits[1], `${path} is ${value}`).toBe(true);
  }
  const first = numberAt(builtInLine(), pathsOf(id)[0]!)!;
  if (usual) expect(first >= usual.range[0] && first <= usual.range[1], `${first} is usual`).toBe(true);
}); // prettier-ignore

test('a figure given is one that the built-in house has, and typical values and clean ones can be', () => {
  const given = figureIds.filter((id) => isGiven(figureTable[id]));
  const missing = given.filter((id) => !(id in builtInHouse));
  expect(missing, 'content/houses/harrowmere.json has no value of these').toEqual([]);
  const unknown = figureNames.filter((name) => !isNumberName(name) && !isChoiceName(name));
  expect(unknown, 'no file of src/core/figures says what these are').toEqual([]);
  for (const id of figureIds) {
    const { limits, quoted, ...figure } = figureTable[id];
    const clean = 'clean' in figure ? (figure.clean ?? []) : [];
    for (const value of [...clean, ...(quoted ? [quoted.typical] : [])])
      expect(value >= limits[0] && value <= limits[1], `${id} ${value}`).toBe(true);
  }
});

test('a choice has its stage, and no figure has its name', () => {
  for (const name of Object.keys(choiceFigures) as (keyof typeof choiceFigures)[]) {
    expect(stages).toContain(choiceFigures[name].stage);
    expect(figureIds).not.toContain(name);
  }
});
