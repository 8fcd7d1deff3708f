// Keeps the last few answers of a slow pure function.

/**
 * The same function, with the answers last asked for remembered, `kept` of them, by a name made from the question.
 * Only for pure functions: the answer must depend on the question alone.
 * @example ((asked) => [asked(3), asked(3)])(remember((n) => n + Math.random(), 1)).every((each, _, [first]) => each === first) // true (the second answer is the one that was kept)
 */
export function remember<Question, Answer>(
  answer: (question: Question) => Answer,
  kept: number,
  name: (question: Question) => unknown = (question) => question,
): (question: Question) => Answer {
  const answers = new Map<unknown, Answer>();
  return (question) => {
    const key = name(question);
    const known = answers.has(key);
    const found = known ? answers.get(key)! : answer(question);
    if (known) answers.delete(key);
    answers.set(key, found);
    if (answers.size > kept) answers.delete(answers.keys().next().value);
    return found;
  };
}
