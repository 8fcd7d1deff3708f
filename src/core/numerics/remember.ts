// Keeps the last few answers of a slow pure function.

/**
 * The same function, with its last `kept` answers remembered by a name made from the question.
 * Only for pure functions: the answer must depend on the question alone.
 */
export function remember<Question, Answer>(
  answer: (question: Question) => Answer,
  kept: number,
  name: (question: Question) => unknown = (question) => question,
): (question: Question) => Answer {
  const answers = new Map<unknown, Answer>();
  return (question) => {
    const key = name(question);
    const known = answers.get(key);
    if (known !== undefined) return known;
    const found = answer(question);
    answers.set(key, found);
    if (answers.size > kept) answers.delete(answers.keys().next().value);
    return found;
  };
}
