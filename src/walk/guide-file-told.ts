// What a new guide has told of a walk's figures, and what comes next: kept as text by the name of the walk, and read strictly.
import { isData, jsonIn } from '../core/reading/data.ts';
import type { FigureId } from '../core/figures/index.ts';
import type { SaidVerdict } from './guide-file-judge.ts';

/** Figures told right, each with what the house then had, and those that were missed in this round. */
export interface ToldRight {
  readonly right: Readonly<Record<string, number>>;
  readonly missed: readonly string[];
}
export const nothingTold: ToldRight = { right: {}, missed: [] };

/** The figure that comes next: the first that was neither told right nor missed; nothing at the end of a round. */
export const nextToTell = (
  figures: readonly FigureId[],
  { right, missed }: ToldRight,
): FigureId | undefined => figures.find((id) => !(id in right) && !missed.includes(id));

/** A figure told; what was near is asked again, as what was wrong is. */
export function withFigureTold(
  { right, missed }: ToldRight,
  id: FigureId,
  verdict: SaidVerdict,
  value: number,
): ToldRight {
  const others = missed.filter((each) => each !== id);
  const rest = Object.fromEntries(Object.entries(right).filter(([each]) => each !== id));
  return verdict === 'right'
    ? { right: { ...rest, [id]: value }, missed: others }
    : { right: rest, missed: [...others, id] };
}

/** A round over those that were missed. */
export const roundOfMissed = ({ right }: ToldRight): ToldRight => ({ right, missed: [] });

/** What still counts of it for a walk and its house: a figure that has moved is to be told anew. */
export function stillTold(
  { right, missed }: ToldRight,
  figures: readonly FigureId[],
  isStill: (id: FigureId, was: number) => boolean,
): ToldRight {
  const own = new Set<string>(figures);
  return {
    right: Object.fromEntries(Object.entries(right).filter(([id, was]) => own.has(id) && isStill(id as FigureId, was))),
    missed: missed.filter((id) => own.has(id)),
  };
} // prettier-ignore

const MOST_WALKS = 30;
const MOST_FIGURES = 200;
const LONGEST = 200; // characters of a walk's name
type ByWalk = readonly (readonly [name: string, told: ToldRight])[];

function readTold(data: unknown): ToldRight | undefined {
  if (!isData(data) || !isData(data['right']) || !Array.isArray(data['missed'])) return undefined;
  const right = Object.entries(data['right']).slice(0, MOST_FIGURES);
  const missed = data['missed'].slice(0, MOST_FIGURES) as unknown[];
  return {
    right: Object.fromEntries(right.filter((each): each is [string, number] => Number.isFinite(each[1]))),
    missed: missed.filter((each): each is string => typeof each === 'string'),
  };
}

/** What was kept, by walk; anything that is no such text counts for nothing. */
export function readByWalk(text: string | null): ByWalk {
  const data = jsonIn(text ?? '[]');
  if (!Array.isArray(data)) return [];
  return data.slice(-MOST_WALKS).flatMap((each: unknown) => {
    const [name, rest] = Array.isArray(each) ? (each as unknown[]) : [];
    const told = readTold(rest);
    return typeof name === 'string' && name.length <= LONGEST && told ? [[name, told] as const] : [];
  });
}

export const toldOf = (all: ByWalk, walk: string): ToldRight =>
  all.find(([name]) => name === walk)?.[1] ?? nothingTold;

/** The text to keep, with what was told of one walk put in; the walks told of longest ago go first. */
export const withWalk = (all: ByWalk, walk: string, told: ToldRight): string =>
  JSON.stringify([...all.filter(([name]) => name !== walk), [walk, told]].slice(-MOST_WALKS));
