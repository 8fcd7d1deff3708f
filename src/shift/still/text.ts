// A shift at the still as text, version 1: its house, its actions and its charges; the rest is read as of every shift.
import { own, type Data } from '../../core/reading/data.ts';
import { isMark } from '../../core/shift/course.ts';
import { stillCourse, valves, type Action } from '../../core/shift/still/act.ts';
import { kilopascals, litres20, share, strength } from '../../core/quantity.ts';
import type { ForeshotsEnd } from '../../core/distilling/cuts.ts';
import { decodeKept, encodeKept, number, readCommon, readName, readSpirit, record, Unread, type TextForm } from '../text.ts'; // prettier-ignore
import type { ChargeDone, StillShift, ShiftHouse } from './shift.ts';

function readForeshots(given: unknown): ForeshotsEnd {
  const data = record('The end of the foreshots', given, ['share', 'volume', 'strength']);
  const [key] = Object.keys(data);
  if (Object.keys(data).length !== 1) throw new Unread('The foreshots end in two ways, or in none.');
  if (key === 'share') return { share: share(number('Foreshots by share', own(data, key), 0, 0.4)) };
  if (key === 'volume') return { volume: litres20(number('Foreshots by volume', own(data, key), 0, 60_000)) };
  return { strength: strength(number('Foreshots by strength', own(data, key!), 20, 90)) };
}

function readHouse(given: unknown): ShiftHouse {
  const data = record('The house', given, ['name', 'reflux', 'pressure', 'cuts', 'hours', 'lowWines', 'holds', 'limit', 'settles']); // prettier-ignore
  const cuts = record('The cuts', own(data, 'cuts'), ['foreshots', 'heart', 'feints']);
  const limit = own(data, 'limit');
  return {
    name: readName(own(data, 'name')),
    reflux: share(number('The reflux', own(data, 'reflux'), 0, 1)),
    pressure: kilopascals(number('The air pressure', own(data, 'pressure'), 60, 110)),
    cuts: {
      foreshots: readForeshots(own(cuts, 'foreshots')),
      heart: strength(number('The end of the heart', own(cuts, 'heart'), 20, 85)),
      feints: strength(number('The end of the feints', own(cuts, 'feints'), 0.1, 40)),
    },
    hours: number('Hours of the still', own(data, 'hours'), 2, 48),
    lowWines: readSpirit('The low wines', own(data, 'lowWines'), 1),
    holds: number('What the still holds', own(data, 'holds'), 20, 200_000),
    ...(limit !== undefined && { limit: strength(number('The strongest charge', limit, 15, 60)) }),
    settles: number('The heart of the balanced round', own(data, 'settles'), 0, 200_000),
  };
}

function readAction(data: Data): Action | undefined {
  const [what, to, open] = ['do', 'to', 'open'].map((key) => own(data, key));
  if ((what === 'steam' || what === 'water') && typeof to === 'number' && isMark(to)) return { do: what, to };
  if (what === 'spout' && (to === 'spirit' || to === 'feints')) return { do: what, to };
  const valve = valves.find((each) => each === what);
  if (valve && typeof open === 'boolean') return { do: valve, open };
  if (what === 'haze' || what === 'refuse' || what === 'discharge') return { do: what };
  return readCommon(data, [0, 100]);
}

const readDone = (given: unknown): ChargeDone => {
  const data = record('A charge', given, ['charge', 'heart', 'back', 'score']);
  return {
    charge: readSpirit('A charge', own(data, 'charge'), 0),
    heart: readSpirit('A heart', own(data, 'heart'), 0),
    back: readSpirit('What went back', own(data, 'back'), 0),
    score: number('Points', own(data, 'score'), 0, 100, true),
  };
};

const form: TextForm<StillShift> = {
  format: 'malt-spirit-shift',
  version: 1,
  longest: stillCourse.longest,
  actionKeys: ['do', 'to', 'open', 'read', 'corrected', 'text'],
  house: readHouse,
  action: readAction,
  done: readDone,
  more: {
    charge: (given) => readSpirit('The charge', given, 20),
    waits: (given) => readSpirit('What waits', given, 0),
  },
};

export const encodeShift = (shift: StillShift): string => encodeKept(form, shift);
/** Reads a shift's text: the shift, or the sentence why it cannot be read. */
export const decodeShift = (text: string): StillShift | { readonly problem: string } =>
  decodeKept(form, text);
