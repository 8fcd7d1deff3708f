// What is learnt as a text and back: whole steps of a weight, signs by how far their numbers stand apart, parts by how far they stand from the last.
import { partNames, type FirstModel, type Learnt } from './first-reading.ts';
import type { Model } from './match.ts';
import { togetherAsText, togetherOf } from './told-together.ts';

const STEP = 0.1; // of a weight: what is kept is rounded to it
const LETTERS = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ'; // one step, two steps, …; a weight beyond the last is the last

/** A first reading whose signs can be gone through. */
export interface LearntFirst extends FirstModel {
  readonly signs: ReadonlyMap<number, Learnt>;
}

/** A weight as it is kept. */
export const roundedWeight = (weight: number): number =>
  STEP * Math.max(-LETTERS.length, Math.min(LETTERS.length, Math.round(weight / STEP)));

/** A model as text: a line with the further weights, one with what is told together, then a line for each sign. */
export function modelAsText({ first, further, together }: Model & { readonly first: LearntFirst }): string {
  let before = 0;
  const lines = [...first.signs]
    .sort(([a], [b]) => a - b)
    .flatMap(([sign, { parts, weights }]) => {
      const steps = weights.map((weight) => Math.round(weight / STEP));
      let last = -1;
      const pairs = parts.flatMap((part, i) => {
        if (steps[i] === 0) return [];
        const apart = part - last;
        last = part;
        const letter = LETTERS[Math.min(Math.abs(steps[i]!), LETTERS.length) - 1]!;
        return [`${apart === 1 ? '' : apart}${steps[i]! < 0 ? '-' : ''}${letter}`];
      });
      if (pairs.length === 0) return [];
      const further = sign - before;
      before = sign;
      return [`${further.toString(36)} ${pairs.join('')}`];
    });
  const numbers = [[first.size], ...further].map((some) => some.map((each) => Number(each.toFixed(3))));
  return [partNames.length, JSON.stringify(numbers), togetherAsText(together), ...lines].join('\n');
}

/** The model of a text. */
export function modelOf(text: string): Model {
  const [count, numbers, told, ...lines] = text.split('\n');
  if (Number(count) !== partNames.length)
    throw new RangeError('What was learnt is of other figures: learn again.');
  const [[size], ...further] = JSON.parse(numbers!) as [[number], ...number[][]];
  const learnt = new Map<number, string | Learnt>();
  let sign = 0;
  for (const line of lines) {
    const space = line.indexOf(' ');
    sign += parseInt(line.slice(0, space), 36);
    learnt.set(sign, line.slice(space + 1));
  }
  const get = (sign: number): Learnt | undefined => {
    const known = learnt.get(sign);
    if (typeof known !== 'string') return known;
    const unpacked = unpack(known);
    learnt.set(sign, unpacked);
    return unpacked;
  };
  return { first: { signs: { get }, size: size! }, further, together: togetherOf(told!) };
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
