// What a corrected book tells otherwise of a house than the book that was used before: each figure's text then and now.
import { isData, jsonIn } from '../core/reading/data.ts';
import {
  figureIds,
  figureTable,
  headOf,
  isGiven,
  pathsOf,
  stageOf,
  type Stage,
} from '../core/figures/index.ts';
import type { Line } from '../core/line/line.ts';
import { figureText } from './prose.ts';

/** Figures by their names in prose, each as the book last told it. */
export type ToldFigures = Readonly<Record<string, string>>;

/** A figure that is told otherwise. */
export interface Corrected {
  readonly path: string;
  readonly was: string;
  readonly now: string;
}

/** What a book last told of a house. */
export interface LastTold {
  /** The stamp of the book. */
  readonly book: string;
  /** The house's own figures, as a text. */
  readonly house: string;
  readonly figures: ToldFigures;
  /** What the reader has not yet taken note of. */
  readonly news: readonly Corrected[];
}

const LONGEST = 500_000; // characters that are read: a hundred houses and more
const MOST = 60; // houses that are remembered, the last ones told
const LONGEST_TEXT = 60; // characters of one figure

/** The figures that are remembered: those on cards and those that a change is told by, as far as they are reckoned. */
const remembered = new Map(
  figureIds
    .filter((id) => !isGiven(figureTable[id]) && (figureTable[id].card || figureTable[id].watched))
    .map((id) => [pathsOf(id)[0]!, id] as const),
);

/** How a sentence names a remembered figure, and its stage. */
export function nameOfRemembered(path: string): { readonly name: string; readonly stage: Stage } {
  const id = remembered.get(path)!;
  return { name: headOf(id), stage: stageOf(id) };
}

/** Every remembered figure of a line, as the book tells it. */
export const rememberedFigures = (line: Line): ToldFigures =>
  Object.fromEntries([...remembered.keys()].map((path) => [path, figureText(line, path)]));

/** What is told otherwise now, with what was corrected before and not yet taken note of: each from what the reader saw last. */
export function correctedSince(before: LastTold, now: ToldFigures): readonly Corrected[] {
  const first = new Map(before.news.map(({ path, was }) => [path, was]));
  return [...remembered.keys()].flatMap((path) => {
    if (!Object.hasOwn(before.figures, path) || !Object.hasOwn(now, path)) return [];
    const was = first.get(path) ?? before.figures[path]!;
    return was === now[path] ? [] : [{ path, was, now: now[path]! }];
  });
}

const isText = (value: unknown): value is string => typeof value === 'string';
const isTold = (value: unknown): value is string => isText(value) && value.length <= LONGEST_TEXT;

/** What is remembered of each house, by its name, from the text that is kept. What cannot be read is forgotten: it can only be told anew. */
export function readRemembered(text: string | null): ReadonlyMap<string, LastTold> {
  const data = jsonIn(text ?? '', LONGEST);
  const all = new Map<string, LastTold>();
  for (const entry of Array.isArray(data) ? data : []) {
    const [name, told] = Array.isArray(entry) ? (entry as readonly unknown[]) : [];
    if (!isText(name) || !isData(told)) continue;
    const { book, house, figures, news } = told;
    if (!isText(book) || !isText(house) || !isData(figures) || !Array.isArray(news)) continue;
    all.set(name, {
      book,
      house,
      figures: Object.fromEntries(
        Object.entries(figures).filter(([path, told]) => remembered.has(path) && isTold(told)),
      ) as ToldFigures,
      news: (news as readonly unknown[]).filter(
        (each): each is Corrected =>
          isData(each) &&
          remembered.has(each['path'] as string) &&
          isTold(each['was']) &&
          isTold(each['now']),
      ),
    });
  }
  return all;
}

/** The text to keep, with what is now told of one house. */
export function withRemembered(all: ReadonlyMap<string, LastTold>, name: string, told: LastTold): string {
  const others = [...all].filter(([each]) => each !== name);
  return JSON.stringify([...others, [name, told]].slice(-MOST));
}
