// A shift at the still as text, version 1: its house, its actions and its charges; the rest is read as of every shift.
import { ownValue, type Data } from '../../core/reading/data.ts';
import { isMark } from '../../core/shift/course.ts';
import { stillCourse, valves, type Action } from '../../core/shift/still/act.ts';
import { kilopascals, litres20, share, strength } from '../../core/quantity.ts';
import type { ForeshotsEnd } from '../../core/distilling/cuts.ts';
import { decodeKept, encodeKept, givenNumber, readCommon, readName, readSpirit, givenRecord, Unread, type TextForm } from '../text.ts'; // prettier-ignore
import type { ChargeDone, StillShift, ShiftHouse } from './shift.ts';

function readForeshots(given: unknown): ForeshotsEnd {
  const data = givenRecord('The end of the foreshots', given, ['share', 'volume', 'strength']);
  const [key] = Object.keys(data);
  if (Object.keys(data).length !== 1) throw new Unread('The foreshots end in two ways, or in none.');
  if (key === 'share')
    return { share: share(givenNumber('Foreshots by share', ownValue(data, key), 0, 0.4)) };
  if (key === 'volume')
    return { volume: litres20(givenNumber('Foreshots by volume', ownValue(data, key), 0, 60_000)) };
  return { strength: strength(givenNumber('Foreshots by strength', ownValue(data, key!), 20, 90)) };
}

function readHouse(given: unknown): ShiftHouse {
  const data = givenRecord('The house', given, ['name', 'reflux', 'pressure', 'cuts', 'hours', 'lowWines', 'holds', 'limit', 'settles']); // prettier-ignore
  const cuts = givenRecord('The cuts', ownValue(data, 'cuts'), ['foreshots', 'heart', 'feints']);
  const limit = ownValue(data, 'limit');
  return {
    name: readName(ownValue(data, 'name')),
    reflux: share(givenNumber('The reflux', ownValue(data, 'reflux'), 0, 1)),
    pressure: kilopascals(givenNumber('The air pressure', ownValue(data, 'pressure'), 60, 110)),
    cuts: {
      foreshots: readForeshots(ownValue(cuts, 'foreshots')),
      heart: strength(givenNumber('The end of the heart', ownValue(cuts, 'heart'), 20, 85)),
      feints: strength(givenNumber('The end of the feints', ownValue(cuts, 'feints'), 0.1, 40)),
    },
    hours: givenNumber('Hours of the still', ownValue(data, 'hours'), 2, 48),
    lowWines: readSpirit('The low wines', ownValue(data, 'lowWines'), 1),
    holds: givenNumber('What the still holds', ownValue(data, 'holds'), 20, 200_000),
    ...(limit !== undefined && { limit: strength(givenNumber('The strongest charge', limit, 15, 60)) }),
    settles: givenNumber('The heart of the balanced round', ownValue(data, 'settles'), 0, 200_000),
  };
}

function readAction(data: Data): Action | undefined {
  const [what, to, open] = ['do', 'to', 'open'].map((key) => ownValue(data, key));
  if ((what === 'steam' || what === 'water') && typeof to === 'number' && isMark(to)) return { do: what, to };
  if (what === 'spout' && (to === 'spirit' || to === 'feints')) return { do: what, to };
  const valve = valves.find((each) => each === what);
  if (valve && typeof open === 'boolean') return { do: valve, open };
  if (what === 'haze' || what === 'refuse' || what === 'discharge') return { do: what };
  return readCommon(data, [0, 100]);
}

const readDone = (given: unknown): ChargeDone => {
  const data = givenRecord('A charge', given, ['charge', 'heart', 'back', 'score']);
  return {
    charge: readSpirit('A charge', ownValue(data, 'charge'), 0),
    heart: readSpirit('A heart', ownValue(data, 'heart'), 0),
    back: readSpirit('What went back', ownValue(data, 'back'), 0),
    score: givenNumber('Points', ownValue(data, 'score'), 0, 100, true),
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

export const encodeStill = (shift: StillShift): string => encodeKept(form, shift);
/** Reads a shift's text: the shift, or the sentence why it cannot be read. */
export const decodeStill = (text: string): StillShift | { readonly problem: string } =>
  decodeKept(form, text);
