// A shift at the still as text, version 1: its house, its actions and its charges; the rest is read as of every shift.
import { called, readAs, number, oneOf, record, recordByKind, closedRecord, type Reader } from '../../core/reading/given.ts'; // prettier-ignore
import { stillCourse } from '../../core/shift/still/act.ts';
import { kilopascals, litres20, share, strength } from '../../core/quantity.ts';
import type { ForeshotsEnd } from '../../core/distilling/cuts.ts';
import { houseName } from '../../house/name.ts';
import { decodeKept, doneInAny, encodeKept, plainly, points, spiritFrom, toMark, type TextForm } from '../text.ts'; // prettier-ignore
import type { StillShift } from './shift.ts';

const strengths = (name: string, low: number, high: number) => called(name, readAs(number(low, high), strength)); // prettier-ignore

/** By one way alone: foreshots that ended in two, or in none, would be no end. */
const foreshots: Reader<ForeshotsEnd> = (given, what, tell) => {
  const ends = closedRecord(
    {},
    {
      share: called('Foreshots by share', readAs(number(0, 0.4), share)),
      volume: called('Foreshots by volume', readAs(number(0, 60_000), litres20)),
      strength: strengths('Foreshots by strength', 20, 90),
    },
  )(given, what, tell);
  const isOne = ends && Object.keys(ends).length === 1;
  if (isOne === false) tell('The foreshots end in two ways, or in none.');
  return isOne ? (ends as ForeshotsEnd) : undefined;
};

const house = closedRecord(
  {
    name: houseName,
    reflux: called('The reflux', readAs(number(0, 1), share)),
    pressure: called('The air pressure', readAs(number(60, 110), kilopascals)),
    cuts: called(
      'The cuts',
      closedRecord({
        foreshots: called('The end of the foreshots', foreshots),
        heart: strengths('The end of the heart', 20, 85),
        feints: strengths('The end of the feints', 0.1, 40),
      }),
    ),
    hours: called('Hours of the still', number(2, 48)),
    lowWines: called('The low wines', spiritFrom(1)),
    holds: called('What the still holds', number(20, 200_000)),
    settles: called('The heart of the balanced round', number(0, 200_000)),
  },
  { limit: strengths('The strongest charge', 15, 60) },
);

const turned = record({ open: oneOf([true, false]) });

const form: TextForm<StillShift> = {
  format: 'malt-spirit-shift',
  version: 1,
  longest: stillCourse.longest,
  actionKeys: ['do', 'to', 'open', 'read', 'corrected', 'text'],
  house,
  action: recordByKind('do', {
    steam: toMark,
    water: toMark,
    spout: record({ to: oneOf(['spirit', 'feints']) }),
    charging: turned,
    air: turned,
    manhole: turned,
    haze: plainly,
    refuse: plainly,
    discharge: plainly,
    ...doneInAny(0, 100),
  }),
  done: closedRecord({
    charge: called('A charge', spiritFrom(0)),
    heart: called('A heart', spiritFrom(0)),
    back: called('What went back', spiritFrom(0)),
    score: points,
  }),
  more: {
    charge: called('The charge', spiritFrom(20)),
    waits: called('What waits', spiritFrom(0)),
  },
};

export const encodeStill = (shift: StillShift): string => encodeKept(form, shift);
/** Reads a shift's text: the shift, or the sentence why it cannot be read. */
export const decodeStill = (text: string): StillShift | { readonly problem: string } =>
  decodeKept(form, text);
