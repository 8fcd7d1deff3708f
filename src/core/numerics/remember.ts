// Keeps the last few answers of a slow pure function.

/**
 * The same function, with the answers last asked for remembered, `kept` of them; `same` says when two questions are one.
 * Only for pure functions: the answer must depend on the question alone.
 * @example ((asked) => [asked(3), asked(3)])(remember((n) => n + Math.random(), 1)).every((each, _, [first]) => each === first) // true (the second answer is the one that was kept)
 */
export function remember<Question, Answer>(
  answer: (question: Question) => Answer,
  kept: number,
  same: (one: Question, other: Question) => boolean = Object.is,
): (question: Question) => Answer {
  // The last asked stands first. A short list looked through is quicker than a name made for each question.
  const questions: Question[] = [];
  const answers: Answer[] = [];
  return (question) => {
    let at = 0;
    while (at < questions.length && !same(questions[at]!, question)) at++;
    const found = at < questions.length ? answers[at]! : answer(question);
    if (at === questions.length && at === kept) at--; // the one longest not asked for makes room
    for (; at > 0; at--) {
      questions[at] = questions[at - 1]!;
      answers[at] = answers[at - 1]!;
    }
    questions[0] = question;
    answers[0] = found;
    return found;
  };
}
