// A shift as text, version 1, for the browser: written whole, and read whole or not at all.
import { plainName } from '../house/name.ts';
import { shown } from '../core/shown.ts';
import { isMark, valves, type Action, type Logged } from '../core/shift/act.ts';
import { LONGEST } from '../core/shift/replay.ts';
import { kilopascals, litres20, share, strength, type Spirit } from '../core/quantity.ts';
import type { ForeshotsEnd } from '../core/distilling/cuts.ts';
import { isSeed, ROUNDS } from './draw.ts';
import type { ChargeDone, Shift, ShiftHouse } from './shift.ts';

const FORMAT = 'malt-spirit-shift';
const VERSION = 1;
export const BIGGEST = 400_000; // characters of a text that is read
export const MOST_ACTIONS = 2000; // of one charge
export const LONGEST_NOTE = 200; // characters

export const encodeShift = (shift: Shift): string => JSON.stringify({ format: FORMAT, version: VERSION, ...shift }); // prettier-ignore

type Data = Readonly<Record<string, unknown>>;
class Unread extends Error {}

const isData = (data: unknown): data is Data => typeof data === 'object' && data !== null && !Array.isArray(data); // prettier-ignore
function record(what: string, data: unknown, keys: readonly string[]): Data {
  if (!isData(data)) throw new Unread(`${what} is “${shown(data)}”.`);
  const odd = Object.keys(data).find((key) => !keys.includes(key));
  if (odd !== undefined) throw new Unread(`${what} has “${shown(odd)}”, which is not known.`);
  return data;
}
function number(what: string, given: unknown, low: number, high: number, isWhole = false): number {
  if (typeof given === 'number' && given >= low && given <= high && (!isWhole || Number.isInteger(given)))
    return given === 0 ? 0 : given;
  throw new Unread(`${what} is “${shown(given)}”; it can be ${isWhole ? 'a whole number ' : ''}from ${low} to ${high}.`); // prettier-ignore
}
function list(what: string, given: unknown, most: number): readonly unknown[] {
  if (Array.isArray(given) && given.length <= most) return given;
  throw new Unread(`${what} cannot be read, or is longer than ${most}.`);
}
const own = (data: Data, key: string): unknown => (Object.hasOwn(data, key) ? data[key] : undefined);

function readSpirit(what: string, given: unknown, least: number): Spirit {
  const data = record(what, given, ['volume', 'strength']);
  return {
    volume: litres20(number(`${what}, litres`, own(data, 'volume'), least, 400_000)),
    strength: strength(number(`${what}, strength`, own(data, 'strength'), 0, 96)),
  };
}

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
  const name = own(data, 'name');
  if (typeof name !== 'string' || name === '' || plainName(name) !== name) throw new Unread(`The house is called “${shown(name)}”.`); // prettier-ignore
  const cuts = record('The cuts', own(data, 'cuts'), ['foreshots', 'heart', 'feints']);
  const limit = own(data, 'limit');
  return {
    name,
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

function readAction(given: unknown): Logged {
  const line = record('A line of the log', given, ['step', 'action']);
  const step = number('The time of a line', own(line, 'step'), 0, LONGEST, true);
  const data = record('What was done', own(line, 'action'), [
    'do',
    'to',
    'open',
    'read',
    'corrected',
    'text',
  ]);
  const [what, to, open] = ['do', 'to', 'open'].map((key) => own(data, key));
  const action = ((): Action | undefined => {
    if ((what === 'steam' || what === 'water') && typeof to === 'number' && isMark(to)) return { do: what, to }; // prettier-ignore
    if (what === 'spout' && (to === 'spirit' || to === 'feints')) return { do: what, to };
    const valve = valves.find((each) => each === what);
    if (valve && typeof open === 'boolean') return { do: valve, open };
    if (what === 'haze' || what === 'refuse' || what === 'discharge') return { do: what };
    if (what === 'read')
      return {
        do: what,
        read: number('A reading', own(data, 'read'), 0, 100),
        corrected: number('A reading at 20 °C', own(data, 'corrected'), 0, 100),
      };
    const text = own(data, 'text');
    if (what === 'note' && typeof text === 'string' && text.length <= LONGEST_NOTE) return { do: what, text };
    return undefined;
  })();
  if (!action) throw new Unread(`“${shown(what)}” is nothing that can be done at the still.`);
  return { step, action };
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

/** Reads a shift's text: the shift, or the sentence why it cannot be read. */
export function decodeShift(text: string): Shift | { readonly problem: string } {
  if (text.length > BIGGEST) return { problem: `That text is longer than any shift: ${text.length} characters.` }; // prettier-ignore
  try {
    const data = record('The text', JSON.parse(text), ['format', 'version', 'seed', 'house', 'charge', 'waits', 'done', 'log', 'step']); // prettier-ignore
    if (own(data, 'format') !== FORMAT) throw new Unread('It is none.');
    if (own(data, 'version') !== VERSION) throw new Unread(`Its version is “${shown(own(data, 'version'))}”; this handbook reads version ${VERSION}.`); // prettier-ignore
    const seed = own(data, 'seed');
    if (!isSeed(seed)) throw new Unread(`Its number is “${shown(seed)}”.`);
    const log = list('The log', own(data, 'log'), MOST_ACTIONS).map(readAction);
    if (log.some(({ step }, i) => i > 0 && step < log[i - 1]!.step))
      throw new Unread('Its log is out of order.');
    return {
      seed,
      house: readHouse(own(data, 'house')),
      charge: readSpirit('The charge', own(data, 'charge'), 20),
      waits: readSpirit('What waits', own(data, 'waits'), 0),
      done: list('The charges', own(data, 'done'), ROUNDS).map(readDone),
      log,
      step: number('The time', own(data, 'step'), 0, LONGEST, true),
    };
  } catch (error) {
    const why = error instanceof Unread ? error.message : 'It is no text of one.';
    return { problem: `A shift was kept here that cannot be read. ${why}` };
  }
}
