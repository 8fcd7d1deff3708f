// Cards of a walk that were printed: kept one a room, and what stands otherwise on each since the house changed.
import { headOf, type FigureId } from '../core/figures/index.ts';
import { mostInWalk, type PrintedCard, type PrintedFigure, type Walk } from './walk.ts';

/** What a card printed now would say of a figure. */
export interface SaidNow {
  readonly value: number;
  readonly says: string;
  readonly mark: string | undefined;
}
/** What a card says of a figure of the house now, or of another value of it in the same way; nothing for one that is not the house's own. */
export type SaysOnCard = (figure: FigureId, told?: number) => SaidNow | undefined;

/** A figure that a printed card has otherwise than the house; `is` is nothing where the house does not know it now. */
export interface MovedOnCard {
  readonly label: string;
  readonly was: string;
  readonly is?: string;
}

const marked = ({ says, mark }: { readonly says: string; readonly mark?: string | undefined }) => says + (mark ? ` (${mark})` : ''); // prettier-ignore

/** What is said beside a figure at a card, where it was read and not reckoned. */
const MEASURED = 'as measured';
/** That a figure is measured now, or was, makes no card stale on which it is the same. */
const weighed = (mark: string | undefined) => (mark === MEASURED ? undefined : mark);

/**
 * The figures that stand otherwise on paper than a card printed now would have them. Both values are said in the same way
 * first, so that units chosen since then move nothing, nor does a change too small to be seen on a card; and where the words
 * on paper are those of a card printed now, nothing has moved.
 */
export const movedOn = (printed: readonly PrintedFigure[], says: SaysOnCard): readonly MovedOnCard[] =>
  printed.flatMap((then): readonly MovedOnCard[] => {
    const { figure } = then;
    const now = says(figure);
    const isSaid = now && (then.says === now.says || says(figure, then.value)?.says === now.says);
    if (isSaid && weighed(then.mark) === weighed(now.mark)) return [];
    return [{ label: headOf(figure), was: marked(then), ...(now ? { is: marked(now) } : {}) }];
  });

/** The questions whose answers stand otherwise on paper; those that the book has no more are left out. */
export const answersMoved = ({ answers }: PrintedCard, answer: (ask: string) => string | undefined): readonly string[] =>
  answers.filter(({ ask, says }) => (answer(ask) ?? says) !== says).map(({ ask }) => ask); // prettier-ignore

/** The walk with cards printed, each in the place of the last of its room; the oldest give way where there are too many. */
export function withPrinted(walk: Walk, cards: readonly PrintedCard[]): Walk {
  const all = new Map((walk.printed ?? []).map((card) => [card.room, card]));
  for (const card of cards) {
    all.delete(card.room);
    all.set(card.room, card);
  }
  return { ...walk, printed: [...all.values()].slice(-mostInWalk.printed) };
}

/** The walk without the printed card of a room: it was thrown away. */
export function withoutPrinted({ printed = [], ...walk }: Walk, room: string): Walk {
  const others = printed.filter((card) => card.room !== room);
  return others.length > 0 ? { ...walk, printed: others } : walk;
}
