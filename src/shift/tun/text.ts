// A shift at a mash tun as text, version 2, which has what the grains keep: its house, its actions and its rounds.
import { oneOf, record, recordByKind, closedRecord } from '../../core/reading/given.ts';
import { LIQUOR_RANGE, runsTo, tunCourse } from '../../core/shift/tun/act.ts';
import { houseName } from '../../house/name.ts';
import { decodeKept, doneInAny, encodeKept, numbersWithin, plainly, points, toHalves, toMark, type TextForm } from '../text.ts'; // prettier-ignore
import type { TunShift } from './shift.ts';

const figures = { malt: [10, 100_000], moisture: [0, 8], extract: [50, 90], ratio: [1, 10], mash: [50, 75], second: [50, 100], last: [50, 100], collects: [20, 500_000], kept: [0.01, 10] } as const; // prettier-ignore
const mash = { volume: [0, 600_000], gravity: [0.99, 1.15], water: [0, 500_000], extract: [0, 100_000] } as const; // prettier-ignore

const form: TextForm<TunShift> = {
  format: 'malt-spirit-tun-shift',
  version: 2,
  longest: tunCourse.longest,
  actionKeys: ['do', 'to', 'read', 'corrected', 'text'],
  house: closedRecord({ name: houseName, ...numbersWithin(figures) }),
  action: recordByKind('do', {
    liquor: toHalves(LIQUOR_RANGE),
    valve: toMark,
    run: record({ to: oneOf(runsTo) }),
    'mash-in': plainly,
    water: plainly,
    warm: plainly,
    cool: plainly,
    iodine: plainly,
    underlet: plainly,
    'let-in': plainly,
    refuse: plainly,
    empty: plainly,
    ...doneInAny(0.98, 1.12),
  }),
  done: closedRecord({ ...numbersWithin(mash), score: points }),
};

export const encodeTun = (shift: TunShift): string => encodeKept(form, shift);
/** Reads a shift's text: the shift, or the sentence why it cannot be read. */
export const decodeTun = (text: string): TunShift | { readonly problem: string } => decodeKept(form, text);
