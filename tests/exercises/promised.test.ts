// A link once given draws the same sheet in every release of one major number: the fingerprints of some, as they were when the generator's version was set.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { kinds } from '../../src/exercises/kinds/index.ts';
import { readSheetLink } from '../../src/exercises/sheet-link.ts';
import { fingerprint, questionsOf } from '../../src/exercises/worksheet.ts';

interface Promised {
  readonly link: string;
  readonly version: number;
  readonly drawn: string;
}
const promised = JSON.parse(
  readFileSync(join(import.meta.dirname, 'promised-sheets.json'), 'utf8'),
) as readonly Promised[];

/** What a link draws, as a fingerprint of every question and its answer to nine figures. */
export function drawnBy(link: string, version: number): string {
  const reading = readSheetLink(link);
  if (!reading || 'problem' in reading) throw new Error(`unread: ${link}`);
  const told = questionsOf(reading.sheet, version, kinds).map((question) => [
    question.kind,
    question.prompt,
    typeof question.answer === 'number' ? Number(question.answer.toPrecision(9)) : question.answer,
    'options' in question
      ? question.options.map(({ text }) => text)
      : 'items' in question
        ? question.items
        : [],
  ]);
  return fingerprint(JSON.stringify(told));
}

test.each(promised)('$link, version $version, draws what it always drew', ({ link, version, drawn }) => {
  expect(drawnBy(link, version), 'keep the drawing, or raise GENERATOR and keep the old one beside it').toBe(
    drawn,
  );
});

test('there are promises to keep', () => {
  expect(promised.length).toBeGreaterThan(5);
});
