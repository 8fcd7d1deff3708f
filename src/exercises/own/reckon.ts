// What a formula comes to: its units held together once, then its number for any values.
import { refuse, type Refusal, isRefusal } from '../../core/refusal.ts';
import { unitsRead, type Unit } from '../../core/units.ts';
import type { KindName } from '../../core/kinds.ts';
import {
  dimensionOfSigns,
  dimensionInWords,
  isSameDimension,
  NO_DIMENSION,
  scaleOfUnit,
  dimensionTimes,
  type UnitPowers,
} from './dimension.ts';
import type { Formula } from './formula.ts';

/** A value that a formula may name: its kind, and the unit that its number is in. */
export interface NamedValue {
  readonly name: string;
  readonly kind: KindName;
  readonly unit: string;
}

/** The unit of a kind by its sign; undefined when the kind is not read in it. */
export const unitIn = (kind: KindName, sign: string): Unit | undefined =>
  unitsRead(kind).find(({ unit }) => unit === sign);

class Mismatch extends Error {}

/** What a formula measures; a sentence where a name is not known, a unit does not fit or unlike things are added. */
export function measuredBy(formula: Formula, values: readonly NamedValue[]): UnitPowers | Refusal {
  const known = new Map(values.map((each) => [each.name, each]));
  const unit = (sign: string): UnitPowers => {
    const found = dimensionOfSigns(sign);
    if (isRefusal(found)) throw new Mismatch(found.refused);
    return found;
  };
  const plain = (of: Formula, what: string): void => {
    const found = look(of);
    if (!isSameDimension(found, NO_DIMENSION))
      throw new Mismatch(`${what} must be a plain number; here it is ${dimensionInWords(found)}.`);
  };
  const alike = (of: readonly Formula[], doing: string): UnitPowers => {
    const [first, ...others] = of.map(look);
    for (const other of others)
      if (!isSameDimension(first!, other))
        throw new Mismatch(
          `${doing} ${dimensionInWords(first!)} and ${dimensionInWords(other)}: they are not alike. Where a number has a unit, say so behind it, as in 0.789[kg/L].`,
        );
    return first!;
  };
  function look(of: Formula): UnitPowers {
    switch (of.is) {
      case 'number':
        return of.unit === undefined ? NO_DIMENSION : unit(of.unit);
      case 'name': {
        const value = known.get(of.name);
        if (!value) throw new Mismatch(`No value is called “${of.name}”.`);
        if (of.unit !== undefined && !unitIn(value.kind, of.unit))
          throw new Mismatch(
            `${of.name} cannot be told in “${of.unit}”; it can be in ${unitsRead(value.kind).map((each) => each.unit || 'plain numbers').join(', ')}.`,
          ); // prettier-ignore
        return unit(of.unit ?? value.unit);
      }
      case 'negative':
        return look(of.of);
      case '+':
      case '−':
        return alike([of.left, of.right], 'The formula adds or takes away');
      case '×':
        return dimensionTimes(look(of.left), look(of.right));
      case '/':
        return dimensionTimes(look(of.left), look(of.right), -1);
      case '^': {
        const base = look(of.left);
        plain(of.right, 'What stands behind ^');
        if (isSameDimension(base, NO_DIMENSION)) return NO_DIMENSION;
        const power = fixedNumber(of.right);
        if (power === undefined)
          throw new Mismatch(
            `${dimensionInWords(base)} can be raised to a written number only, as in side^2.`,
          );
        return dimensionTimes(NO_DIMENSION, base, power);
      }
      case 'call':
        if (of.name === 'least' || of.name === 'most') return alike(of.of, `${of.name}( ) compares`);
        if (of.name === 'sqrt') return dimensionTimes(NO_DIMENSION, look(of.of[0]!), 0.5);
        if (of.name === 'abs' || of.name === 'up' || of.name === 'down') return look(of.of[0]!);
        plain(of.of[0]!, `What stands in ${of.name}( )`);
        return NO_DIMENSION;
    }
  }
  try {
    return look(formula);
  } catch (problem) {
    if (problem instanceof Mismatch) return refuse(problem.message);
    throw problem;
  }
}

const fixedNumber = (of: Formula): number | undefined => {
  if (of.is === 'number') return of.value;
  const inner = of.is === 'negative' ? fixedNumber(of.of) : undefined;
  return inner === undefined ? undefined : -inner;
};

/**
 * Formulas made ready to reckon with many values: each unit is looked up once. Gives NaN or an infinity where there is no answer.
 * It reckons with the numbers as they are told; `withUnits` takes each in base units, so that tonnes times litres a kilogram
 * are litres: where the two differ, a thousand was lost between units.
 */
export function reckoner(
  formula: Formula,
  values: readonly NamedValue[],
  withUnits = false,
): (numbers: ReadonlyMap<string, number>) => number {
  const known = new Map(values.map((each) => [each.name, each]));
  type Sum = (numbers: ReadonlyMap<string, number>) => number;
  const made = (of: Formula): Sum => {
    switch (of.is) {
      case 'number': {
        const value = withUnits ? of.value * scaleOfUnit(of.unit ?? '') : of.value;
        return () => value;
      }
      case 'name': {
        const { name, unit } = of;
        const value = known.get(name);
        const scale = withUnits ? scaleOfUnit(unit ?? value?.unit ?? '') : 1;
        if (unit === undefined || !value || unit === value.unit)
          return (numbers) => (numbers.get(name) ?? NaN) * scale;
        const [from, to] = [unitIn(value.kind, value.unit), unitIn(value.kind, unit)];
        return (numbers) => (to?.fromCore(from?.toCore(numbers.get(name) ?? NaN) ?? NaN) ?? NaN) * scale;
      }
      case 'negative': {
        const inner = made(of.of);
        return (numbers) => -inner(numbers);
      }
      case 'call': {
        const inner = of.of.map(made);
        const run: (...of: readonly number[]) => number = RUN[of.name];
        return (numbers) => run(...inner.map((each) => each(numbers)));
      }
      default: {
        const [left, right] = [made(of.left), made(of.right)];
        const join = JOIN[of.is];
        return (numbers) => join(left(numbers), right(numbers));
      }
    }
  };
  return made(formula);
}

const HAIR = 1e-9; // what binary numbers leave over, before whole things are counted
const RUN = {
  sqrt: Math.sqrt,
  abs: Math.abs,
  exp: Math.exp,
  ln: Math.log,
  log: Math.log10,
  up: (value: number) => Math.ceil(value - HAIR),
  down: (value: number) => Math.floor(value + HAIR),
  least: Math.min,
  most: Math.max,
} as const;
const JOIN = {
  '+': (a: number, b: number) => a + b,
  '−': (a: number, b: number) => a - b,
  '×': (a: number, b: number) => a * b,
  '/': (a: number, b: number) => a / b,
  '^': (a: number, b: number) => a ** b,
} as const;
