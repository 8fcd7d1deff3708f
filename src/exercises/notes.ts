// The notes of one version of a sheet as a text of plain signs, and back.
import { ATTEMPTS, type DrawNote } from './draw.ts';
import { CODES_COUNT } from './codes.ts';

/** A question's note, with which of the other seeds it took; or a kind that was passed over. */
export type NotedStep = (DrawNote & { readonly other: number }) | 'passed over';

const SIGNS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz-_';
const PASSED = '!';
const TRIES = 3; // told by the first sign itself: 0, 1 and 2; 3 says that two more signs tell them
const COUNTS = 15; // codes told by the first sign itself: 0 to 14; 15 says that one more sign tells them
const MOST_CODES = SIGNS.length - 1;

const pair = (whole: number) => SIGNS[Math.floor(whole / SIGNS.length)]! + SIGNS[whole % SIGNS.length]!;

function signsOf(step: NotedStep): string {
  if (step === 'passed over') return PASSED;
  const { other, attempt, codes } = step;
  const tries = other * ATTEMPTS + attempt;
  const [low, few] = [Math.min(tries, TRIES), Math.min(codes.length, COUNTS)];
  return [
    SIGNS[low * (COUNTS + 1) + few]!,
    low === TRIES ? pair(tries) : '',
    few === COUNTS ? SIGNS[codes.length]! : '',
    ...codes.map(pair),
  ].join('');
}

/** The text of a version's notes: one sign and two for each code, mostly one code a question. */
export const notesText = (steps: readonly NotedStep[]): string => steps.map(signsOf).join('');

/** Reads notes for at most so many questions; undefined when the text is damaged. */
export function readNotes(text: string, most: number): readonly NotedStep[] | undefined {
  const steps: NotedStep[] = [];
  let at = 0;
  let asked = 0;
  const sign = () => SIGNS.indexOf(text[at++] ?? ' ');
  const two = () => {
    const [high, low] = [sign(), sign()];
    return high < 0 || low < 0 ? -1 : high * SIGNS.length + low;
  };
  while (at < text.length) {
    if (text[at] === PASSED) {
      at++;
      steps.push('passed over');
      continue;
    }
    const first = sign();
    if (first < 0 || ++asked > most) return undefined;
    const low = Math.floor(first / (COUNTS + 1));
    const tries = low === TRIES ? two() : low;
    const count = first % (COUNTS + 1) === COUNTS ? sign() : first % (COUNTS + 1);
    if (tries < 0 || count < 0 || count > MOST_CODES || tries >= CODES_COUNT) return undefined;
    const codes = Array.from({ length: count }, two);
    if (codes.includes(-1)) return undefined;
    steps.push({ other: Math.floor(tries / ATTEMPTS), attempt: tries % ATTEMPTS, codes });
  }
  return steps;
}
