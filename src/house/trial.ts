// One change that a reader made or tried: what gave way, what else could, and what it moved.
import { figureTable } from '../core/figures/index.ts';
import { formatNumber } from '../core/format.ts';
import { kinds, type KindName } from '../core/kinds.ts';
import { waysOf, type GaveWay, type Giving } from '../core/line/change.ts';
import type { House } from '../core/line/house.ts';
import { proposeFigure, wayOf } from './propose.ts';
import { numberFigures, type FigureName, type NumberName } from './figures.ts';
import type { Known } from './parts/known.ts';

export interface Trial {
  readonly figure: FigureName;
  readonly value: unknown;
  /** The house before the first move of this figure, and as it stands now. */
  readonly before: House;
  readonly after: House;
  readonly gave: readonly GaveWay[];
  /** What gave way where it is not the usual. */
  readonly gives?: Giving;
  /** True when the reader chose that. */
  readonly isChosen?: boolean;
  /** What was known before its first move. */
  readonly known: Known;
  /** Why the last value tried could not be; the house is then as it was. */
  readonly problem?: string;
}

/** A figure of the house in a sentence: 7,248 L, 1,552.4 kg, 1.0598. */
export function figureInWords(figure: NumberName, value: number): string {
  const kind: KindName = numberFigures[figure].kind;
  const places = kind === 'gravity' ? 4 : Math.abs(value) >= 1000 ? 0 : 2;
  const digits = Math.min(places, (String(Number(value.toFixed(places))).split('.')[1] ?? '').length);
  return `${formatNumber(value, kind === 'gravity' ? Math.max(3, digits) : digits)} ${kinds[kind].unit}`.trim();
}

/** True for a value outside what is usual for a figure, where that is a range. */
export function isUnusual(figure: NumberName, value: number): boolean {
  const [low, high] = figureTable[figure].usual?.range ?? [0, 0];
  return low < high && (value < low || value > high);
}

/** What gave way out of what is usual, each as a sentence that asks about the figures that moved it. */
export const unusualSentences = (gave: readonly GaveWay[]): readonly string[] =>
  gave
    .filter(({ figure, from, to }) => isUnusual(figure, to) && !isUnusual(figure, from))
    .map(
      ({ figure }) => `${numberFigures[figure].label} is then outside what is usual: are your figures right?`,
    );

const LEAST_EFFICIENCY = 60; // % of the extract; a mash that takes out less is a slip, not a mash; common practice, no source

/** What is kept when one thing gives way to another, and the thing that gives way, as a button says it. */
const kept: Readonly<Record<ReturnType<typeof waysOf>[number], string>> = {
  maltPerMash: 'the malt',
  wortVolume: 'the volume',
  originalGravity: 'the gravity',
};
const given: Readonly<Record<keyof typeof kept, string>> = {
  maltPerMash: ' of malt',
  wortVolume: ' of wort',
  originalGravity: '',
};

export interface TrialWay {
  readonly gives: Giving;
  /** “Keep the malt: 7,248 L of wort”. */
  readonly says: string;
  /** The way that was taken. */
  readonly taken: boolean;
}

/** The ways in which a change can be taken in; fewer than two leave nothing to choose. */
export function waysOut({ figure, value, before, gave, gives, problem }: Trial): readonly TrialWay[] {
  const ways = waysOf(figure);
  const holding: House = { ...before, holds: 'efficiency' };
  const both =
    ways.length > 0 ? proposeFigure(holding, figure, value, 'efficiency', wayOf(before)) : undefined;
  const asRead: readonly TrialWay[] =
    both && !('problem' in both) && both.line.mash.efficiency > LEAST_EFFICIENCY
      ? [
          {
            gives: 'efficiency',
            says: `Keep both: the mash takes out ${formatNumber(both.line.mash.efficiency, 1)} %`,
            taken: problem === undefined && gives === 'efficiency',
          },
        ]
      : [];
  const others = ways.flatMap((way): TrialWay[] => {
    const proposal = proposeFigure(holding, figure, value, way, wayOf(before));
    if ('problem' in proposal) return [];
    const other = ways.find((each) => each !== way)!;
    const sign = way === 'originalGravity' ? 'gravity ' : '';
    return [
      {
        gives: way,
        says: `Keep ${kept[other]}: ${sign}${figureInWords(way, proposal.house[way])}${given[way]}`,
        taken:
          problem === undefined && gave.some(({ figure }) => figure === way) && (gives ?? ways[0]) === way,
      },
    ];
  });
  return [...others, ...asRead];
}
