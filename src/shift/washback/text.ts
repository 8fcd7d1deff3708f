// A shift at a washback as text, version 1: its house, its actions and its rounds.
import { number, oneOf, record, recordByKind, closedRecord } from '../../core/reading/given.ts';
import { COOLER_RANGE, washbackCourse } from '../../core/shift/washback/act.ts';
import { houseName } from '../../house/name.ts';
import { decodeKept, doneInAny, encodeKept, numbersWithin, plainly, points, spiritFrom, toHalves, toMark, type TextForm } from '../text.ts'; // prettier-ignore
import type { WashbackShift } from './shift.ts';

const figures = { volume: [50, 200_000], gravity: [1.01, 1.12], final: [0.98, 1.1], hours: [24, 150], set: [5, 35], yeast: [0.01, 5000] } as const; // prettier-ignore

const form: TextForm<WashbackShift> = {
  format: 'malt-spirit-washback-shift',
  version: 1,
  longest: washbackCourse.longest,
  actionKeys: ['do', 'to', 'on', 'read', 'corrected', 'text'],
  house: closedRecord({ name: houseName, ...numbersWithin(figures) }),
  action: recordByKind('do', {
    set: toHalves(COOLER_RANGE),
    dose: toMark,
    cooling: toMark,
    switcher: record({ on: oneOf([true, false]) }),
    pitch: plainly,
    antifoam: plainly,
    meter: plainly,
    report: plainly,
    'go-in': plainly,
    'let-in': plainly,
    refuse: plainly,
    'hand-over': plainly,
    ...doneInAny(0.98, 1.12),
  }),
  done: closedRecord({
    wash: spiritFrom(0),
    gravity: number(0.98, 1.12),
    warmest: number(0, 60),
    score: points,
  }),
};

export const encodeWashback = (shift: WashbackShift): string => encodeKept(form, shift);
/** Reads a shift's text: the shift, or the sentence why it cannot be read. */
export const decodeWashback = (text: string): WashbackShift | { readonly problem: string } => decodeKept(form, text); // prettier-ignore
