// A unit behind an answer that is not read for what is asked: told before the answer is handed in, whatever its number.
import { kinds, type KindName } from '../core/kinds.ts';
import { dimensionNamed } from '../core/reading/unit-named.ts';
import { quotedGiven } from '../core/quoted-given.ts';
import { readAnswer } from './answer.ts';
import { unitAsked } from './wording.ts';

const asked = (of: KindName) =>
  unitAsked(of) === '' ? 'answer with a plain number' : `answer in ${unitAsked(of)}`;

/** The sentence for a unit that is not read for a kind. */
export function notReadAs(unitText: string, of: KindName): string {
  const isKnown = dimensionNamed(unitText) !== undefined;
  return `“${quotedGiven(unitText)}” is ${isKnown ? 'not a unit of what is asked' : 'no unit that is read here'}: ${asked(of)}.`;
}

/** What is amiss with the unit of an answer; undefined where it is read, or where there is none. It knows nothing of what is right. */
export function unitNotRead(text: string, of: KindName): string | undefined {
  const reading = readAnswer(text, of);
  if (reading?.unsaid !== undefined) return `“${quotedGiven(text)}” was given, ${reading.unsaid}.`;
  return reading?.unit === 'other' ? notReadAs(reading.unitText, of) : undefined;
}

/** What a question asks for: a kind or, on a sealed sheet, the line that asks; nothing where it is no number. */
export type AskedFor = KindName | { readonly ask: string } | undefined;

/** What is amiss with the units of the answers of a sheet, each behind the number of its question. */
export const unitsNotRead = (answers: readonly string[], asked: readonly AskedFor[]): readonly string[] =>
  answers.flatMap((answer, i) => {
    const each = asked[i];
    const of = typeof each === 'object' ? kindAskedBy(each.ask) : each;
    const says = of && unitNotRead(answer, of);
    return says ? [`Question ${i + 1}: ${says}`] : [];
  });

/** The kind that a line such as “Answer in L, to one decimal.” asks for, by its unit; undefined where it names none. */
export const kindAskedBy = (ask: string): KindName | undefined =>
  (Object.keys(kinds) as KindName[]).find(
    (kind) => unitAsked(kind) !== '' && new RegExp(`\\bin ${escaped(unitAsked(kind))}[,.]`).test(ask),
  );
const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
