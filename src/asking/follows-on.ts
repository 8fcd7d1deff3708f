// A question that only asks for what was told before in another unit: “what’s that in gallons?”
import { quantitiesAsked } from './quantities.ts';
import { plainQuestion } from './words.ts';

const FOLLOWS =
  /^(?:and |so |but |ok |what(?: is| s)? |whats |how (?:much|many) (?:is|s) |can you (?:say|tell me|give me) |tell me )*(?:that|this|it|those|the same)?(?: again)?\s*(?:in|as|into|to)\s+/;

/** True for a question that only asks for what was told before in another unit. */
export const followsOn = (question: string): boolean =>
  FOLLOWS.test(plainQuestion(question)) && quantitiesAsked(question).length === 0;
