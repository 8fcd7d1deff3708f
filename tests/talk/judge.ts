// The scripts with their answer keys, and the comparison that both the gate and the meter use.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readScript, type ReadQuantity } from '../../src/talk/script.ts';

export interface Answer {
  readonly at: number;
  readonly text: string;
  readonly value?: number;
  readonly range?: readonly [number, number];
  readonly unit: string;
  readonly kind: string;
  readonly figure?: string;
}
export interface Script {
  readonly name: string;
  readonly text: string;
  /** True for a script whose misses were never looked at while the reader was tuned; only its totals were printed. */
  readonly heldOut: boolean;
  readonly answers: readonly Answer[];
}

const folder = join(process.cwd(), 'tests', 'talk', 'scripts');

/** Every script of the folder, by name. */
export function scripts(): Script[] {
  return readdirSync(folder)
    .filter((file) => file.endsWith('.txt'))
    .sort()
    .map((file) => {
      const name = file.replace(/\.txt$/, '');
      const key = JSON.parse(readFileSync(join(folder, `${name}.json`), 'utf8'));
      return { name, text: readFileSync(join(folder, file), 'utf8'), heldOut: key.heldOut, answers: key.quantities };
    }); // prettier-ignore
}

export interface Judgement {
  readonly quantities: number;
  /** Read at its place with its value and unit. */
  readonly found: number;
  /** Of those found, of the right kind. */
  readonly kinds: number;
  readonly figures: number;
  /** Found, and proposed as the figure it is. */
  readonly matched: number;
  readonly proposed: number;
  /** Proposed as a figure that it is not, or where there is no quantity. */
  readonly wrong: number;
  /** Read where the key has nothing. */
  readonly extra: number;
  readonly misses: readonly string[];
}

const close = (a: number, b: number) => Math.abs(a - b) <= 1e-3 * Math.max(Math.abs(a), Math.abs(b));

function same(read: ReadQuantity, answer: Answer): boolean {
  const unit = answer.kind === 'count' || read.unit === answer.unit; // things counted have no unit
  if (answer.range)
    return unit && !!read.range && answer.range.every((end, i) => close(end, read.range![i]!));
  return unit && read.value !== undefined && close(read.value, answer.value!);
}

/** A script read and held against its key. */
export function judge({ text, answers }: Script): Judgement {
  const { quantities } = readScript(text);
  const misses: string[] = [];
  const claimed = new Set<ReadQuantity>();
  let [found, kinds, matched, wrong] = [0, 0, 0, 0];
  for (const answer of answers) {
    const read = quantities.find((each) => !claimed.has(each) && each.start < answer.at + answer.text.length && each.end > answer.at);
    const around = text.slice(Math.max(0, answer.at - 40), answer.at + answer.text.length + 30).replaceAll('\n', ' ');
    if (read) claimed.add(read);
    const right = read !== undefined && same(read, answer);
    if (right) found++;
    else misses.push(`NOT FOUND ${JSON.stringify(answer)} read ${JSON.stringify(read)} in “${around}”`);
    if (right && read.kind === answer.kind) kinds++;
    else if (right) misses.push(`kind ${read.kind}, is ${answer.kind}: “${around}”`);
    if (right && answer.figure !== undefined && read.figure === answer.figure) matched++;
    else if (answer.figure !== undefined) misses.push(`figure ${read?.figure} ${read?.runnersUp}, is ${answer.figure}: “${around}”`);
    if (read?.figure !== undefined && (!right || read.figure !== answer.figure)) {
      wrong++;
      if (answer.figure === undefined) misses.push(`figure ${read.figure} ${read.confidence}, is none: “${around}”`);
    }
  }
  const extra = quantities.filter((each) => !claimed.has(each));
  for (const each of extra) misses.push(`extra ${each.text} = ${each.value} ${each.unit} ${each.figure ?? ''} in “${text.slice(Math.max(0, each.start - 30), each.end + 30).replaceAll('\n', ' ')}”`);
  return {
    quantities: answers.length,
    found,
    kinds,
    figures: answers.filter(({ figure }) => figure !== undefined).length,
    matched,
    proposed: quantities.filter(({ figure }) => figure !== undefined).length,
    wrong: wrong + extra.filter(({ figure }) => figure !== undefined).length,
    extra: extra.length,
    misses,
  };
} // prettier-ignore
