// Figures by name, as text for a sentence: "heart.alcohol" of a line becomes "591.3 L pure alcohol".
import { figureIds, figureTable, pathsOf, type Figure, type FigureId } from '../core/figures/index.ts';
import { format } from '../core/format.ts';
import type { KindName } from '../core/kinds.ts';
import { lineFor, mashesIn, type LedgerPace } from '../core/line/ledger.ts';
import type { Line } from '../core/line/line.ts';
import { choiceFigures, isChoiceName, isNumberName } from './figures.ts';
import { forABottle } from './for-a-bottle.ts';

/** Every figure of a line that prose may quote, by where it stands. */
const idsAt = new Map<string, FigureId>(
  figureIds.flatMap((id) =>
    pathsOf(id)
      .filter((path) => !path.startsWith('beside.'))
      .map((path) => [path, id] as const),
  ),
);
for (const id of figureIds) if (isNumberName(id)) idsAt.set(`house.${id}`, id);
const lineFigures: ReadonlyMap<string, Figure> = new Map(
  [...idsAt].map(([path, id]) => [path, figureTable[id]]),
);

/** The figure that prose quotes by a name; undefined for a choice. */
export const figureAt = (path: string): FigureId | undefined => idsAt.get(path);

/** The kind of a figure, or undefined for a name that prose may not quote. */
export function kindOfFigure(path: string): { kind: KindName; amount: boolean } | undefined {
  const bottle = forABottle[path];
  if (bottle) return { kind: bottle.kind, amount: false };
  const found = lineFigures.get(path);
  return found && { kind: found.kind, amount: found.grows ?? false };
}

const HAIR = 1e-9; // part of a count: rounding must not take the last one, nor add one
/** Things: below so many a mean keeps its decimals. */
export const FEW_THINGS = 10;

/** Which way a count goes to whole things; undefined for what is not counted. */
export const countsWhole = (path: string): 'up' | 'down' | undefined => lineFigures.get(path)?.whole;

/** A count as whole things, where the table of figures says how. */
export function wholeCountOf(path: string, mean: number): number {
  const whole = lineFigures.get(path)?.whole;
  if (!whole || mean < FEW_THINGS) return mean;
  const nearest = Math.round(mean);
  if (Math.abs(mean - nearest) < HAIR * mean) return nearest;
  return whole === 'up' ? Math.ceil(mean) : Math.floor(mean);
}

/** What no house counts to the last one: the store, once it is full at a rate that will not stay. */
const ROUGHLY: Readonly<Record<string, number>> = { 'casks.inStore': -3 };

/** Decimals that a figure given by the reader needs: as few as say it whole, but gravity always has three. */
function givenDigits(value: number, kind: KindName): number {
  if (kind === 'gravity') return 3;
  return Math.min(3, (String(Number(value.toFixed(3))).split('.')[1] ?? '').length);
}

/** A value of a figure as a table prints it: as many decimals as it needs if the house gives it, whole things if they are counted and not told as a mean with decimals. */
export function textOfFigure(id: FigureId, value: number): string {
  const { kind, digits } = figureTable[id];
  if (isNumberName(id)) return format(value, kind, givenDigits(value, kind));
  return format(digits ? value : wholeCountOf(pathsOf(id)[0]!, value), kind, digits);
}

/** What a sentence says behind a figure of which a house has two: hours in the washback over a weekend. */
export const secondFigureText = ({ weekendHours }: Line, path: string): string =>
  path === 'house.fermentationHours' && weekendHours
    ? `, or ${format(weekendHours, 'hours', 0)} over a weekend`
    : '';

/** The names of all figures that prose may quote. */
export const quotableInProse: readonly string[] = [...lineFigures.keys(), ...Object.keys(forABottle)];

/** The number behind a figure's name. Throws on an unknown name. */
export function figureValue(line: Line, path: string): number {
  const bottle = forABottle[path];
  if (bottle) return bottle.of(line);
  const value = path.split('.').reduce<unknown>((at, key) => (at as Record<string, unknown>)?.[key], line);
  if (typeof value !== 'number') throw new RangeError(`No figure is called "${path}".`);
  return value;
}

/**
 * A figure as text. `per` scales an amount to a week, a year or a tonne; `digits` fixes the decimals, and below nought
 * the figures that count: −3 makes 401,000 of 400,911.
 * A choice gives its wording. Throws on an unknown name, so that a slip in a chapter fails the build.
 */
export function figureText(line: Line, path: string, per: LedgerPace = 'mash', digits?: number): string {
  const choice = path.replace(/^house\./, '');
  if (isChoiceName(choice))
    return (choiceFigures[choice].options as Record<string, string>)[line.house[choice]]!;
  const about = kindOfFigure(path);
  if (!about) throw new RangeError(`No figure is called "${path}".`);
  const value = figureValue(line, path);
  if (per !== 'mash' && !about.amount)
    throw new RangeError(`"${path}" is not an amount, so it has no figure ${per}.`);
  const own =
    path === choice
      ? per === 'mash' && value >= 1
        ? lineFigures.get(path)?.digits
        : undefined
      : per === 'mash'
        ? givenDigits(value, about.kind)
        : undefined;
  const amount = figureValue(lineFor(per, line), path) * mashesIn(per, line);
  const decimals = digits ?? ROUGHLY[path] ?? forABottle[path]?.digits ?? own;
  if (decimals !== undefined && decimals < 0)
    return format(Number(amount.toPrecision(-decimals)), about.kind);
  return format(decimals ? amount : wholeCountOf(path, amount), about.kind, decimals);
}
