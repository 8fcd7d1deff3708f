// A link once given draws the same questions in every release of one major number, whatever the sums have become: their kinds and the numbers in them, not their answers.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { GENERATOR } from '../../src/exercises/draw.ts';
import { questionKinds } from '../../src/exercises/kinds/index.ts';
import { readSheetLink } from '../../src/exercises/sheet-link.ts';
import { sheetMark, questionsAlone } from '../../src/exercises/worksheet.ts';
import { facesOf, type Promised } from './drawn-by.ts';

const promised = JSON.parse(
  readFileSync(join(import.meta.dirname, 'promised-sheets.json'), 'utf8'),
) as readonly Promised[];

test.each(promised)('$link, version $version, draws what it always drew', ({ link, version, drawn }) => {
  const reading = readSheetLink(link);
  if (!reading || 'problem' in reading) throw new Error(`unread: ${link}`);
  expect(
    sheetMark(JSON.stringify(facesOf(questionsAlone(reading.sheet, version, questionKinds)))),
    'keep the drawing, or raise GENERATOR and keep the old one beside it',
  ).toBe(drawn);
});

/** The kinds that each released generator draws for the first time. */
const released = JSON.parse(
  readFileSync(join(import.meta.dirname, 'promised-kinds.json'), 'utf8'),
) as Readonly<Record<string, readonly string[]>>;

test('a kind is drawn since the generator that first drew it, and a new one since one that is not released', () => {
  for (const [since, ids] of Object.entries(released))
    for (const id of ids) expect(questionKinds.find((kind) => kind.id === id)?.since, id).toBe(Number(since));
  const old = new Set(Object.values(released).flat());
  const early = questionKinds.filter(({ id, since }) => since <= GENERATOR && !old.has(id));
  expect(
    early.map(({ id }) => id),
    'sheets that were handed out would draw these: export them as { ...kind, since: GENERATOR + 1 }, the number written out, or add them to promised-kinds.json with the release',
  ).toEqual([]);
});

test('there are promises to keep, of either generator', () => {
  for (const generator of [1, 2])
    expect(promised.filter(({ link }) => link.startsWith(`#sheet=${generator}.`)).length).toBeGreaterThan(5);
});
