// What may be a slip of the pen in a question of one's own and may be meant: a value that is told and not used, or used nowhere.
import { isRefusal } from '../../core/refusal.ts';
import { namesIn, readFormula } from './formula.ts';
import { holesIn, type OwnQuestion } from './own-question.ts';

/** A sentence for each value that the answer does not hang on; none of them keeps a question from being asked. */
export function doubtsOf(question: OwnQuestion): readonly string[] {
  const told = new Set(holesIn(question.wording));
  if (question.asks === 'choice') {
    for (const { text, why } of question.options)
      for (const name of holesIn(`${text} ${why}`)) told.add(name);
    return question.values.flatMap(({ name }) => (told.has(name) ? [] : [`${name} is among the values and stands neither in the question nor in a choice.`])); // prettier-ignore
  }
  const formula = readFormula(question.formula);
  if (isRefusal(formula)) return [];
  const used = new Set(namesIn(formula));
  return question.values.flatMap(({ name }) =>
    used.has(name)
      ? []
      : told.has(name)
        ? [`{${name}} stands in the question but not in the formula: the answer is the same whatever it is.`]
        : [`${name} is among the values and stands neither in the question nor in the formula.`],
  );
}
