// Whether a number of a question is so much more or less, as in “two more mashes”, and so is never taken for the whole.
import type { AskedQuantity } from './quantities.ts';

/** True for a number that is said to be so much more or less, and so is no whole. */
export function isRelative(text: string, { start, end }: AskedQuantity): boolean {
  return (
    /\b(?:another|an extra|extra|an additional|a further)\s+$/i.test(text.slice(0, start)) ||
    /^\s*(?:of )?(?:\w+ )?(?:more|extra|additional|further|fewer|less|longer|shorter|higher|lower)\b(?! than)/i.test(
      text.slice(end),
    )
  );
}
