// A walk told to those who come: every sentence that is said otherwise, and the walk with those that are accepted.
import { acceptStale } from './accept.ts';
import type { SaidIn } from './audience-kinds.ts';
import { toldTo } from './audiences.ts';
import type { PiecePlace } from './change.ts';
import { pieceAt, withPiece } from './change.ts';
import { withWordsChanged, type TextChange } from './changes.ts';
import { sentencesOf, type Sentence } from './sentences.ts';
import type { HouseNow, KeptQuantity } from './stale.ts';
import type { Walk } from './walk.ts';

/** A sentence of a piece, as it stood and as it is told. */
export interface ToldSentence extends Sentence {
  readonly stood: string;
  readonly anew: string;
  readonly changes: readonly TextChange[];
}
export interface ToldHere extends ToldSentence {
  /** The piece that it stands in. */
  readonly of: PiecePlace;
}

/** The sentences of a text that are said otherwise to an audience; with a house, each new one is true of it. */
export function toldSentences(text: string, kept: readonly KeptQuantity[], name: SaidIn, house?: HouseNow): ToldSentence[] {
  const all = toldTo(text, kept, name, house);
  return sentencesOf(text).flatMap((sentence) => {
    const changes = all.filter(({ at }) => at >= sentence.at && at < sentence.end);
    if (changes.length === 0) return [];
    const stood = text.slice(sentence.at, sentence.end);
    return [{ ...sentence, stood, anew: withWordsChanged(stood, changes, sentence.at), changes }];
  });
} // prettier-ignore

const sure = (walk: Walk, at: PiecePlace): readonly KeptQuantity[] =>
  pieceAt(walk, at)!.figures.map((each) => ({ ...each, chance: 1 }));

/** Every sentence of a walk that is said otherwise to an audience, in order; with a house, each new one is true of it. */
export const toldWalk = (walk: Walk, name: SaidIn, house?: HouseNow): ToldHere[] =>
  walk.rooms.flatMap(({ pieces }, room) =>
    pieces.flatMap(({ text }, piece) => {
      const of = { room, piece };
      return toldSentences(text, sure(walk, of), name, house).map((told) => ({ ...told, of }));
    }),
  );

/** The walk with sentences accepted; its figures stand for the same values as before. */
export function withSentencesTold(walk: Walk, accepted: readonly ToldHere[]): Walk {
  const places = new Map(accepted.map(({ of }) => [`${of.room} ${of.piece}`, of]));
  return [...places.values()].reduce((now, of) => {
    const { text } = pieceAt(now, of)!;
    const here = accepted.filter((each) => each.of.room === of.room && each.of.piece === of.piece);
    const after = acceptStale(text, sure(now, of), here, () => undefined);
    const figures = after.kept
      .filter(({ at, words }) => words !== '' && after.text.startsWith(words, at))
      .map(({ chance: _, ...each }) => each);
    return withPiece(now, of, { text: after.text, figures });
  }, walk);
}
