// Figures by name, as text for a sentence: "heart.alcohol" of a line becomes "591.3 L pure alcohol".
import { format } from '../core/format.ts';
import type { KindName } from '../core/kinds.ts';
import { mashesIn, type Pace } from '../core/line/ledger.ts';
import type { Line } from '../core/line/line.ts';
import { choiceFigures, isChoiceName, isNumberName, numberFigures } from './figures.ts';

/** The kind of every figure of a line that prose may quote, whether it is an amount that grows with the number of mashes, and decimals where the kind’s own would mislead. */
const lineFigures: Readonly<
  Record<string, readonly [kind: KindName, grows?: 'amount' | undefined, digits?: number]>
> = {
  'pace.mashesPerYear': ['count'],
  'pace.maltPerWeek': ['mass'],
  'pace.maltPerYear': ['mass'],
  'barley.mass': ['mass', 'amount'],
  'barley.perBottle': ['mass', undefined, 1],
  'malt.mass': ['mass', 'amount'],
  'malt.extract': ['mass', 'amount'],
  'malt.spiritYield': ['yield'],
  'malt.alcohol': ['alcohol', 'amount'],
  'grist.husk': ['mass', 'amount'],
  'grist.grits': ['mass', 'amount'],
  'grist.flour': ['mass', 'amount'],
  'grist.gritsPercent': ['percent'],
  'grist.time': ['hours', 'amount'],
  'mash.firstWater': ['volume', 'amount'],
  'mash.strike': ['temperature'],
  'mash.efficiency': ['percent'],
  'mash.draff': ['mass', 'amount'],
  'wort.volume': ['volume20', 'amount'],
  'wort.mass': ['mass', 'amount'],
  'wort.plato': ['plato'],
  'wort.extract': ['mass', 'amount'],
  'wash.volume': ['volume20', 'amount'],
  'wash.strength': ['strength'],
  'wash.alcohol': ['alcohol', 'amount'],
  'wash.fermented': ['percent'],
  'wash.attenuation.extractUsed': ['percent'],
  'wash.washMass': ['mass', 'amount'],
  'wash.carbonDioxide': ['mass', 'amount'],
  'wash.yeastGrown': ['mass', 'amount'],
  ...Object.fromEntries(
    [
      'lowWines',
      'potAle',
      'charge',
      'foreshots',
      'heart',
      'feints',
      'spentLees',
      'filling',
      'matured',
      'bottling',
    ].flatMap((portion) => [
      [`${portion}.volume`, ['volume20', 'amount']],
      [`${portion}.strength`, ['strength']],
      [`${portion}.alcohol`, ['alcohol', 'amount']],
    ]),
  ),
  'foreshots.begins': ['strength'],
  'heart.begins': ['strength'],
  'filling.water': ['volume20', 'amount'],
  'round.dilution': ['volume20', 'amount'],
  'casks.meanSize': ['volume'],
  'casks.perMash': ['count', 'amount', 1], // times the mashes of a year it must give the casks of a year
  'casks.perWeek': ['count'],
  'casks.perYear': ['count'],
  'casks.inStore': ['count'],
  'matured.alcoholLost': ['alcohol', 'amount'],
  'bottling.water': ['volume20', 'amount'],
  'bottling.bottles': ['count', 'amount'],
  'bottling.bottlesPerCask': ['count'],
  'bottling.bottlesPerYear': ['count'],
};

/** The kind of a figure, or undefined for a name that prose may not quote. */
export function kindOfFigure(path: string): { kind: KindName; amount: boolean } | undefined {
  const name = path.replace(/^house\./, '');
  if (path !== name && isNumberName(name))
    return { kind: numberFigures[name].kind, amount: name === 'maltPerMash' };
  const found = Object.hasOwn(lineFigures, path) ? lineFigures[path] : undefined;
  return found && { kind: found[0], amount: found[1] === 'amount' };
}

/** Decimals that a figure given by the reader needs: as few as say it whole, but gravity always has three. */
function givenDigits(value: number, kind: KindName): number {
  if (kind === 'gravity') return 3;
  return Math.min(3, (String(Number(value.toFixed(3))).split('.')[1] ?? '').length);
}

/** The names of all figures that prose may quote. */
export const quotable: readonly string[] = [
  ...Object.keys(lineFigures),
  ...Object.keys(numberFigures).map((name) => `house.${name}`),
];

/** The number behind a figure's name. Throws on an unknown name. */
export function figureValue(line: Line, path: string): number {
  const value = path.split('.').reduce<unknown>((at, key) => (at as Record<string, unknown>)?.[key], line);
  if (typeof value !== 'number') throw new RangeError(`No figure is called "${path}".`);
  return value;
}

/**
 * A figure as text. `per` scales an amount to a week, a year or a tonne; `digits` fixes the decimals.
 * A choice gives its wording. Throws on an unknown name, so that a slip in a chapter fails the build.
 */
export function figureText(line: Line, path: string, per: Pace = 'mash', digits?: number): string {
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
        ? lineFigures[path]?.[2]
        : undefined
      : per === 'mash'
        ? givenDigits(value, about.kind)
        : undefined;
  return format(value * mashesIn(per, line), about.kind, digits ?? own);
}
