// A new guide's file, from a walk: what is said in each room in short, and its figures and questions, each told once.
import type { FigureId } from '../core/figures/index.ts';
import type { Stage } from '../house/figures.ts';
import { sentencesOf } from './sentences.ts';
import { figuresOfCard, isPieceTold, type Room, type WalkFor, type Walk } from './walk.ts';

const MOST_SAID = 6; // sentences of a room: more is the talk itself

/** What is said in a room, in short: the first sentence of each of its pieces in a walk of this length, to those who come; `more` counts those left out. */
export function saidInShort({ pieces }: Room, of: WalkFor): { readonly says: readonly string[]; readonly more: number } {
  const firsts = pieces
    .filter((piece) => isPieceTold(piece, of))
    .flatMap(({ text }) => sentencesOf(text).slice(0, 1).map(({ at, end }) => text.slice(at, end)));
  return { says: firsts.slice(0, MOST_SAID), more: Math.max(0, firsts.length - MOST_SAID) };
} // prettier-ignore

/** What is said in a room in a walk of this length, to those who come, piece by piece. */
export const saidWhole = ({ pieces }: Room, of: WalkFor): readonly string[] =>
  pieces.filter((piece) => isPieceTold(piece, of)).map(({ text }) => text);

/** The figures of each room's card, in order; one that several rooms have is told in the first of them. */
export function figuresByRoom({ rooms }: Walk): readonly (readonly FigureId[])[] {
  const told = new Set<FigureId>();
  return rooms.map((room) => {
    const own = figuresOfCard(room).filter((id) => !told.has(id));
    for (const id of own) told.add(id);
    return own;
  });
}

export interface AskedOf {
  readonly id: string;
  readonly stage: Stage;
}
/** The questions of each room: those that its card has, then the others of its stages; each in one room, that of its card before any. */
export function questionsByRoom<Q extends AskedOf>({ rooms }: Walk, questions: readonly Q[]): readonly (readonly Q[])[] {
  const roomOf = new Map<string, number>();
  for (const { id, stage } of questions) {
    const ticked = rooms.findIndex(({ asks }) => asks.includes(id));
    roomOf.set(id, ticked < 0 ? rooms.findIndex(({ stages }) => stages.includes(stage)) : ticked);
  }
  return rooms.map((room, i) => {
    const own = questions.filter(({ id }) => roomOf.get(id) === i);
    const isTicked = ({ id }: Q) => room.asks.includes(id);
    return [...own.filter(isTicked), ...own.filter((question) => !isTicked(question))];
  });
} // prettier-ignore
