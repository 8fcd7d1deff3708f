// What is learnt as a text and back: whole steps of a weight, signs in the order of their names, parts by how far they stand from the last.
import { partNames, type FirstModel, type Learnt } from './first-reading.ts';
import type { Model } from './match.ts';

const STEP = 0.1; // of a weight: what is kept is rounded to it
const LETTERS = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ'; // one step, two steps, …; a weight beyond the last is the last

/** A first reading whose signs can be gone through. */
export interface LearntFirst extends FirstModel {
  readonly signs: ReadonlyMap<string, Learnt>;
}

/** A model as text: a line with the further weights, then a line for each sign. */
export function modelAsText({ first, further }: Model & { readonly first: LearntFirst }): string {
  const lines = [...first.signs]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([name, { parts, weights }]) => {
      const steps = weights.map((weight) => Math.round(weight / STEP));
      let last = -1;
      const pairs = parts.flatMap((part, i) => {
        if (steps[i] === 0) return [];
        const apart = part - last;
        last = part;
        const letter = LETTERS[Math.min(Math.abs(steps[i]!), LETTERS.length) - 1]!;
        return [`${apart === 1 ? '' : apart}${steps[i]! < 0 ? '-' : ''}${letter}`];
      });
      return pairs.length === 0 ? [] : [`${name}\t${pairs.join('')}`];
    });
  const numbers = [[first.size], ...further].map((some) => some.map((each) => Number(each.toFixed(3))));
  return [partNames.length, JSON.stringify(numbers), ...lines].join('\n');
}

/** The model of a text. */
export function modelOf(text: string): Model {
  const [count, numbers, ...lines] = text.split('\n');
  if (Number(count) !== partNames.length)
    throw new RangeError('What was learnt is of other figures: learn again.');
  const [[size], ...further] = JSON.parse(numbers!) as [[number], ...number[][]];
  const packed = new Map(lines.map((line) => line.split('\t') as [string, string]));
  const unpacked = new Map<string, Learnt>();
  const get = (name: string): Learnt | undefined => {
    const pairs = packed.get(name);
    if (pairs === undefined) return undefined;
    const known = unpacked.get(name) ?? unpack(pairs);
    unpacked.set(name, known);
    return known;
  };
  return { first: { signs: { get }, size: size! }, further };
}

/** The parts and weights of a sign. */
function unpack(pairs: string): Learnt {
  const [parts, weights]: [number[], number[]] = [[], []];
  let part = -1;
  for (const [, apart, sign, letter] of pairs.matchAll(/(\d*)(-?)([a-zA-Z])/g)) {
    part += apart === '' ? 1 : Number(apart);
    parts.push(part);
    weights.push((sign === '' ? STEP : -STEP) * (LETTERS.indexOf(letter!) + 1));
  }
  return { parts, weights };
}
