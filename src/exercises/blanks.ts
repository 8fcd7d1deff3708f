// What is said before a sheet is handed in with blanks: how many questions have no answer, and which.
const words = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve']; // prettier-ignore
const inWords = (count: number): string => words[count] ?? String(count);

/** “Six of ten are blank: 2, 3, 5, 7, 8 and 9.”; undefined where every question has an answer. */
export function blanksIn(answers: readonly string[]): string | undefined {
  const blank = answers.flatMap((answer, i) => (answer.trim() === '' ? [String(i + 1)] : []));
  const last = blank.at(-1);
  if (last === undefined) return undefined;
  const count = inWords(blank.length);
  const which = blank.length === 1 ? last : `${blank.slice(0, -1).join(', ')} and ${last}`;
  return `${count[0]!.toUpperCase()}${count.slice(1)} of ${inWords(answers.length)} ${blank.length === 1 ? 'is' : 'are'} blank: ${which}.`;
}
