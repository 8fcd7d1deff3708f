// Talks as they are learnt from: each quantity with its evidence, its candidates, and what the key says it is.
import { candidatesOf, isFigure, reasons, type Candidate, type Label } from '../../../src/talk/candidates.ts';
import { evidenceIn, type Evidence } from '../../../src/talk/evidence.ts';
import { quantitiesIn, type SpokenQuantity } from '../../../src/talk/quantities.ts';
import { unitsBefore } from '../../../src/talk/units-before.ts';
import type { Script } from '../judge.ts';

export interface Example {
  readonly evidence: Evidence;
  readonly candidates: readonly Candidate[];
  /** Places among the candidates that are right: one, or every none of which the key gives no reason. Empty where what is right is no candidate. */
  readonly right: readonly number[];
  readonly label: Label;
}
export interface LearntTalk {
  readonly name: string;
  readonly author: string;
  readonly text: string;
  readonly quantities: readonly SpokenQuantity[];
  readonly examples: readonly Example[];
}

const known = new Set<string>(reasons.map((reason) => `-${reason}`));

/** A label of a key as the reader has it; none where it is another reason. */
const labelIn = (label: string): Label => (label.startsWith('-') ? (known.has(label) ? (label as Label) : '-other') : (label as Label)); // prettier-ignore

/** A talk whose quantities are read as they are found; those that the key does not have are none of the house's. */
export function toLearn({ name, author, text, answers }: Script): LearntTalk {
  const quantities = quantitiesIn(text);
  const evidence = evidenceIn(text, quantities);
  const before = unitsBefore(text, quantities);
  const claimed = new Set<number>();
  const examples = quantities.map((quantity, i): Example => {
    const at = answers.findIndex(({ at, text: said }, k) => !claimed.has(k) && quantity.start < at + said.length && quantity.end > at); // prettier-ignore
    if (at >= 0) claimed.add(at);
    const label = answers[at]?.label ?? '-';
    const candidates = candidatesOf(quantity, before[i]!);
    const isRight = (each: Label) => (label.startsWith('-') && !known.has(label) ? !isFigure(each) : each === label); // prettier-ignore
    const is = labelIn(label);
    return { evidence: evidence[i]!, candidates, label: is, right: candidates.flatMap((each, k) => (isRight(each.label) ? [k] : [])) }; // prettier-ignore
  });
  return { name, author, text, quantities, examples };
}
