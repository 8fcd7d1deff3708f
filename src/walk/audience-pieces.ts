// Pieces that a guide may add for those who come, with the figures of the house in them.
import { formatWorking } from '../core/format.ts';
import type { NumberName } from '../core/figures/index.ts';
import type { Line } from '../core/line/line.ts';
import { unitsOf } from '../core/units.ts';
import { figureAt, figureText, figureValue, kindOfFigure } from '../house/prose.ts';
import type { Stage } from '../house/figures.ts';
import { figureIds, talkFigures } from '../talk/figures.ts';
import type { Coming } from './audience-kinds.ts';
import type { Piece, SaidHere, Walk } from './walk.ts';

/** A piece of the book for one kind of visitor and one stage; figures stand in it as `{heart.volume}` or `{heart.volume in US gal}`. */
export interface Suggestion {
  readonly id: string;
  readonly coming: Coming;
  readonly stage: Stage;
  readonly says: string;
  /** A source of the book, “common practice”, “memory” or “derived”. */
  readonly rests: string;
}

/** What a walk fetches once somebody in particular is coming: pieces to add, and the trade's words in English. */
export interface WalkAbroad {
  readonly pieces: readonly Suggestion[];
  readonly words: readonly { readonly english: string; readonly stage: string }[];
}

const HOLE = /\{([\w.]+)(?: in ([^}]+))?\}/g;
/** Units that a guide says in words. */
const inWords: Readonly<Record<string, string>> = {
  h: 'hours',
  't/h': 'tonnes an hour',
  'L\u00a0pure\u00a0alcohol': 'litres of pure alcohol',
  'L\u00a0pure\u00a0alcohol/t': 'litres of pure alcohol a tonne',
};
const DIGITS = 4; // figures of a number in another unit than the book's

/** A figure of the house as a suggestion says it. Throws on an unknown name or unit, so that a slip fails the tests. */
function told(line: Line, path: string, unitName: string | undefined): string {
  if (unitName === undefined) {
    return figureText(line, path).replace(/(?<=\u00a0).*/, (unit) => inWords[unit] ?? unit);
  }
  const unit = unitsOf(kindOfFigure(path)!.kind).find((each) => each.unit === unitName);
  if (!unit) throw new RangeError(`“${path}” has no unit “${unitName}”.`);
  const name = unitName.replace('° US', 'US').replaceAll(' ', '\u00a0');
  return `${formatWorking(unit.fromCore(figureValue(line, path)), DIGITS)}\u00a0${name}`;
}

/** A suggestion as a piece for a house, each figure that a talk can hold kept with its value. */
export function pieceOfSuggestion({ says, coming }: Suggestion, line: Line): Piece {
  const figures: SaidHere[] = [];
  let text = '';
  let from = 0;
  for (const hole of says.matchAll(HOLE)) {
    const [whole, path, unit] = hole;
    text += says.slice(from, hole.index);
    const words = told(line, path!, unit);
    const id = figureAt(path!);
    const figure = figureIds.find((each) => talkFigures[each].inTable === id && id !== undefined);
    if (figure) figures.push({ at: text.length, words, figure, value: figureValue(line, path!) });
    text += words;
    from = hole.index + whole.length;
  }
  text += says.slice(from);
  return { text, long: false, figures, whom: coming };
}

/** The figures that a suggestion tells, by their places in the line. */
export const pathsIn = ({ says }: Suggestion): readonly string[] => [...says.matchAll(HOLE)].map(([, path]) => path!); // prettier-ignore

/** True for a suggestion that tells a figure of which the house knows nothing yet. */
export const isUnknown = (suggestion: Suggestion, unknown: readonly NumberName[]): boolean =>
  pathsIn(suggestion).some((path) => unknown.includes(path.replace(/^house\./, '') as NumberName));

export interface SuggestedHere {
  readonly suggestion: Suggestion;
  readonly room: number;
  readonly piece: Piece;
}

/** The suggestions for those who come, each in the first room of its stage; those that are said there already are left out. */
export function suggestedFor(walk: Walk, all: readonly Suggestion[], line: Line, unknown: readonly NumberName[]): SuggestedHere[] {
  return all.flatMap((suggestion): SuggestedHere[] => {
    const room = walk.rooms.findIndex(({ stages }) => stages.includes(suggestion.stage));
    if (suggestion.coming !== walk.coming || room < 0 || isUnknown(suggestion, unknown)) return [];
    const piece = pieceOfSuggestion(suggestion, line);
    const isThere = walk.rooms.some(({ pieces }) => pieces.some(({ text }) => text.includes(piece.text)));
    return isThere ? [] : [{ suggestion, room, piece }];
  }).sort((a, b) => a.room - b.room);
} // prettier-ignore
