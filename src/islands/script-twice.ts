// Figures that a talk tells twice, and not alike.
import type { SaidValue } from '../core/cross-check/quoted.ts';
import type { TalkFigureId } from '../talk/figures.ts';
import type { TakenFor } from './script-taken.ts';

export interface ToldTwice {
  readonly figure: TalkFigureId;
  /** Where it is told first, and each place where it is told otherwise. */
  readonly places: readonly number[];
}

const ABOUT = 0.05; // part of a figure by which one that is said as about may be out; common practice of speech, no source
const ROUND = 0.035; // and by which a round number may be, at most

/** Between what a figure as said lies. */
function ends(said: SaidValue): readonly [number, number] {
  if (said.as === 'range') return [said.low, said.high];
  const { value } = said;
  const size = Math.abs(value);
  if (said.as === 'about') return [value - ABOUT * size, value + ABOUT * size];
  const [, decimals = ''] = String(value).split('.');
  const noughts = decimals === '' ? (/0*$/.exec(String(size))?.[0].length ?? 0) : -decimals.length;
  const slack = said.as === 'exact' || value === 0 ? 0 : Math.min(10 ** noughts / 2, ROUND * size);
  return [value - slack, value + slack];
}

/** The figures that are told again and not alike, in the order of telling; `also` may tell otherwise what is taken or told there twice, and nothing by itself. */
export function toldTwice(taken: TakenFor, also: TakenFor = {}): readonly ToldTwice[] {
  const told = new Map<TalkFigureId, { place: number; ends: readonly [number, number] }[]>();
  const others = Object.values(also).map(({ figure }) => figure);
  const known = new Set([...Object.values(taken).map(({ figure }) => figure), ...others.filter((figure, i) => others.indexOf(figure) < i)]); // prettier-ignore
  for (const [place, { figure, said }] of Object.entries({ ...taken, ...also })) {
    if (!known.has(figure)) continue;
    const there = told.get(figure) ?? [];
    told.set(figure, there);
    const own = ends(said);
    const isNew = there.every(({ ends: [low, high] }) => own[1] < low || own[0] > high);
    if (there.length === 0 || isNew) there.push({ place: Number(place), ends: own });
  }
  return [...told].flatMap(([figure, there]) =>
    there.length > 1 ? [{ figure, places: there.map(({ place }) => place) }] : [],
  );
}
