// A link once given draws the same questions in every release of one major number, whatever the sums have become: their kinds and the numbers in them, not their answers.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { kinds } from '../../src/exercises/kinds/index.ts';
import { readSheetLink } from '../../src/exercises/sheet-link.ts';
import { fingerprint, questionsOf } from '../../src/exercises/worksheet.ts';
import { facesOf, type Promised } from './drawn-by.ts';

const promised = JSON.parse(
  readFileSync(join(import.meta.dirname, 'promised-sheets.json'), 'utf8'),
) as readonly Promised[];

test.each(promised)('$link, version $version, draws what it always drew', ({ link, version, drawn }) => {
  const reading = readSheetLink(link);
  if (!reading || 'problem' in reading) throw new Error(`unread: ${link}`);
  expect(
    fingerprint(JSON.stringify(facesOf(questionsOf(reading.sheet, version, kinds)))),
    'keep the drawing, or raise GENERATOR and keep the old one beside it',
  ).toBe(drawn);
});

test('there are promises to keep, of either generator', () => {
  for (const generator of [1, 2])
    expect(promised.filter(({ link }) => link.startsWith(`#sheet=${generator}.`)).length).toBeGreaterThan(5);
});
