// Sealed hand-ins found in what was pasted, as from a mail: words around them passed over, lines that a mail broke joined again, each taken once.
import { sameName } from '../class/book.ts';
import type { HandIn } from './hand-in.ts';

const RUN = /[\w-]+/g; // signs of which a hand-in is made
const BEGINS = /^hs\d-/;
const BROKEN_BY = /^[\s>=]*$/; // what a mail puts into a line that it breaks
const MOST_PIECES = 120; // lines of one hand-in
const SURELY_A_PIECE = 24; // signs of a run that is no word

interface Run {
  readonly text: string;
  readonly line: number;
}
/** What may be a hand-in: the run that begins like one, and the runs behind it that may be the rest of it. */
function mayBe(text: string): readonly (readonly Run[])[] {
  const blocks: Run[][] = [];
  let isOpen = false;
  let [end, line] = [0, 0];
  for (const { 0: run, index } of text.matchAll(RUN)) {
    const between = text.slice(end, index);
    line += between.split('\n').length - 1;
    end = index + run.length;
    if (BEGINS.test(run)) blocks.push([{ text: run, line }]);
    else if (isOpen && BROKEN_BY.test(between)) blocks.at(-1)!.push({ text: run, line });
    else {
      isOpen = false;
      continue;
    }
    isOpen = true;
  }
  return blocks;
}

export interface Pasted<T> {
  /** What opened, each once. */
  readonly found: readonly T[];
  /** How many of them stood there more than once. */
  readonly twice: number;
  /** Why the others did not open, a sentence for each. */
  readonly problems: readonly string[];
  /** Lines without a hand-in. */
  readonly passedOver: number;
}

/** Opens all that can be opened. `open` gives a sentence for what does not open; runs are joined until one does. Two that have one key are one. */
export async function handInsIn<T>(
  text: string,
  open: (handIn: string) => Promise<T | string>,
  keyOf: (opened: T) => string,
): Promise<Pasted<T>> {
  const byKey = new Map<string, { readonly opened: T; times: number }>();
  const problems: string[] = [];
  const used = new Set<number>();
  for (const runs of mayBe(text)) {
    let joined = '';
    let problem = '';
    let whole = 0; // runs of which it is made; 0 where it does not open
    for (const [i, run] of runs.slice(0, MOST_PIECES).entries()) {
      joined += run.text;
      const opened = await open(joined);
      if (typeof opened === 'string') {
        if (i === 0 || run.text.length >= SURELY_A_PIECE) problem = opened;
        continue;
      }
      whole = i + 1;
      const there = byKey.get(keyOf(opened));
      if (there) there.times++;
      else byKey.set(keyOf(opened), { opened, times: 1 });
      break;
    }
    if (whole === 0) problems.push(problem);
    const isOf = (run: Run, i: number) => (whole > 0 ? i < whole : i === 0 || run.text.length >= SURELY_A_PIECE); // prettier-ignore
    runs.filter(isOf).forEach(({ line }) => used.add(line));
  }
  const lines = text.split('\n').flatMap((each, line) => (/[^\s>=]/.test(each) ? [line] : []));
  const all = [...byKey.values()];
  return {
    found: all.map(({ opened }) => opened),
    twice: all.filter(({ times }) => times > 1).length,
    problems,
    passedOver: lines.filter((line) => !used.has(line)).length,
  };
}

/** Which attempt of its person each is, among hand-ins to any version of one sheet: what it says itself, or the next after those handed in before. */
export function attemptsOf(handIns: readonly HandIn[]): readonly number[] {
  const before = new Map<string, number>();
  const attempts = new Map<HandIn, number>();
  for (const each of [...handIns].sort((a, b) => a.handedIn - b.handedIn)) {
    const of = JSON.stringify([each.sheet, sameName(each.name)]);
    const attempt = each.name === '' ? each.attempt : Math.max(each.attempt, (before.get(of) ?? 0) + 1);
    before.set(of, attempt);
    attempts.set(each, attempt);
  }
  return handIns.map((each) => attempts.get(each)!);
}

const lines = (count: number) => `${count} ${count === 1 ? 'line' : 'lines'}`;
/** What is to be said of what was pasted beside what opened. */
export const pastedNotes = ({ twice, problems, passedOver }: Pasted<unknown>): readonly string[] => {
  const counted = new Map<string, number>();
  problems.forEach((each) => counted.set(each, (counted.get(each) ?? 0) + 1));
  return [
    ...(twice > 0 ? [`${twice} ${twice === 1 ? 'hand-in was' : 'hand-ins were'} pasted more than once, and ${twice === 1 ? 'is' : 'are each'} taken once.`] : []),
    ...[...counted].map(([says, times]) => (times > 1 ? `${times} times: ${says}` : says)),
    ...(passedOver > 0 ? [`${lines(passedOver)} without a hand-in ${passedOver === 1 ? 'was' : 'were'} passed over.`] : []),
  ];
}; // prettier-ignore
