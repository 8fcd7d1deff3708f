// A question that asks several things, or rambles: each part that asks is answered by itself.
import { clausesOf } from './clauses.ts';
import { isAnswer, sureOf, type Answer, type Asking, type NotKnown } from './answer-given.ts';
import type { AskedList } from './entry.ts';
import { questionParts } from './question-parts.ts';

const FEWEST_WORDS = 4; // of a part that may be meant
const LIKELY_PART = 0.35; // chance from which a part that may be meant is told beside another
const MOST_PARTS = 3; // of a question, that are answered

/** Makes one who answers a question, and what else it asks in the same breath. */
export function inPartsOf(list: AskedList, alone: (asking: Asking, whole?: string) => Answer | NotKnown): (asking: Asking) => Answer | NotKnown {
  const unknown = new Set(list.entries.filter((entry) => entry.unknown).map(({ id }) => id));

  /** The answer to the first part of a rambling question that has one by itself. */
  function inClause(asking: Asking, whole: NotKnown): Answer | NotKnown {
    const asks = clausesOf(asking.question).filter(({ text, asks }) => asks && text.split(/\s+/).length > 2);
    const answers = asks.map(({ text }) => alone({ ...asking, question: text })).filter(isAnswer);
    const told = answers.find((each) => sureOf(each) ?? (each.chance ?? 0) >= LIKELY_PART / 2);
    if (told === undefined || (told.id !== undefined && unknown.has(told.id))) return whole;
    // What a part asks may not be what the whole does.
    const meant = list.entries.find(({ id }) => id === told.id);
    return { ...told, question: asking.question, ...(meant && { meant, others: told.others ?? [] }) };
  }

  return function inParts(asking: Asking): Answer | NotKnown {
    const whole = alone(asking);
    const parts = questionParts(asking.question);
    if (parts.length === 0) return isAnswer(whole) ? whole : inClause(asking, whole);
    const told = [sureOf(whole) ?? []].flat();
    for (const { ways } of parts) {
      const answers = ways.map((question) => alone({ ...asking, question }, asking.question)).filter(isAnswer);
      const likely = answers.find((each) => sureOf(each)) ?? answers.find(({ chance = 0, question }) => chance >= LIKELY_PART && question.split(/\s+/).length >= FEWEST_WORDS);
      // A sum of the whole is not a sum of its parts.
      if (likely && !(likely.id === undefined && told[0]?.question === asking.question && told[0].id === undefined) && !told.some(({ id, says }) => (id ?? says) === (likely.id ?? likely.says))) told.push(likely);
    } // prettier-ignore
    if (!told.some((each) => sureOf(each)) && (told.length < 2 || !isAnswer(whole))) return whole;
    const known = told.filter(({ id }) => id === undefined || !unknown.has(id));
    const inOrder = [...(known.length > 0 ? known : told)].sort((a, b) => Number(a.meant !== undefined) - Number(b.meant !== undefined)); // prettier-ignore
    const [first, ...rest] = inOrder.slice(0, MOST_PARTS);
    if (!first || (rest.length === 0 && isAnswer(whole) && whole.meant && parts.length > 2)) return whole; // prettier-ignore
    return { ...first, question: asking.question, ...(rest.length > 0 && { also: rest }) };
  }
} // prettier-ignore
