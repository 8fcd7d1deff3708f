// A hint before the second try: the rule that the working begins with, without a figure of the answer.
import { stepsBefore } from './fading.ts';
import { isNumberQuestion, type Question } from './question.ts';

/** The first step of a sum’s working, where there is one before the answer; nothing for a choice or an order, whose mark says enough. */
export function hintOf(question: Question): string | undefined {
  if (!isNumberQuestion(question)) return undefined;
  return stepsBefore(question)[0]?.replace(/\.$/, '');
}
