// The same links in handbooks whose core reckons a little differently: kinds and numbers stay, answers move, and what moved is told.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import type { DrawnSheet, Promised } from './drawn-by.ts';

const root = join(import.meta.dirname, '../..');
const promised = (
  JSON.parse(readFileSync(join(import.meta.dirname, 'promised-sheets.json'), 'utf8')) as readonly Promised[]
).filter(({ link }) => link.startsWith('#sheet=2.'));

/** A constant of the core: its file, and the text before its value, in front of which a factor is set. */
type Constant = readonly [file: string, before: RegExp];
const vapour: Constant = ['vapour/equilibrium.ts', /^const A12 = /m];
const balling: Constant = ['wort/attenuation.ts', /^const EXTRACT_PER_ETHANOL = /m];
const density: Constant = ['spirit/density.ts', /^const A = \[\s*/m];
const mass: Constant = ['constants.ts', /^export const WATER_MOLAR_MASS = /m];
const enzyme: Constant = ['mashing/enzymes.ts', /^const GAS_CONSTANT = /m];

const PARTS = ['package.json', 'content/houses', 'src/core', 'src/house', 'src/calculators', 'src/exercises'];
const folders: string[] = [];
afterAll(() => folders.forEach((folder) => rmSync(folder, { recursive: true })));

/** What the promised sheets draw when some constants of the core are larger by a factor. */
function drawnWith(constants: readonly Constant[], factor: number): readonly DrawnSheet[] {
  const folder = mkdtempSync(join(tmpdir(), 'other-sums-'));
  folders.push(folder);
  for (const part of PARTS) cpSync(join(root, part), join(folder, part), { recursive: true });
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'));
  for (const [file, before] of constants) {
    const path = join(folder, 'src/core', file);
    const text = readFileSync(path, 'utf8');
    if (!before.test(text)) throw new Error(`${file} has no ${before.source}`);
    writeFileSync(
      path,
      text.replace(before, (found) => `${found}${factor} * `),
    );
  }
  const drawn = execFileSync(process.execPath, [join(import.meta.dirname, 'drawn-by.ts'), folder], {
    input: JSON.stringify(promised),
    maxBuffer: 1e8,
  });
  return JSON.parse(drawn.toString()) as readonly DrawnSheet[];
}

const today = drawnWith([], 1);
const answersOf = (sheets: readonly DrawnSheet[]) => sheets.flatMap(({ answers }) => answers).map(String);
const movedFrom = (sheets: readonly DrawnSheet[]) =>
  answersOf(sheets).filter((answer, i) => answer !== answersOf(today)[i]).length;

describe.each([
  ['a vapour constant', [vapour], 1.001],
  ['Balling’s constant', [balling], 1.001],
  ['the density of spirit', [density], 1.001],
  ['the mass of water', [mass], 1.001],
  ['all of them', [vapour, balling, density, mass, enzyme], 0.999],
  ['a vapour constant, by much', [vapour], 1.05],
  ['Balling’s constant, by much', [balling], 1.02],
] as const)('with %s moved', (_, constants, factor) => {
  const moved = drawnWith(constants, factor);
  test('every promised question keeps its kind and its numbers', () => {
    expect(moved.map(({ faces }) => faces)).toEqual(today.map(({ faces }) => faces));
  });
  // Balling’s constant stands in the one prompt that needs it, and so does its answer.
  test.skipIf(constants.every((each) => each === balling))('answers follow the core', () =>
    expect(movedFrom(moved)).toBeGreaterThan(0),
  );
});

test('nothing is told where nothing has moved', () => {
  expect(today.flatMap(({ news }) => news)).toEqual([]);
});

test('an answer that has left its tolerance is told, by question, with what it was', () => {
  const news = drawnWith([vapour, balling, enzyme], 1.05).flatMap(({ news }) => news);
  expect(news.length).toBeGreaterThan(0);
  for (const sentence of news)
    expect(sentence).toMatch(
      /^The answer to question \d+ has moved since this sheet was made: .+, was about .+\.$/,
    );
});
