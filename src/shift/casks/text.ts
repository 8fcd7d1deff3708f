// A shift of two casks as text, version 1: its house, its actions and its fillings.
import { ownValue, type Data } from '../../core/reading/data.ts';
import { casksCourse, which, type Action } from '../../core/shift/casks/course.ts';
import { decodeKept, encodeKept, givenNumbers, readCommon, readName, givenRecord, Unread, type TextForm } from '../text.ts'; // prettier-ignore
import type { CasksDone, CasksHouse, CasksShift } from './shift.ts';

const figures = { strength: [20, 80], indrink: [0, 20], loss: [0, 30], humidity: [0, 100], steady: [0, 80], residue: [0, 50], filter: [0, 100], bottle: [1, 1000], bottled: [10, 80] } as const; // prettier-ignore
const made = { first: [0, 20_000], second: [0, 20_000], firstAge: [-1, 360], secondAge: [-1, 360], score: [0, 100] } as const; // prettier-ignore
const atCask = ['regauge', 'look', 'nose', 'mend', 'bottle'] as const;

function readHouse(given: unknown): CasksHouse {
  const { name, ...rest } = givenRecord('The house', given, ['name', ...Object.keys(figures)]);
  return { name: readName(name), ...givenNumbers('The house', rest, figures) };
}

function readAction(data: Data): Action | undefined {
  const [what, cask] = ['do', 'cask'].map((key) => ownValue(data, key));
  const one = atCask.find((each) => each === what);
  const i = which.find((each) => each === cask);
  if (one) return i === undefined ? undefined : { do: one, cask: i };
  if (what === 'flame' || what === 'refuse') return { do: what };
  return readCommon(data, [0, 100]);
}

function readDone(given: unknown): CasksDone {
  const done = givenNumbers('A filling', given, made);
  if (!Object.values(done).every(Number.isInteger)) throw new Unread('Bottles, months and points are whole.');
  return done;
}

const form: TextForm<CasksShift> = {
  format: 'malt-spirit-casks-shift',
  version: 1,
  longest: casksCourse.longest,
  actionKeys: ['do', 'cask', 'read', 'corrected', 'text'],
  house: readHouse,
  action: readAction,
  done: readDone,
};

export const encodeCasks = (shift: CasksShift): string => encodeKept(form, shift);
/** Reads a shift's text: the shift, or the sentence why it cannot be read. */
export const decodeCasks = (text: string): CasksShift | { readonly problem: string } =>
  decodeKept(form, text);
