// A shift at a mash tun as text, version 2, which has what the grains keep: its house, its actions and its rounds.
import { ownValue, type Data } from '../../core/reading/data.ts';
import { isMark } from '../../core/shift/course.ts';
import { isLiquorTemperature, runsTo, tunCourse, type Action } from '../../core/shift/tun/act.ts';
import { decodeKept, encodeKept, givenNumbers, readCommon, readName, givenRecord, Unread, type TextForm } from '../text.ts'; // prettier-ignore
import type { TunDone, TunHouse, TunShift } from './shift.ts';

const figures = { malt: [10, 100_000], moisture: [0, 8], extract: [50, 90], ratio: [1, 10], mash: [50, 75], second: [50, 100], last: [50, 100], collects: [20, 500_000], kept: [0.01, 10] } as const; // prettier-ignore
const made = { volume: [0, 600_000], gravity: [0.99, 1.15], water: [0, 500_000], extract: [0, 100_000], score: [0, 100] } as const; // prettier-ignore
const plain = [
  'mash-in',
  'water',
  'warm',
  'cool',
  'iodine',
  'underlet',
  'let-in',
  'refuse',
  'empty',
] as const;

function readHouse(given: unknown): TunHouse {
  const { name, ...rest } = givenRecord('The house', given, ['name', ...Object.keys(figures)]);
  return { name: readName(name), ...givenNumbers('The house', rest, figures) };
}

function readAction(data: Data): Action | undefined {
  const [what, to] = ['do', 'to'].map((key) => ownValue(data, key));
  if (what === 'liquor' && typeof to === 'number' && isLiquorTemperature(to)) return { do: what, to };
  if (what === 'valve' && typeof to === 'number' && isMark(to)) return { do: what, to };
  const goes = runsTo.find((each) => each === to);
  if (what === 'run' && goes) return { do: what, to: goes };
  const one = plain.find((each) => each === what);
  return one ? { do: one } : readCommon(data, [0.98, 1.12]);
}

function readDone(given: unknown): TunDone {
  const done = givenNumbers('A mash', given, made);
  if (!Number.isInteger(done.score)) throw new Unread('Points are whole.');
  return done;
}

const form: TextForm<TunShift> = {
  format: 'malt-spirit-tun-shift',
  version: 2,
  longest: tunCourse.longest,
  actionKeys: ['do', 'to', 'read', 'corrected', 'text'],
  house: readHouse,
  action: readAction,
  done: readDone,
};

export const encodeTun = (shift: TunShift): string => encodeKept(form, shift);
/** Reads a shift's text: the shift, or the sentence why it cannot be read. */
export const decodeTun = (text: string): TunShift | { readonly problem: string } => decodeKept(form, text);
