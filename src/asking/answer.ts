// Answers a question: reckons with its numbers, or finds the entry that it means, or says that it does not know.
// Sums are tried before the list of entries; what is not sure is told as not sure, with the next best. Counted in tests/asking.
import { isAnswer, type Answer, type Asking, type NotKnown } from './answer-given.ts';
import type { AskedList } from './entry.ts';
import { wholeQuestions } from './follow.ts';
import { followsOn } from './follows-on.ts';
import { intoEnglish } from './foreign.ts';
import { inPartsOf } from './in-parts.ts';
import { oneQuestion } from './one-question.ts';
import { countryIn, wantedUnit } from './quantities.ts';

/** Makes one who answers from a list. */
export function answerer(list: AskedList): (asking: Asking) => Answer | NotKnown {
  const english = intoEnglish(list.foreign ?? {});
  const found = oneQuestion(list);
  const alone = (asking: Asking, whole = asking.question): Answer | NotKnown =>
    found(asking, wantedUnit(asking.question, countryIn(whole)), countryIn(whole));

  const inParts = inPartsOf(list, alone);

  return ({ question: said, ...rest }) => {
    const question = english(said.replace(/<[a-z/][^>]*>/gi, ' ')); // what is marked up asks nothing
    const asking = { ...rest, question };
    const { before } = asking;
    const wanted = wantedUnit(question, countryIn(question));
    if (wanted && before !== undefined && followsOn(question)) {
      const again = found({ ...asking, question: before }, wanted);
      if (isAnswer(again) && again.inUnit) return again;
    }
    for (const whole of before === undefined ? [] : wholeQuestions(question, before)) {
      const again = inParts({ ...asking, question: whole });
      if (isAnswer(again) && !again.isQuoted) return again;
    }
    return inParts(asking);
  };
}
