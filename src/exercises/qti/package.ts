// A sheet of questions as the files of a QTI 3.0 package, to be zipped by the caller.
import type { Question } from '../question.ts';
import { qtiItem } from './item.ts';
import { qtiManifest } from './manifest.ts';
import { identifierOf } from './names.ts';
import { qtiTest, type ItemReference } from './test.ts';

export interface PackageSettings {
  /** What tells this sheet from others, such as its seed: items of two sheets kept together must not share a name. */
  readonly sheet: string;
  readonly title: string;
  /** The handbook's version. */
  readonly version: string;
}

/** File name → text in UTF-8. */
export function qtiPackage(
  questions: readonly Question[],
  { sheet, title, version }: PackageSettings,
): Readonly<Record<string, string>> {
  const name = identifierOf(`sheet-${sheet}`);
  const items = questions.map((question, i): ItemReference & { readonly question: Question } => ({
    identifier: `${name}-question-${i + 1}`,
    href: `items/question-${i + 1}.xml`,
    question,
  }));
  const references = items.map(({ identifier, href }): ItemReference => ({ identifier, href }));
  const test = { identifier: `${name}-test`, href: 'test.xml' };
  return {
    'imsmanifest.xml': qtiManifest(`${name}-package`, test, references),
    [test.href]: qtiTest(references, { identifier: test.identifier, title, version }),
    ...Object.fromEntries(
      items.map(({ identifier, href, question }) => [href, qtiItem(question, { identifier, version })]),
    ),
  };
}
