// A shift at a washback as text, version 1: its house, its actions and its rounds.
import { ownValue, type Data } from '../../core/reading/data.ts';
import { isMark } from '../../core/shift/course.ts';
import { isCoolerTemperature, washbackCourse, type Action } from '../../core/shift/washback/act.ts';
import { decodeKept, encodeKept, givenNumber, givenNumbers, readCommon, readName, readSpirit, givenRecord, type TextForm } from '../text.ts'; // prettier-ignore
import type { WashbackHouse, WashbackShift } from './shift.ts';

const figures = { volume: [50, 200_000], gravity: [1.01, 1.12], final: [0.98, 1.1], hours: [24, 150], set: [5, 35], yeast: [0.01, 5000] } as const; // prettier-ignore
const plain = ['pitch', 'antifoam', 'meter', 'report', 'go-in', 'let-in', 'refuse', 'hand-over'] as const;

function readHouse(given: unknown): WashbackHouse {
  const { name, ...rest } = givenRecord('The house', given, ['name', ...Object.keys(figures)]);
  return { name: readName(name), ...givenNumbers('The house', rest, figures) };
}

function readAction(data: Data): Action | undefined {
  const [what, to, on] = ['do', 'to', 'on'].map((key) => ownValue(data, key));
  if (what === 'set' && typeof to === 'number' && isCoolerTemperature(to)) return { do: what, to };
  if ((what === 'dose' || what === 'cooling') && typeof to === 'number' && isMark(to))
    return { do: what, to };
  if (what === 'switcher' && typeof on === 'boolean') return { do: what, on };
  const one = plain.find((each) => each === what);
  return one ? { do: one } : readCommon(data, [0.98, 1.12]);
}

const form: TextForm<WashbackShift> = {
  format: 'malt-spirit-washback-shift',
  version: 1,
  longest: washbackCourse.longest,
  actionKeys: ['do', 'to', 'on', 'read', 'corrected', 'text'],
  house: readHouse,
  action: readAction,
  done: (given) => {
    const data = givenRecord('A washback', given, ['wash', 'gravity', 'warmest', 'score']);
    return {
      wash: readSpirit('A wash', ownValue(data, 'wash'), 0),
      gravity: givenNumber('A gravity', ownValue(data, 'gravity'), 0.98, 1.12),
      warmest: givenNumber('The warmest', ownValue(data, 'warmest'), 0, 60),
      score: givenNumber('Points', ownValue(data, 'score'), 0, 100, true),
    };
  },
};

export const encodeWashback = (shift: WashbackShift): string => encodeKept(form, shift);
/** Reads a shift's text: the shift, or the sentence why it cannot be read. */
export const decodeWashback = (text: string): WashbackShift | { readonly problem: string } => decodeKept(form, text); // prettier-ignore
