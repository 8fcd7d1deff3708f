// What may be given to a calculator: at the ends of its ranges, and anywhere in them.
import fc from 'fast-check';
import {
  isChoice,
  isRows,
  type AnyCalculator,
  type AnyGiven,
  type InputNumber,
  type Input,
} from '../../src/calculators/define.ts';

const MOST_CORNERS = 512; // beyond this many, a calculator's corners are thinned evenly

/** Any number in a field's range; years and counts are whole. */
function anyNumber({ kind, range: [min, max] }: InputNumber): fc.Arbitrary<number> {
  return kind === 'years' || kind === 'count'
    ? fc.integer({ min: Math.ceil(min), max: Math.floor(max) })
    : fc.double({ min, max, noNaN: true }).map((value) => value + 0);
}

function anyValue(input: Input): fc.Arbitrary<AnyGiven[string]> {
  if (isChoice(input)) return fc.constantFrom(...Object.keys(input.options));
  if (!isRows(input)) return anyNumber(input);
  const row = fc.record(
    Object.fromEntries(Object.entries(input.columns).map(([name, field]) => [name, anyNumber(field)])),
  );
  return fc.array(row, { minLength: input.count[0], maxLength: input.count[1] });
}

/** Anything that may be given to a calculator. */
export function anyGiven(calculator: AnyCalculator): fc.Arbitrary<AnyGiven> {
  return fc.record(
    Object.fromEntries(Object.entries(calculator.inputs).map(([name, input]) => [name, anyValue(input)])),
  );
}

function ends(input: Input): readonly AnyGiven[string][] {
  if (isChoice(input)) return Object.keys(input.options);
  if (!isRows(input)) return input.range;
  const rowAt = (end: 0 | 1) =>
    Object.fromEntries(Object.entries(input.columns).map(([name, { range }]) => [name, range[end]]));
  return [
    Array.from({ length: input.count[0] }, () => rowAt(0)),
    Array.from({ length: input.count[1] }, (_, i) => rowAt(i % 2 === 0 ? 1 : 0)),
    input.value,
  ];
}

/** Every combination of the ends of a calculator's inputs, thinned where there are very many. */
export function corners(calculator: AnyCalculator): readonly AnyGiven[] {
  const all = Object.entries(calculator.inputs).reduce<AnyGiven[]>(
    (sofar, [name, input]) => {
      const next = sofar.flatMap((given) => ends(input).map((end) => ({ ...given, [name]: end })));
      const every = Math.ceil(next.length / MOST_CORNERS);
      return next.filter((_, i) => i % every === 0);
    },
    [{}],
  );
  return all;
}
