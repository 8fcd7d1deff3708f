// A question that asks two things at once, in its parts: “what yeast, how much of it, and at what temperature?”
import { flowIn } from './flows.ts';
import { quantitiesAsked } from './quantities.ts';
import { plainQuestion } from './words.ts';

const ASKS =
  'how|what|which|why|where|when|who|is|are|do|does|did|can|could|will|would|should|at what|in what|for how|has|have';
const CUT = new RegExp(
  `(?<=[?!.;])\\s+|,?\\s+(?:and|or|plus|but|also|&|/)\\s+(?:also\\s+|then\\s+)?(?=(?:${ASKS})\\b)|,\\s*(?=(?:how|what|which|why|where|when|who|at what|is it|are they|is that|do you|does it|can i|can you)\\b)`,
  'i',
);
const BEGINS = new RegExp(
  `^(?:(?:and|so|but|ok|or|also|please|sorry|hi|hello|well)[ ,]+)*(?:${ASKS}|whats|hows|wheres|isnt|arent|dont|doesnt)\\b`,
  'i',
);
const LEANS = /\b(?:it|its|that|this|they|them|their|those|these|one|ones|he|him|there)\b/i;
const BARE = 2; // words: so short a part says no thing at all
const SETTING = 6; // words at most of a part that only tells a number for all: “40 per cent.”, “35 ml measure if that matters”
const SHORT = 5; // words: so short a part says its thing in the part before

const withoutAsking = (text: string) =>
  text.replace(
    /^(?:and |so )*(?:how (?:much|many|long|hot|strong|big|old)|how|what|which|why|where|when|who)\b(?: (?:is|are|do|does|did|can|will))?\s*/i,
    '',
  );

export interface QuestionPart {
  /** The ways to take it, the likelier first: with the part before it, where it may lean on that. */
  readonly ways: readonly string[];
}

/** The parts that ask; none where there is but one. */
export function questionParts(question: string): readonly QuestionPart[] {
  const pieces = question.split(CUT).map((each) => each.trim()).filter((each) => plainQuestion(each) !== '');
  const isAsking = (each: string) => BEGINS.test(each) || each.endsWith('?');
  const asking = pieces.filter(isAsking);
  if (asking.length < 2) return [];
  const last = pieces.at(-1)!;
  const setting = !isAsking(last) && plainQuestion(last).split(' ').length <= SETTING && quantitiesAsked(last).length > 0 ? last : undefined;
  const parts = asking.map((text, i): QuestionPart => {
    const before = asking[i - 1];
    const after = asking[i + 1];
    // “how long and how hot is the mash”: what is so short speaks of what comes behind.
    const told = pieces[pieces.indexOf(text) - 1];
    if (before === undefined && told !== undefined && LEANS.test(text)) return { ways: [`${text.replace(/[?!.]+$/, '')} ${told}`, text] };
    if (before === undefined) return { ways: after !== undefined && plainQuestion(text).split(' ').length <= BARE ? [`${text} ${withoutAsking(after)}`] : [text] };
    const whole = `${text.replace(/[?!.]+$/, '')} ${withoutAsking(before)}`;
    // “… and how much goes in?”: of what was spoken of just before.
    const [topic, own] = [flowIn(before)?.flow, flowIn(text)?.flow];
    const ofTopic = topic && (!own || own === topic) && (LEANS.test(text) || plainQuestion(text).split(' ').length <= SHORT) ? [`${text.replace(/[?!.]+$/, '').replace(LEANS, '')} ${topic.says.exec(before)![0]}`] : [];
    if (LEANS.test(text)) return { ways: [...ofTopic, whole] };
    return { ways: plainQuestion(text).split(' ').length <= SHORT ? [...ofTopic, text, whole] : [text] };
  });
  return setting === undefined ? parts : parts.map(({ ways }) => ({ ways: ways.flatMap((way) => [`${way.replace(/[?!.]+$/, '')} ${setting}`, way]) }));
} // prettier-ignore
