// A guide's own script read: every quantity in it, and which figure of the house each is likely to be.
import { talkFigures, type FigureId, type TalkKind } from './figures.ts';
import { matchFigures, valuesFor, type Matched } from './match.ts';
import { quantitiesIn, type Quantity } from './quantities.ts';
import type { Dimension } from './units.ts';

export interface ReadQuantity {
  /** Place in the text, in UTF-16 units. */
  readonly start: number;
  readonly end: number;
  readonly text: string;
  /** As said: one value, or a range. */
  readonly value?: number;
  readonly range?: readonly [number, number];
  readonly unit: string;
  readonly kind: TalkKind;
  /** The figure proposed, and the value or range in that figure's own unit. */
  readonly figure?: FigureId;
  readonly inFigure?: readonly number[];
  readonly runnersUp: readonly FigureId[];
  /** 0 to 1, how sure the proposal is; 0 where there is none. */
  readonly confidence: number;
  /** Said as about, nearly, or so. */
  readonly approximate: boolean;
}
export interface ReadScript {
  readonly quantities: readonly ReadQuantity[];
  /** How many quantities stand behind those that were read. */
  readonly left: number;
}

const MOST = 500; // quantities that are read; a tour has some 200

const kinds: Partial<Record<Dimension, TalkKind>> = { percent: 'percentage', bare: 'number', share: 'number', times: 'count', mashes: 'count', washbacks: 'count', stills: 'count', casks: 'count', bottles: 'count', people: 'count' }; // prettier-ignore

const thingsAfter =
  /^\s+(?:of\s+(?:you|them|us|those|these)\b|(?:[a-z]+\s)?(?!(?:is|was|this|has|us|its|as|does|across|years)\b)[a-z]{2,}s\b)/i;

function kindOf(text: string, { dimension, end, value }: Quantity, { kind, certain }: Matched): TalkKind {
  if (kind && (certain || dimension === 'percent')) return kind;
  if (dimension === 'bare' && Number.isInteger(value) && thingsAfter.test(text.slice(end, end + 40)))
    return 'count';
  return kinds[dimension] ?? (dimension as TalkKind);
}

/** The unit as the handbook prints it; a bare number takes that of its figure. */
function unitOf(
  { dimension, unit }: Quantity,
  kind: TalkKind,
  matched: Matched,
  own: string | undefined,
): string {
  if (kind === 'alcohol' && unit === 'L') return 'L pure alcohol';
  if (kind === 'strength' && unit === '%') return '% vol';
  if (dimension !== 'bare' || own === undefined || own === 'gravity') return unit;
  return matched.unit || own;
}

function read(text: string, quantity: Quantity, matched: Matched): ReadQuantity {
  const { proposals, certain } = matched;
  const kind = kindOf(text, quantity, matched);
  const [best, ...others] = proposals.map(({ figure }) => figure);
  const figure = certain ? best : undefined;
  const unit = unitOf(quantity, kind, matched, figure && talkFigures[figure].unit);
  const { start, end, value, range, approximate } = quantity;
  return {
    start,
    end,
    text: text.slice(start, end),
    ...(range ? { range } : { value: value! }),
    unit,
    kind,
    ...(figure ? { figure, inFigure: valuesFor(quantity, figure, matched.unit) } : {}),
    runnersUp: figure ? others : proposals.map((each) => each.figure),
    confidence: confidenceOf(matched),
    approximate,
  };
}

/** From how high the best score is, and how far it leads. */
function confidenceOf({ proposals: [best, next], certain }: Matched): number {
  if (!certain || !best) return 0;
  const lead = best.score - Math.max(0, next?.score ?? 0);
  return Number((1 / (1 + Math.exp(-(best.score - 2.5) / 2 - (lead - 0.5)))).toFixed(3));
}

/**
 * Reads a script. Takes any text, plain text only, and gives the same for the same; places index the text as it
 * is. A figure is only ever proposed: the guide confirms it.
 */
export function readScript(text: string): ReadScript {
  const all = quantitiesIn(text);
  const quantities = all.slice(0, MOST);
  const matched = matchFigures(text, quantities);
  return {
    quantities: quantities.map((quantity, i) => read(text, quantity, matched[i]!)),
    left: all.length - quantities.length,
  };
}
