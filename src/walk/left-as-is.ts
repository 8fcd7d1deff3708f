// Sentences that a guide leaves as they are though the house has other figures: each with those figures, so that it is asked again once they change.
import type { TalkFigureId } from '../talk/figures.ts';
import type { HouseNow, StaleSentence } from './stale.ts';
import { mostInWalk, type LeftAsIs, type SaidHere, type Walk } from './walk.ts';

const SAME = 1e-6; // part by which a figure of the house may differ and still be the one that it was; far below any rounding

/** The words by which a sentence is known again; of a very long one its beginning. */
const wordsOf = (stood: string): string =>
  stood.trim().slice(0, mostInWalk.leftWords).replace(/\p{Cs}$/u, ''); // prettier-ignore

/** A sentence that no longer holds, with what the house has of the figures that are wrong in it. */
export function leftAsIs({ stood, changes }: StaleSentence, figures: readonly SaidHere[], house: HouseNow): LeftAsIs {
  const isWrong = (place: number) => changes.some(({ at, stood }) => place >= at && place < at + stood.length);
  const wrong = new Set<TalkFigureId>(figures.filter(({ at }) => isWrong(at)).map(({ figure }) => figure));
  return {
    words: wordsOf(stood),
    house: [...wrong].flatMap((figure) => {
      const now = house(figure);
      return now ? [{ figure, value: now.value }] : [];
    }).slice(0, mostInWalk.leftFigures),
  };
} // prettier-ignore

const isSame = (one: LeftAsIs, other: LeftAsIs): boolean =>
  one.words === other.words &&
  one.house.length === other.house.length &&
  one.house.every(({ figure, value }) =>
    other.house.some((each) => each.figure === figure && Math.abs(each.value - value) <= SAME * Math.abs(value)),
  ); // prettier-ignore

/** True when a sentence was left as it is, and the house has the same figures now. */
export const isLeft = (walk: Walk, sentence: LeftAsIs): boolean =>
  walk.left?.some((each) => isSame(each, sentence)) ?? false;

/** The walk with a sentence left as it is, in place of what was left of those words before; the oldest give way where there are too many. */
export function withLeft(walk: Walk, sentence: LeftAsIs): Walk {
  const others = (walk.left ?? []).filter(({ words }) => words !== sentence.words);
  return { ...walk, left: [...others, sentence].slice(-mostInWalk.left) };
}

/** The walk with a sentence that is to be asked again. */
export function withoutLeft({ left = [], ...walk }: Walk, sentence: LeftAsIs): Walk {
  const others = left.filter(({ words }) => words !== sentence.words);
  return others.length > 0 ? { ...walk, left: others } : walk;
}
