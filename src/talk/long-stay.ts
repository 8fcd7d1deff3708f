// A stay in the washback that was not taken for the hours of the fermentation: it may tell otherwise what the hours of the fermentation tell.
const ofStay =
  /\b(?:stays?|stands?|sits?|lies|lives|works?|ferments?|fermenting|kept|left|leave|takes?|gets?|has|give)\b/i;
const ofFermentation = /\b(?:ferment\w*|wash[\s-]?backs?)\b/i;
const ofOther = /\b(?:clean|empty|rest|holiday|shut|silent|closed|barley|steep|malt|peat|ages?|once|every|they|their|others?|used to|would)\b/i; // prettier-ignore
const inWashback = /^\s+(?:in|of)\s+(?:(?:the|a|our|wooden|its)\s+)*(?:wash[\s-]?backs?|ferment\w*)\b/i; // “163 hours in the washback”
const LONGEST = 10 * 24; // hours; nobody lets a wash stand longer
const SHORTEST = 36;

/** Whether a time of so many hours, which stands at a place of a text, is how long a wash stays where it ferments, by the words of its own sentence. */
export function isLongStay(text: string, start: number, end: number, hours: number): boolean {
  if (hours < SHORTEST || hours > LONGEST || !/\b(?:hours?|hrs?|h|days?|nights?|weeks?)$/i.test(text.slice(start, end))) return false;
  const before = text.slice(0, start).split(/[.?!;]\s|\n/).at(-1)!;
  const sentence = before + text.slice(start).split(/[.?!;]\s|\n/, 1)[0]!;
  return (ofStay.test(before) || inWashback.test(text.slice(end))) && ofFermentation.test(sentence) && !ofOther.test(sentence);
} // prettier-ignore
