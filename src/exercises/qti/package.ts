// A sheet of questions as the files of a QTI package, 3.0 or 2.1, to be zipped by the caller.
// QTI 3.0 is held to its content models; of 2.1 only names, namespaces and text are tested: tests/exercises/qti.test.ts.
import type { Question } from '../question.ts';
import { itemElement, type ItemRules } from './item.ts';
import { manifestElement } from './manifest.ts';
import { identifierOf } from './names.ts';
import { testElement, type ItemReference } from './test.ts';
import { inTwoOne } from './two-one.ts';
import { xmlDocument, type Element } from './xml.ts';

export interface PackageSettings {
  /** What tells this sheet from others, such as its seed: items of two sheets kept together must not share a name. */
  readonly sheet: string;
  readonly title: string;
  /** The handbook's version. */
  readonly version: string;
  /** The standard's own version; by itself 3.0. */
  readonly standard?: Standard;
  readonly rules?: ItemRules;
  /** Marks of each question, where not all have one. */
  readonly marks?: readonly number[];
}
export type Standard = '3.0' | '2.1';

/** File name → text in UTF-8. */
export function qtiPackage(
  questions: readonly Question[],
  { sheet, title, version, standard = '3.0', rules = {}, marks }: PackageSettings,
): Readonly<Record<string, string>> {
  const written = (root: Element) => xmlDocument(standard === '2.1' ? inTwoOne(root) : root);
  const name = identifierOf(`sheet-${sheet}`);
  const items = questions.map((question, i): ItemReference & { readonly question: Question } => ({
    identifier: `${name}-question-${i + 1}`,
    href: `items/question-${i + 1}.xml`,
    question,
  }));
  const references = items.map(({ identifier, href }): ItemReference => ({ identifier, href }));
  const test = { identifier: `${name}-test`, href: 'test.xml' };
  return {
    'imsmanifest.xml': written(manifestElement(`${name}-package`, test, references)),
    [test.href]: written(testElement(references, { identifier: test.identifier, title, version })),
    ...Object.fromEntries(
      items.map(({ identifier, href, question }, i) => [
        href,
        written(itemElement(question, { identifier, version, rules: { ...rules, marks: marks?.[i] ?? 1 } })),
      ]),
    ),
  };
}
