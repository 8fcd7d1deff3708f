// What sheets draw, as text; alone, it draws those on its standard input by the sums of the folder that it is given.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Question } from '../../src/exercises/question.ts';

export interface Promised {
  readonly link: string;
  readonly version: number;
  /** A fingerprint of the faces of its questions. */
  readonly drawn: string;
}

/** All that a question shows before it is answered, but for its curve, which is read as it is drawn today. */
export type Face = readonly [kind: string, prompt: string, choices: readonly string[]];
export const facesOf = (questions: readonly Question[]): readonly Face[] =>
  questions.map((question) => [
    question.kind,
    question.prompt,
    'options' in question
      ? question.options.map(({ text }) => text)
      : 'items' in question
        ? question.items
        : [],
  ]);

export interface DrawnSheet {
  readonly faces: readonly Face[];
  readonly answers: readonly Question['answer'][];
  readonly news: readonly string[];
}

type Worksheets = typeof import('../../src/exercises/worksheet.ts');
type Links = typeof import('../../src/exercises/sheet-link.ts');
type News = typeof import('../../src/exercises/sheet-news.ts');
type Kinds = typeof import('../../src/exercises/kinds/index.ts');

if (process.argv[1] === import.meta.filename) {
  const from = <T>(file: string) =>
    import(pathToFileURL(join(process.argv[2]!, 'src/exercises', file)).href) as Promise<T>;
  const { askedOf } = await from<Worksheets>('worksheet.ts');
  const { readSheetLink } = await from<Links>('sheet-link.ts');
  const { newsOf } = await from<News>('sheet-news.ts');
  const { questionKinds } = await from<Kinds>('kinds/index.ts');
  const promised = JSON.parse(readFileSync(0, 'utf8')) as readonly Promised[];
  const drawn = promised.map(({ link, version }): DrawnSheet => {
    const reading = readSheetLink(link);
    if (!reading || 'problem' in reading) throw new Error(`unread: ${link}`);
    const asked = askedOf(reading.sheet, version, questionKinds);
    const questions = asked.map(({ question }) => question);
    return {
      faces: facesOf(questions),
      answers: questions.map(({ answer }) => answer),
      news: newsOf(reading.sheet, asked),
    };
  });
  process.stdout.write(JSON.stringify(drawn));
}
