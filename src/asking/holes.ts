// Fills the holes of an answer from the line of a house, in the unit and at the pace that were asked for.
import { format, formatWorking } from '../core/format.ts';
import type { NumberName } from '../core/figures/index.ts';
import type { KindName } from '../core/kinds.ts';
import { mashesIn, paces, type LedgerPace } from '../core/line/ledger.ts';
import type { Line } from '../core/line/line.ts';
import { measures } from '../core/measures.ts';
import { dimensionOf, unitsRead, type Unit } from '../core/units.ts';
import { conditions, isCondition } from '../house/conditions.ts';
import type { FactId } from '../house/facts.ts';
import { figureText, figureValue, kindOfFigure, wholeCountOf } from '../house/prose.ts';
import { isMade, madeFigure } from './made.ts';

/** How an answer is to be told. */
export interface Telling {
  readonly line: Line;
  /** The unit that the question names, as `measures.ts` prints it. */
  readonly unit?: string | undefined;
  /** The pace that the question names. */
  readonly pace?: LedgerPace | undefined;
  /** The unit that the reader has chosen for a kind. */
  readonly likes?: (kind: KindName) => Unit | undefined;
  /** What the house says of a fact; nothing where it has said nothing. */
  readonly says?: (fact: FactId) => string | undefined;
  /** The figures of the house that are not known. */
  readonly unknown?: readonly NumberName[];
}

export interface Filled {
  readonly text: string;
  /** The figures in it, by their places in the line. */
  readonly paths: readonly string[];
  /** True when a figure was told in the unit that the question names. */
  readonly inUnit: boolean;
}

/**
 * A hole: `{heart.volume}`, `{wash.alcohol/year}` at a pace, `{wash.alcohol/*year}` at the pace asked for or else a year,
 * `{made.hectaresPerYear}` of `made.ts`, `{heart.strength in ° US proof}` in a unit of its own, `{house.originalGravity in own}` in the book’s, `{*year}` for the words of that pace.
 */
const HOLE = /\{([\w.]*)(?:\/?(\*?)(mash|tonne|week|year))?(?: in ([^}]+))?\}/g;
const FACT = /\{\?(\w+): ([^{}]*)\}/g;
const WHEN = /<When is="([^"]+)">([^]*?)<\/When>/g;
const TYPED = /(\d[\d.,]*)(?:–(\d[\d.,]*))?[\s\u00a0]?(°C|kg|L)(?![\w/])/g;
const DIGITS = 4; // figures of a number told in a unit that is not the book’s

const TYPED_DIGITS = 3; // figures of what was typed, which is round
const TYPED_KINDS: Readonly<Record<string, KindName>> = { '°C': 'temperature', kg: 'mass', L: 'volume20' };

/** A quantity in another unit of its kind. */
export function inOtherUnit(value: number, unit: Unit, digits = DIGITS): string {
  const number = formatWorking(unit.fromCore(value), digits);
  return unit.unit === '' ? number : `${number}\u00a0${unit.unit.replaceAll(' ', '\u00a0')}`;
}

/** The unit of a kind that a question’s unit means. */
export const unitMeant = (kind: KindName, name: string | undefined): Unit | undefined =>
  name === undefined
    ? undefined
    : (unitsRead(kind).find(({ unit }) => unit === name) ?? localUnit(kind, name));

/** A British pint or fluid ounce, which no field reads. */
function localUnit(kind: KindName, name: string): Unit | undefined {
  const [size, litre] = [name, 'L'].map((each) => measures.find(({ unit }) => unit === each)?.size);
  if (dimensionOf(kind) !== 'volume' || !/^(?:pints|fl oz)$/.test(name)) return undefined;
  const times = size! / litre!;
  return {
    unit: `UK ${name}`,
    digits: 1,
    fromCore: (value) => value / times,
    toCore: (value) => value * times,
  };
}

/** Text with its holes filled. Throws on a hole that names nothing. */
export function fillHoles(text: string, telling: Telling): Filled {
  const { line, says = () => undefined, likes = () => undefined } = telling;
  const paths = new Set<string>();
  let isIn = false;

  const tell = (value: number, kind: KindName, own: () => string, set?: string): string => {
    if (set === 'own') return own();
    const asked = kind === 'years' && set === undefined ? undefined : unitMeant(kind, set ?? telling.unit);
    if (asked) isIn = true;
    const unit = asked ?? likes(kind);
    return unit === undefined || unit === unitsRead(kind)[0] ? own() : inOtherUnit(value, unit);
  };
  const hole = (path: string, pace: LedgerPace, set?: string): string => {
    const [first, name = ''] = path.split('.');
    if (first === 'made') {
      if (!isMade(name)) throw new RangeError(`No figure is called “${path}”.`);
      const { kind, of, digits } = madeFigure(name);
      paths.add(path);
      const value = of(line);
      return tell(value, kind, () => format(value, kind, digits), set);
    }
    const about = kindOfFigure(path);
    const whole = () => figureText(line, path, pace);
    if (!about) return whole();
    paths.add(path);
    const value = wholeCountOf(path, figureValue(line, path) * mashesIn(pace, line));
    return tell(value, about.kind, whole, set);
  };

  /** What is typed in the text itself, as 50–60 °C, in the unit that the question names. */
  const typed = (whole: string, low: string, high: string | undefined, unit: string): string => {
    const kind = TYPED_KINDS[unit]!;
    const asked = unitMeant(kind, telling.unit);
    if (!asked || asked.unit === unit) return whole;
    isIn = true;
    const ends = [low, high].flatMap((end) => (end === undefined ? [] : [Number(end.replaceAll(',', ''))]));
    const [last, ...others] = ends.reverse();
    return [...others.map((end) => formatWorking(asked.fromCore(end), TYPED_DIGITS)), inOtherUnit(last!, asked, TYPED_DIGITS)].join('–'); // prettier-ignore
  };

  const filled = text
    .replace(TYPED, typed)
    .replace(WHEN, (_, is: string, told: string) => {
      if (!isCondition(is)) throw new RangeError(`No condition is called “${is}”.`);
      return conditions[is](line, telling.unknown ?? []) ? told : '';
    })
    .replace(FACT, (_, fact: string, otherwise: string) => says(fact as FactId) ?? otherwise)
    .replace(
      HOLE,
      (_, path: string, star: string | undefined, pace: LedgerPace | undefined, set: string | undefined) => {
        const at = star && telling.pace ? telling.pace : (pace ?? 'mash');
        return path === '' ? paces[at] : hole(path, at, set);
      },
    )
    .replace(/\s+(?=[.,;])/g, '')
    .replace(/[ \n]+/g, ' ')
    .trim();
  return { text: filled, paths: [...paths], inUnit: isIn };
}
