// All versions of a sheet as one table for a spreadsheet: a row a question, with its key, bounds, known mistakes and working.
import { kinds } from '../../core/kinds.ts';
import { boundsOf } from '../bounds.ts';
import { csvOf } from '../csv.ts';
import { letterOfPlace } from '../letters.ts';
import { isChoiceQuestion, isNumberQuestion, isOrderQuestion, type Question } from '../question.ts';

export interface TableRules {
  readonly working: boolean;
  /** Numbers with a decimal comma, and semicolons between cells. */
  readonly comma: boolean;
}
/** A version of a sheet: its number, questions, and the marks of each where not all have one. */
export interface SheetVersion {
  readonly version: number;
  readonly questions: readonly Question[];
  readonly marks?: readonly number[];
}

const heads = ['Version', 'Question', 'Kind', 'Form', 'Topic', 'Level', 'Marks', 'Title', 'Asked', 'Choices', 'Answer', 'Unit', 'Right from', 'Right to', 'Known mistakes']; // prettier-ignore

function answerOf(question: Question): readonly (string | number)[] {
  if (isNumberQuestion(question)) {
    const { low, high } = boundsOf(question);
    const mistakes = question.slips.map(({ value, say }) => `${Number(value.toPrecision(8))}: ${say}`).join('\n');
    return ['', Number(question.answer.toFixed(question.digits)), kinds[question.of].unit, Number(low.toPrecision(12)), Number(high.toPrecision(12)), mistakes];
  }
  const listed = (texts: readonly string[]) => texts.map((text, i) => `${letterOfPlace(i)}: ${text}`).join('\n');
  if (isChoiceQuestion(question))
    return [listed(question.options.map(({ text }) => text)), letterOfPlace(question.answer), '', '', '', ''];
  if (isOrderQuestion(question)) return [listed(question.items), question.answer.map(letterOfPlace).join(' '), '', '', '', ''];
  return question satisfies never;
} // prettier-ignore

/** The table as text. */
export function questionsTable(versions: readonly SheetVersion[], { working, comma }: TableRules): string {
  const rows = versions.flatMap(({ version, questions, marks }) =>
    questions.map((question, i) => [
      version,
      i + 1,
      question.kind,
      question.form,
      question.topic,
      question.level,
      marks?.[i] ?? 1,
      question.title,
      question.prompt,
      ...answerOf(question),
      ...(working ? [question.working.join('\n')] : []),
    ]),
  );
  return csvOf([[...heads, ...(working ? ['Working'] : [])], ...rows], comma);
}
