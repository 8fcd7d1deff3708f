// A case of the fault desk, drawn by its number: one bench, one cause, one day, and readings that tell the cause from all others.
// A case is drawn only where what everybody sees leaves three causes open and all readings leave one. A new cause: what it does in src/core/fault, a line in its bench, a sum by hand in tests/fault.
// The class book reads its line by a pattern (src/exercises/class/taken.ts): change both, and go on reading the old form.
import { cheapestReadings, leftOpen, tellsApart, type Priced, type Supposed } from '../core/fault/decide.ts';
import type { Truth } from '../core/fault/truth.ts';
import { formatNumber } from '../core/format.ts';
import type { Line } from '../core/line/line.ts';
import { seededDrawing, roundedTo } from '../shift/seed.ts';
import type { Bench, Cause, BenchReading } from './bench.ts';
import { benches } from './benches.ts';
import { isRefusal } from '../core/refusal.ts';

const TRIES = 40; // draws of a number, until one can be decided
const HEALTHY = 0.14; // of the cases, in which nothing is wrong; a trainer's choice
const SIZES = [0, 0.25, 0.5, 0.75, 1]; // of each cause, at which the readings are worked out
const OPEN = 3; // causes, at least, that what everybody sees must leave open
const SEEN = 0.75; // of the error of what everybody sees, by which a fault shows at least

/** A reading of a case: how far it may be off in this house, what it shows, and what is usual. */
export interface ShownReading extends Omit<BenchReading, 'error'>, Priced {
  readonly shown: number;
  readonly usual: number;
}
export interface FaultCase {
  readonly seed: number;
  readonly bench: Bench;
  readonly cause: Cause;
  readonly readings: readonly ShownReading[];
  /** Every cause at several sizes, on the house's usual day. */
  readonly supposed: readonly Supposed[];
  /** The cheapest readings that decide, beside those that everybody sees. */
  readonly least: readonly ShownReading[];
}

/** Every cause of a bench, from each of some sizes to the next; undefined where the house has no such bench. */
export function supposedTruths(bench: Bench, line: Line, sizes: readonly number[] = SIZES): readonly Supposed[] | undefined {
  const of = bench.of(line);
  const all: Supposed[] = [];
  for (const { id } of bench.causes) {
    const truths = (id === 'nothing' ? [0, 0] : sizes).map((size) => of({ cause: id, size }));
    if (truths.some((truth) => isRefusal(truth))) return undefined;
    for (let i = 1; i < truths.length; i++) all.push({ cause: id, ends: [truths[i - 1] as Truth, truths[i] as Truth] });
  }
  return all;
} // prettier-ignore

export const errorOf = ({ error }: BenchReading, usual: number): number => (typeof error === 'number' ? error : Math.abs(usual) * error.part); // prettier-ignore
/** The readings of a case as a truth. */
export const truthOf = (readings: readonly ShownReading[]): Truth => Object.fromEntries(readings.map(({ id, shown }) => [id, shown])); // prettier-ignore

/** One try at a case; undefined where the trouble would not be seen, or could not be told from another. */
function tryOne(seed: number, attempt: number, line: Line, known: Map<Bench, readonly Supposed[] | undefined>): FaultCase | undefined {
  const { random } = seededDrawing(seed, attempt);
  const bench = benches[Math.floor(random() * benches.length)]!;
  const faults = bench.causes.filter(({ id }) => id !== 'nothing');
  const isHealthy = random() < HEALTHY;
  const fault = faults[Math.floor(random() * faults.length)]!;
  const cause = isHealthy ? bench.causes.find(({ id }) => id === 'nothing')! : fault;
  const truth = bench.of(line, random)({ cause: cause.id, size: roundedTo(random(), 3) });
  if (!known.has(bench)) known.set(bench, supposedTruths(bench, line));
  const supposed = known.get(bench);
  if (isRefusal(truth) || !supposed) return undefined;
  const usual = supposed.find((each) => each.cause === 'nothing')!.ends[0];
  const readings = bench.readings.map((reading): ShownReading => {
    const error = errorOf(reading, usual[reading.id]!);
    const chance = random();
    const off = reading.signs || reading.minutes === 0 ? 0 : ((chance - 0.5) * error) / 2; // a quarter of what it may be off, either way
    return { ...reading, error, shown: roundedTo(Math.max(reading.from ?? -Infinity, (truth as Truth)[reading.id]! + off), reading.digits), usual: usual[reading.id]! };
  });
  const found = truthOf(readings);
  const free = readings.filter(({ minutes }) => minutes === 0);
  const isSeen = free.some(({ shown, usual: is, error }) => Math.abs(shown - is) > SEEN * error);
  if (!isHealthy && !isSeen) return undefined;
  const first = leftOpen(free, found, supposed);
  const last = leftOpen(readings, found, supposed);
  if (first.length < OPEN || last.length !== 1 || last[0] !== cause.id) return undefined;
  const set = cheapestOf(readings, cause.id, found, supposed);
  return set ? { seed, bench, cause, readings, supposed, least: set } : undefined;
} // prettier-ignore

/** The cheapest readings beside the free ones. */
function cheapestOf(readings: readonly ShownReading[], cause: string, found: Truth, supposed: readonly Supposed[]): readonly ShownReading[] | undefined {
  const free = readings.filter(({ minutes }) => minutes === 0);
  const open = supposed.filter((one) => !free.some((each) => tellsApart(each, found, one)));
  return cheapestReadings(readings.filter(({ minutes }) => minutes > 0), cause, found, open);
} // prettier-ignore

const knownOf = new WeakMap<Line, Map<Bench, readonly Supposed[] | undefined>>(); // worked out once for a house

/** The case of a number in a house: the same everywhere. Undefined where no draw of it can be decided. */
export function drawFault(seed: number, line: Line): FaultCase | undefined {
  const known = knownOf.get(line) ?? new Map<Bench, readonly Supposed[] | undefined>();
  knownOf.set(line, known);
  for (let attempt = 0; attempt < TRIES; attempt++) {
    const made = tryOne(seed, attempt, line, known);
    if (made) return made;
  }
  return undefined;
}

/** A value as it is told: with its unit, or as a sign. */
export const valueInWords = ({ unit, digits, signs }: Pick<BenchReading, 'unit' | 'digits' | 'signs'>, value: number): string =>
  signs ? signs[value > 0.5 ? 1 : 0] : `${formatNumber(value, digits)}${unit}`; // prettier-ignore

/** What a reading found, as a sentence. */
export const readingInWords = (reading: ShownReading): string =>
  reading.finds(valueInWords(reading, reading.shown));

/** What stands before the trainee. */
export function complaintOf({ bench, readings }: FaultCase): string {
  const find = (id: string) => readings.find((each) => each.id === id)!;
  return bench.complaint((id) => valueInWords(find(id), find(id).shown), (id) => valueInWords(find(id), find(id).usual));
} // prettier-ignore
