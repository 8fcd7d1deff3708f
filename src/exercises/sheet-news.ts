// What has become of a sheet since its link was made, in sentences for whoever marks it or has handed it in.
import { format } from '../core/format.ts';
import { isNumberQuestion } from './question.ts';
import type { AskedQuestion, Worksheet } from './worksheet.ts';

/** What the link of the first generator cannot promise. */
export const BY_AN_OLDER_EDITION =
  'This link was made by an older edition of the handbook. It carries no numbers, only how they are drawn, and the answers are today’s; on a paper that was printed then some numbers may differ.';

/** Sentences, by question, on what is no longer as it was when the sheet was made; none when all is. */
export function newsOf(
  { generator }: Pick<Worksheet, 'generator'>,
  asked: readonly AskedQuestion[],
): readonly string[] {
  const moved = asked.flatMap(({ question, before, isAnew }, i) => {
    if (isAnew)
      return `Question ${i + 1} has other numbers than when this sheet was made: with those it had then, today’s sums give no answer.`;
    if (before === undefined || !isNumberQuestion(question)) return [];
    return `The answer to question ${i + 1} has moved since this sheet was made: ${format(question.answer, question.of, question.digits)}, was about ${before}.`;
  });
  return generator === 1 ? [BY_AN_OLDER_EDITION, ...moved] : moved;
}
