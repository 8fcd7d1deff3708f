// The sentences of a talk that no longer hold once the house has changed, each with the new sentence in the guide's own manner.
import { isRefusal } from '../core/refusal.ts';
import { talkFigures, type TalkFigureId } from '../talk/figures.ts';
import { labelOf, numberOf } from '../talk/labels.ts';
import { CERTAIN } from '../talk/match.ts';
import { quantitiesIn, type SpokenQuantity } from '../talk/quantities.ts';
import type { ReadQuantity } from '../talk/script.ts';
import { withWordsChanged, withArticle, type TextChange } from './changes.ts';
import { hedgeAround } from './hedges.ts';
import { whyMissed } from './holds.ts';
import { mannerOfSaid, type Manner } from './manner.ts';
import { sayAnew, type Anew } from './say-anew.ts';
import { sentencesOf, type Sentence } from './sentences.ts';

/** A quantity of a talk that is taken for a figure of the house. */
export interface KeptQuantity {
  /** Its place in the talk, in UTF-16 units, and the words that stand there, its unit among them. */
  readonly at: number;
  readonly words: string;
  readonly figure: TalkFigureId;
  /** What it stood for, in the figure's own unit: the house's figure when it was taken, or what was said. */
  readonly value: number;
  /** How likely it is that figure, 0 to 1; 1 where the reader of the page settled it. */
  readonly chance: number;
}
/** What a house has of a figure, in the figure's own unit. */
export interface FigureNow {
  readonly value: number;
  readonly isKnown: boolean;
  /** True when it is only computed from something that is not known: it speaks against no sentence. */
  readonly isEstimate?: boolean;
}
/** What a figure is in the house now; nothing for one that no house gives. */
export type HouseNow = (figure: TalkFigureId) => FigureNow | undefined;

export interface StaleSentence extends Sentence {
  readonly stood: string;
  /** The new sentence, whole. */
  readonly anew: string;
  readonly why: string;
  readonly changes: readonly TextChange[];
}
export interface ToldStale {
  readonly kept: KeptQuantity;
  readonly why: string;
}
/** A figure that the house has not of its own, as a sentence says it: the house may take it. */
export interface OfferedFigure {
  readonly figure: TalkFigureId;
  /** What is said, in the figure’s own unit. */
  readonly says: number;
  readonly sentence: string;
  /** What the house reckons, where it has an estimate. */
  readonly estimate?: number;
}
export interface Stale {
  readonly sentences: readonly StaleSentence[];
  /** Figures for which nothing is proposed: they cannot be said anew, or the house does not know them. */
  readonly told: readonly ToldStale[];
  /** Figures that the house has not of its own, the first telling of each. */
  readonly offered: readonly OfferedFigure[];
}

/** The quantities that the reader of talks is sure of, as kept ones; `houseThen` gives what the house had when the talk was read. */
export function keptOf(quantities: readonly ReadQuantity[], houseThen: HouseNow = () => undefined): KeptQuantity[] {
  return quantities.flatMap(({ start, text, figure, inFigure, confidence }) => {
    if (!figure || !inFigure) return [];
    const [low = 0, high = low] = inFigure;
    const then = houseThen(figure);
    return [{ at: start, words: text, figure, value: then?.isKnown && !then.isEstimate ? then.value : (low + high) / 2, chance: confidence }];
  });
} // prettier-ignore

/** A quantity with its hedge, in its place. */
export interface HedgedQuantity extends TextChange {
  readonly kept: KeptQuantity;
  readonly manner: Manner;
}

/** A kept quantity with the hedge about it, where its words still stand; nothing where they do not. */
export function withItsHedge(text: string, kept: KeptQuantity): HedgedQuantity | undefined {
  const { at, words, value, figure } = kept;
  const end = at + words.length;
  if (text.slice(at, end) !== words) return undefined;
  const { kind, unit } = talkFigures[figure];
  const hedge = hedgeAround(text, at, end, kind === 'time' || kind === 'temperature');
  const stood = text.slice(at - hedge.before, end + hedge.after);
  const manner = mannerOfSaid(stood, value, unit);
  return manner && { kept, manner, at: at - hedge.before, stood, anew: stood };
}

const LITTLE = 0.005; // part of a figure by which it may change before words that cannot be said anew are told
const SAME = 0.03; // part by which one telling of a figure may differ from another and still be the same
const second =
  /(?:\b(?:that(?:['’]s| is)|which is|or|i\.e\.|in other words|call it|namely)\b[^.;]{0,24}|[(–—,]\s*)$/i;

/** What a quantity says, by itself, in the unit of a figure; nothing where it measures something else. */
function saidIn(words: string, value: number, figure: TalkFigureId): Manner | undefined {
  const manner = mannerOfSaid(words, value, talkFigures[figure].unit);
  return manner && manner.meant.apart < SAME ? manner : undefined;
}

/** Whether a quantity in the same sentence tells the same figure once more: in another unit of it, or behind words such as "that is". */
function tellsAgain(text: string, each: SpokenQuantity, of: HedgedQuantity): boolean {
  const { dimension, range, unit, start, end } = each;
  const takes = talkFigures[of.kept.figure].takes;
  if (range || dimension === 'bare' || !takes.includes(dimension) || !/[a-z°%]/i.test(unit)) return false;
  const words = text.slice(start, end);
  const said = of.manner.meant.toFigure(of.manner.value);
  const alike = saidIn(words, said, of.kept.figure);
  return (
    alike !== undefined && (alike.meant.unit !== of.manner.meant.unit || second.test(text.slice(0, start)))
  );
}

/** The second tellings of a stale figure in its sentence, as quantities that stand for it. */
function againIn(
  text: string,
  { at, end }: Sentence,
  of: HedgedQuantity,
  kept: readonly KeptQuantity[],
): HedgedQuantity[] {
  const sentence = text.slice(at, end);
  return quantitiesIn(sentence).flatMap((each) => {
    const place = at + each.start;
    const isOwn = kept.some((other) => place < other.at + other.words.length && at + each.end > other.at);
    if (isOwn || !tellsAgain(sentence, each, of)) return [];
    const whole = withItsHedge(text, { ...of.kept, at: place, words: sentence.slice(each.start, each.end) });
    return whole ? [whole] : [];
  });
}

function anewOf({ stood, kept }: HedgedQuantity, now: number): Anew | undefined {
  const anew = sayAnew(stood, kept.value, now, { figureUnit: talkFigures[kept.figure].unit });
  return isRefusal(anew) || anew.words === stood ? undefined : anew;
}

const overlap = (a: TextChange, b: TextChange) =>
  a.at < b.at + b.stood.length && b.at < a.at + a.stood.length;

/** Why nothing is proposed for a kept quantity whose manner is not known; nothing where there is nothing to propose. */
function whyNot(
  text: string,
  { at, words, value, figure }: KeptQuantity,
  { value: now }: FigureNow,
): string | undefined {
  if (text.slice(at, at + words.length) !== words) return `“${words}” no longer stands there.`;
  const isChanged = Math.abs(now - value) > LITTLE * Math.abs(value);
  return isChanged
    ? `the house has ${numberOf(figure, now)}; “${words}” has to be put right by hand.`
    : undefined;
}

/** Why a figure no longer holds, in a few words. */
function reason(
  { kept: { figure } }: HedgedQuantity,
  now: FigureNow,
  how: string,
  { changes }: Anew,
): string {
  return `${[`${labelOf(figure)}: the house has ${numberOf(figure, now.value)}, and it is said ${how}`, ...changes].join('; ')}.`;
}

/** What a sentence says of a figure that the house has not of its own; nothing where an estimate of it agrees. */
function offeredBy({ kept: { figure }, manner }: HedgedQuantity, now: FigureNow, sentence: string): OfferedFigure | undefined {
  if (now.isKnown && whyMissed(manner, now.value) === undefined) return undefined;
  const says = manner.meant.toFigure(manner.value);
  return { figure, says, sentence, ...(now.isKnown ? { estimate: now.value } : {}) };
} // prettier-ignore

/**
 * The sentences of a talk that no longer hold. Quantities that are not sure to be their figure are left alone; words that
 * cannot be said anew are told and nothing is proposed for them; of figures that the house has not of its own, what is
 * said is offered to the house.
 */
export function staleIn(text: string, kept: readonly KeptQuantity[], house: HouseNow): Stale {
  const sure = kept.filter(({ chance }) => chance >= CERTAIN).toSorted((a, b) => a.at - b.at);
  const told: ToldStale[] = [];
  const offered = new Map<TalkFigureId, OfferedFigure>();
  const sentences = sentencesOf(text).flatMap((sentence): StaleSentence[] => {
    const why: string[] = [];
    const changes: TextChange[] = [];
    const put = (change: TextChange) => {
      if (!changes.some((other) => overlap(other, change))) changes.push(change);
    };
    for (const each of sure.filter(({ at }) => at >= sentence.at && at < sentence.end)) {
      const now = house(each.figure);
      if (!now) continue;
      const whole = withItsHedge(text, each);
      if (!now.isKnown || now.isEstimate) {
        const offer = whole && offeredBy(whole, now, text.slice(sentence.at, sentence.end));
        if (offer && !offered.has(each.figure)) offered.set(each.figure, offer);
        if (!whole && !now.isKnown)
          told.push({ kept: each, why: `${labelOf(each.figure)}: the house does not know it.` });
        continue;
      }
      if (!whole) {
        const why = whyNot(text, each, now);
        if (why) told.push({ kept: each, why: `${labelOf(each.figure)}: ${why}` });
        continue;
      }
      const how = whyMissed(whole.manner, now.value);
      const anew = how && anewOf(whole, now.value);
      if (!anew) continue;
      why.push(reason(whole, now, how, anew));
      put(withArticle(text, { at: whole.at, stood: whole.stood, anew: anew.words }));
      for (const again of againIn(text, sentence, whole, kept)) {
        const words = anewOf(again, now.value)?.words;
        if (words) put(withArticle(text, { at: again.at, stood: again.stood, anew: words }));
      }
    }
    if (changes.length === 0) return [];
    const stood = text.slice(sentence.at, sentence.end);
    const inOrder = changes.toSorted((a, b) => a.at - b.at);
    return [{ ...sentence, stood, anew: withWordsChanged(stood, inOrder, sentence.at), why: why.join(' '), changes: inOrder }]; // prettier-ignore
  });
  return { sentences, told, offered: [...offered.values()] };
}
