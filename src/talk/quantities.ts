// A text's quantities: each number with its unit, its place, and whether it was said as about.
import { gather, type FoundNumber } from './found.ts';
import { numbersIn, tidy } from '../core/reading/numbers.ts';
import { vague, vagueAfter } from '../core/reading/vague.ts';
import { joinDays } from './times-a-week.ts';
import { joinParts, joinRanges, joinShares, tenthsOfGrist } from './ranges.ts';
import { spokenTokens } from './spoken.ts';
import { carryUnits, settleUnits, shareCasks, shareUnits } from './shared-units.ts';
import type { Token } from '../core/reading/tokens.ts';
import { sayThousands } from './unsaid-thousands.ts';
import type { SaidDimension } from './units.ts';

export interface SpokenQuantity {
  /** Where it stands in the text, in UTF-16 units, its unit included. */
  readonly start: number;
  readonly end: number;
  /** One value, or the ends of a range. */
  readonly value?: number;
  readonly range?: readonly [number, number];
  readonly unit: string;
  readonly dimension: SaidDimension;
  readonly approximate: boolean;
  /** First and second number of a fall, as in "from 72 down to 60". */
  readonly fall?: 'from' | 'to';
  /** Said as degrees, and not of what: of heat, gravity or strength. */
  readonly degrees?: boolean;
}

function saidVaguely(text: string, tokens: readonly Token[], { said, end }: FoundNumber): boolean {
  for (let back = 1; back <= 4; back++) {
    const token = tokens[said.first - back];
    if (!token || token.kind === 'figure' || /^[.,;:!?]$/.test(token.text)) break;
    if (vague.has(token.text)) return true;
  }
  return tokens[said.first + 1]?.text === 'couple' || vagueAfter.test(text.slice(end, end + 24));
}

/** Every quantity of a text, in order. Takes any text. */
export function quantitiesIn(text: string): SpokenQuantity[] {
  const { tokens, numbers } = numbersIn(text, spokenTokens(text));
  const gathered = joinDays(text, joinParts(text, gather(text, tokens, numbers)));
  const found = joinShares(text, joinRanges(text, tokens, gathered));
  tenthsOfGrist(text, found);
  sayThousands(text, found);
  shareUnits(text, found);
  shareCasks(text, found);
  carryUnits(text, found);
  settleUnits(text, found);
  return found.map((each) => ({
    start: each.start,
    end: each.end,
    ...(each.around !== undefined
      ? { range: [tidy(each.value - each.around), tidy(each.value + each.around)] as const }
      : each.low === undefined
        ? { value: tidy(each.value) }
        : { range: [tidy(each.low), tidy(each.value)] as const }),
    unit: each.unit,
    dimension: each.year ? 'date' : each.dimension,
    approximate: each.around !== undefined || saidVaguely(text, tokens, each),
    ...(each.fall ? { fall: each.fall } : {}),
    ...(each.degrees ? { degrees: true } : {}),
  }));
}
