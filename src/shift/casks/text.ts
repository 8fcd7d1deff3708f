// A shift of two casks as text, version 1: its house, its actions and its fillings.
import { called, oneOf, record, recordByKind, whole, closedRecord } from '../../core/reading/given.ts';
import { casksCourse, which } from '../../core/shift/casks/course.ts';
import { houseName } from '../../house/name.ts';
import { decodeKept, doneInAny, encodeKept, numbersWithin, plainly, points, type TextForm } from '../text.ts'; // prettier-ignore
import type { CasksShift } from './shift.ts';

const figures = { strength: [20, 80], indrink: [0, 20], loss: [0, 30], humidity: [0, 100], steady: [0, 80], residue: [0, 50], filter: [0, 100], bottle: [1, 1000], bottled: [10, 80] } as const; // prettier-ignore
const atCask = record({ cask: oneOf(which) });
const bottles = whole(0, 20_000);
const age = called('Months in cask', whole(-1, 360));

const form: TextForm<CasksShift> = {
  format: 'malt-spirit-casks-shift',
  version: 1,
  longest: casksCourse.longest,
  actionKeys: ['do', 'cask', 'read', 'corrected', 'text'],
  house: closedRecord({ name: houseName, ...numbersWithin(figures) }),
  action: recordByKind('do', {
    regauge: atCask,
    look: atCask,
    nose: atCask,
    mend: atCask,
    bottle: atCask,
    flame: plainly,
    refuse: plainly,
    ...doneInAny(0, 100),
  }),
  done: closedRecord({ first: bottles, second: bottles, firstAge: age, secondAge: age, score: points }),
};

export const encodeCasks = (shift: CasksShift): string => encodeKept(form, shift);
/** Reads a shift's text: the shift, or the sentence why it cannot be read. */
export const decodeCasks = (text: string): CasksShift | { readonly problem: string } =>
  decodeKept(form, text);
