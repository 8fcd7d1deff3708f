// Years whose hundreds are not said: in seventy-four, in oh-eight.
import type { SaidNumber } from '../core/reading/numbers.ts';
import type { Token } from '../core/reading/tokens.ts';
import type { FoundNumber } from './found.ts';

const longAgo =
  /\b(?:was|were|came|went|ran|burn\w*|took|put|built|did|had|learn\w*|carried|knocked|died|left|since)\b/i;
const thatIsAll = /^\s*(?:[.,;:!?)]|$|\n|(?:and|did|no|when)\b|(?:the|it)\s+\w+)/i;

/** “Back in oh nine”, “burned down in seventy-four”: a year whose hundreds are not said. */
export function yearOf(text: string, tokens: readonly Token[], { first, next }: SaidNumber, { value, start, end }: FoundNumber): { start: number; value: number } | undefined {
  const at = tokens[first - 1]?.text === '-' ? first - 2 : first - 1;
  if (tokens[at]?.text === 'oh' && value >= 1 && value < 10 && Number.isInteger(value) && next === first + 1)
    return /^(?:in|since)$/.test(tokens[at - 1]?.text ?? '') || tokens[at - 1]?.text === ',' ? { start: tokens[at]!.start, value: 2000 + value } : undefined;
  const isIn = /^(?:in|since|year)$/.test(tokens[first - 1]?.text ?? '');
  if (!isIn || !Number.isInteger(value) || value < 50 || value > 99 || !thatIsAll.test(text.slice(end, end + 20))) return undefined;
  const [before] = text.slice(Math.max(0, start - 70), start).split(/[.!?]\s+/).slice(-1) as [string];
  return longAgo.test(before) && !/\b(?:put|go|goes|went|comes?|fill\w*|them)\s+in\s+$/i.test(before) ? { start, value: 1900 + value } : undefined;
} // prettier-ignore
