// A guide's own talk read: every quantity in it, and which figure of the house each is likely to be.
import type { Reason } from './candidates.ts';
import { talkFigures, type TalkFigureId, type TalkKind } from './figures.ts';
import { learnt } from './learnt-model.ts';
import { isLikened } from './likened.ts';
import { CERTAIN, matchFigures, type Likely, type Matched, type Model } from './match.ts';
import { quantitiesIn, type SpokenQuantity } from './quantities.ts';
import type { SaidDimension } from './units.ts';

export interface ReadQuantity {
  /** Place in the text, in UTF-16 units. */
  readonly start: number;
  readonly end: number;
  readonly text: string;
  /** As said: one value, or a range. */
  readonly value?: number;
  readonly range?: readonly [number, number];
  readonly unit: string;
  /** True where no unit, or only degrees, was said. */
  readonly isBare: boolean;
  readonly kind: TalkKind;
  /** The figure proposed, and the value or range in that figure's own unit. */
  readonly figure?: TalkFigureId;
  readonly inFigure?: readonly number[];
  readonly runnersUp: readonly TalkFigureId[];
  /** 0 to 1: how likely the proposal is right; where nothing is proposed, the likeliest figure. */
  readonly confidence: number;
  /** All that it may be, the likeliest first; no figure stands for none of the house's. */
  readonly likely: readonly Likely[];
  /** What it is likeliest by its own words alone: another telling of a figure may have spoken against it. */
  readonly byItself?: Likely;
  /** Why it is none of the house's figures, if it is none. */
  readonly because: Reason;
  /** Said as about, nearly, or so. */
  readonly approximate: boolean;
}
export interface ReadScript {
  readonly quantities: readonly ReadQuantity[];
  /** How many quantities stand behind those that were read. */
  readonly left: number;
}

const MOST = 500; // quantities that are read; a tour has some 200
const ASKED = 0.5; // how sure a match can be at most of what may only liken something: below it is asked
const NEAR = 4; // figures that are named beside the proposal

const kinds: Partial<Record<SaidDimension, TalkKind>> = { percent: 'percentage', bare: 'number', share: 'number', times: 'count', mashes: 'count', washbacks: 'count', stills: 'count', casks: 'count', bottles: 'count', people: 'count' }; // prettier-ignore

const thingsAfter =
  /^\s+(?:of\s+(?:you|them|us|those|these)\b|(?:[a-z]+\s)?(?!(?:is|was|this|has|us|its|as|does|across|years)\b)[a-z]{2,}s\b)/i;

function kindOf(
  text: string,
  { dimension, end, value }: SpokenQuantity,
  { kind, likely }: Matched,
): TalkKind {
  const [best] = likely;
  if (best?.figure && best.chance >= CERTAIN) return talkFigures[best.figure].kind;
  if (dimension === 'percent' && kind && best?.figure) return kind;
  if (dimension === 'bare' && Number.isInteger(value) && thingsAfter.test(text.slice(end, end + 40)))
    return 'count';
  return kinds[dimension] ?? (dimension as TalkKind);
}

/** The unit as the handbook prints it; a bare number takes that of its figure. */
function unitOf(
  { dimension, unit, degrees }: SpokenQuantity,
  kind: TalkKind,
  proposed: Likely | undefined,
): string {
  if (kind === 'alcohol' && unit === 'L') return 'L pure alcohol';
  if (kind === 'strength' && (unit === '%' || degrees)) return '% vol';
  if (kind === 'gravity' && degrees) return '° gravity';
  if (degrees) return proposed?.unit ?? unit;
  if (dimension !== 'bare' || !proposed?.figure) return unit;
  const own = talkFigures[proposed.figure].unit;
  return own === 'gravity' ? unit : proposed.unit || own;
}

function read(text: string, quantity: SpokenQuantity, matched: Matched): ReadQuantity {
  const { likely, because, byItself } = matched;
  const kind = kindOf(text, quantity, matched);
  const figures = likely.flatMap((each) => (each.figure ? [each] : []));
  const [best] = figures;
  const { start, end, value, range, approximate, dimension, degrees } = quantity;
  const chance = Math.min(best?.chance ?? 0, isLikened(text, start, end, dimension) ? ASKED : 1);
  const proposed = chance >= CERTAIN ? best : undefined;
  return {
    start,
    end,
    text: text.slice(start, end),
    ...(range ? { range } : { value: value! }),
    unit: unitOf(quantity, kind, proposed),
    isBare: dimension === 'bare' || dimension === 'date' || degrees === true,
    kind,
    ...(proposed ? { figure: proposed.figure!, inFigure: proposed.inFigure } : {}),
    runnersUp: figures.slice(proposed ? 1 : 0, NEAR).map(({ figure }) => figure!),
    confidence: Number(chance.toFixed(3)),
    likely,
    ...(byItself ? { byItself } : {}),
    because,
    approximate,
  };
}

/**
 * Reads a talk. Takes any text, plain text only, and gives the same for the same; places index the text as it
 * is. A figure is only ever proposed: the guide confirms it. `model` is what the reader has learnt.
 */
export function readScript(text: string, model: Model = learnt()): ReadScript {
  const all = quantitiesIn(text);
  const quantities = all.slice(0, MOST);
  const matched = matchFigures(text, quantities, model);
  return {
    quantities: quantities.map((quantity, i) => read(text, quantity, matched[i]!)),
    left: all.length - quantities.length,
  };
}
