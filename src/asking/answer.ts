// Answers a question: reckons with its numbers, or finds the entry that it means, or says that it does not know.
// Sums are tried before the list of entries; what is not sure is told as not sure, with the next best. Counted in tests/asking.
import { lineOf } from '../house/line-of.ts';
import { filledFrom } from '../house/open-figures.ts';
import type { House } from '../core/line/house.ts';
import type { LedgerPace } from '../core/line/ledger.ts';
import { mixedDrink, standardDrinks } from './drink-sums.ts';
import { chain } from './chain.ts';
import { clausesOf } from './clauses.ts';
import { compared } from './compared.ts';
import { convert, ofCask, shareOf, twoScales } from './convert.ts';
import type { AskedList, AskedEntry } from './entry.ts';
import { leavesOver, passesOver } from './left-over.ts';
import { wholeQuestions } from './follow.ts';
import { intoEnglish } from './foreign.ts';
import { fillHoles, type Telling } from './holes.ts';
import { questionMatcher, type EntryMatch } from './match.ts';
import { questionParts } from './question-parts.ts';
import { passageFinder } from './passages.ts';
import { countryIn, quantitiesAsked, wantedUnit } from './quantities.ts';
import type { Numbered, Reckoned, Reckoner } from './reckoned.ts';
import { otherWash, moreWork } from './in-proportion.ts';
import { casksKept, yearsToFall, leftInCask, lossMoved } from './cask-sums.ts';
import { scaled } from './scale.ts';
import { bottlesFromSpirit, intoSizes, measuresIn, unitsOfDrink } from './bottle-sums.ts';
import { waterToLetDown, spiritsTogether, watered } from './mixing-sums.ts';
import { byMass, fromGravities, pureAlcohol } from './strength-sums.ts';
import { onTheGlass } from './hydrometer-readings.ts';
import { besideOurs, vesselIn } from './named-figures.ts';
import { weighs } from './weighs.ts';
import { attenuationOf, extractIn, gravityFromMalt } from './wort-sums.ts';
import { boils } from './boiling-points.ts';
import { calories } from './calories.ts';
import { atPrice } from './money.ts';
import { likened } from './likened.ts';
import { moreOf } from './more-of.ts';
import { oneSize } from './one-size.ts';
import { toTheAir } from './to-the-air.ts';
import { maltLasts, sieved, smokeMixed, yieldGot, yieldShort } from './malt-sums.ts';
import { heatOfWarming, litreDegrees, mashStands, theirTemperature } from './mash-sums.ts';
import {
  gasOfAlcohol,
  gasOfWash,
  heartOfCharge,
  lowWinesOf,
  roundTank,
  washbacksEnough,
} from './vessel-sums.ts';
import { whatIf } from './what-if.ts';
import { emptyCask, lossOver, lossRate, lostBetween, strengthAYear } from './wood-sums.ts';
import { plainQuestion } from './words.ts';
import { calendar, youngest } from './years.ts';
import { atYield, shareMoved } from './yields.ts';

export interface Answer extends Reckoned {
  /** The entry that was found; nothing where the answer was reckoned from the question’s own numbers. */
  readonly id?: string;
  /** The entry that may be meant, how likely that is, and others that may be, where that is not sure. */
  readonly meant?: AskedEntry;
  readonly chance?: number;
  readonly others?: readonly AskedEntry[];
  /** True where it is what the book says nearest to it, and may not be what was asked. */
  readonly isQuoted?: true;
  /** True where a sum leaves a number of the question over, and so may not be what was asked. */
  readonly isLoose?: true;
  /** What else was asked in the same breath, answered by itself. */
  readonly also?: readonly Answer[];
  /** True when it is told in the unit that was asked for. */
  readonly inUnit: boolean;
  /** The question that was answered; one that only asks for another unit is the one before it. */
  readonly question: string;
}
export interface NotKnown {
  /** Entries that come nearest, the nearest first. */
  readonly nearest: readonly AskedEntry[];
}

/**
 * When a match is told: as the answer, where it is likely enough and holds enough of the question’s words; as what may be meant,
 * from `LIKELY` on; and below that it is not known. Set by what strangers’ questions came to, see tests/asking/strangers.test.ts.
 */
const SURE = { chance: 0.65, score: 0.55 } as const;
const LIKELY = { chance: 0.12, score: 0.34 } as const;
const PLAIN = 0.2; // chance from which an entry tells a figure by itself better than the line’s proportions do
const CERTAIN = 0.95; // of its words: it is asked in these very words
const NEAREST = 3;
/** From here a passage of the book is told where nothing else is: what it holds of the question’s words, and how many of them. */
const QUOTED = { held: 0.62, words: 3 } as const;
const FEWEST_WORDS = 4; // of a part that may be meant
const LIKELY_PART = 0.35; // chance from which a part that may be meant is told beside another
const MOST_PARTS = 3; // of a question, that are answered

const reckoners: readonly Reckoner[] = [
  atPrice,
  calories,
  standardDrinks,
  mixedDrink,
  unitsOfDrink,
  boils,
  onTheGlass,
  litreDegrees,
  attenuationOf,
  extractIn,
  gravityFromMalt,
  weighs,
  vesselIn,
  chain,
  lowWinesOf,
  heartOfCharge,
  gasOfWash,
  gasOfAlcohol,
  heatOfWarming,
  mashStands,
  strengthAYear,
  maltLasts,
  yieldGot,
  lostBetween,
  lossRate,
  intoSizes,
  bottlesFromSpirit,
  watered,
  waterToLetDown,
  spiritsTogether,
  fromGravities,
  pureAlcohol,
  youngest,
  calendar,
  casksKept,
  yearsToFall,
  lossOver,
  emptyCask,
  leftInCask,
  yieldShort,
  roundTank,
  washbacksEnough,
  smokeMixed,
  theirTemperature,
  besideOurs,
  sieved,
  measuresIn,
  lossMoved,
  byMass,
  ofCask,
  twoScales,
  convert,
  shareOf,
  atYield,
  toTheAir,
  compared,
  oneSize,
  moreOf,
  likened,
  scaled,
  shareMoved,
  otherWash,
  moreWork,
  whatIf,
];

const PACES: readonly (readonly [RegExp, LedgerPace])[] = [
  [/\b(?:a|per|each|every|one|in a|this|last) year\b|\byearly\b|\bannual(?:ly)?\b|\bper annum\b/i, 'year'],
  [/\b(?:a|per|each|every|one|this) week\b|\bweekly\b/i, 'week'],
  [/\b(?:a|per|each|every|one|from a) (?:mash|batch|brew)\b/i, 'mash'],
  [/\b(?:a|per|each|every|one) tonn?e?\b/i, 'tonne'],
];
const paceIn = (text: string): LedgerPace | undefined => PACES.find(([says]) => says.test(text))?.[1];

type Wanted = ReturnType<typeof wantedUnit>;

const FOLLOWS =
  /^(?:and |so |but |ok |what(?: is| s)? |whats |how (?:much|many) (?:is|s) |can you (?:say|tell me|give me) |tell me )*(?:that|this|it|those|the same)?(?: again)?\s*(?:in|as|into|to)\s+/;

/** What people hang on what they say: it asks nothing. */
const TAIL =
  /[,.;\s–-]*\b(?:is (?:that|this|it|he|she) (?:right|true|so|correct)|are they right|true|am i right|are you sure|or what|you know|or something|please|thanks?(?: you)?)\b[\s?!.]*$/i;
/** Who says so, and what stands before a question without asking. */
const LEAD =
  /^(?:(?:so|and|but|ok|well|hang on|sorry|excuse me|hi|hello|right|now|after all that)[, ]+)*(?:(?:is it|it['’]?s|it is) (?:really )?true (?:that )?|(?:my|our|the|a|his|her) (?:[\w'’-]+ ){1,4}?(?:says?|said|reckons?|swears(?: blind)?|thinks?|told (?:me|us)|claims?|insists?|read|heard)(?: that)?\s+|in plain english,? )/i;
const withoutTail = (question: string): string => {
  const rest = question.replace(TAIL, '?').replace(LEAD, '');
  return rest.split(/\s+/).length > 2 ? rest : question;
};

/** True for a question that only asks for what was told before in another unit. */
export const followsOn = (question: string): boolean =>
  FOLLOWS.test(plainQuestion(question)) && quantitiesAsked(question).length === 0;

/** An entry as an answer. */
function tell(entry: AskedEntry, telling: Telling): Omit<Answer, 'question'> {
  const says = fillHoles(entry.says, telling);
  const sum = entry.sum === undefined ? undefined : fillHoles(entry.sum, telling);
  return {
    id: entry.id,
    says: says.text,
    ...(sum && { sum: sum.text }),
    at: entry.at,
    place: entry.place,
    rests: entry.rests,
    paths: [...new Set([...says.paths, ...(sum?.paths ?? [])])],
    inUnit: says.inUnit,
  };
}

export interface Asking {
  readonly question: string;
  readonly house: House;
  readonly telling?: Omit<Telling, 'line' | 'unit' | 'pace'>;
  /** The question that was answered before, which “what’s that in gallons?” asks again. */
  readonly before?: string | undefined;
}

/** How likely what was asked stands where the best match does: two answers from one place of the book are nearly the same. */
const chanceOfPlace = ([best, ...others]: readonly EntryMatch[]): number =>
  others.slice(0, NEAREST).reduce((sum, { entry, chance }) => sum + (entry.at === best!.entry.at && entry.at !== 'using/' ? chance / 2 : 0), best!.chance); // prettier-ignore

/** True for an answer, false where nothing was known. */
export const isAnswer = (found: Answer | NotKnown): found is Answer => !('nearest' in found);
/** An answer that is told as sure; nothing where it is not. */
const sureOf = (found: Answer | NotKnown): Answer | undefined =>
  isAnswer(found) && found.meant === undefined && !found.isQuoted && !found.isLoose ? found : undefined;

/** What the first reckoner makes of a sum that takes in all of its numbers; or else the first that knows such a sum. */
function reckonedOf(asked: Numbered): Answer | undefined {
  let loose: Answer | undefined;
  for (const reckon of reckoners) {
    const reckoned = reckon(asked);
    if (!reckoned) continue;
    const told = { ...reckoned, inUnit: asked.wanted !== undefined, question: asked.text };
    if (!leavesOver(asked, reckoned)) return told;
    loose ??= { ...told, isLoose: true };
  }
  return loose;
}

/** Makes one who answers from a list. */
export function answerer(list: AskedList): (asking: Asking) => Answer | NotKnown {
  const { match } = questionMatcher(list);
  const english = intoEnglish(list.foreign ?? {});
  const quote = passageFinder(list.passages ?? [], list.words);
  const unknown = new Set(list.entries.filter((entry) => entry.unknown).map(({ id }) => id));

  /** The answer to one question, in a unit if one is wanted. */
  function found(
    { question, house, telling: wishes = {} }: Asking,
    wanted: Wanted,
    country = countryIn(question),
  ): Answer | NotKnown {
    const line = lineOf(house);
    const telling: Telling = { ...wishes, line, unit: wanted?.unit, pace: paceIn(question) };
    const asked: Numbered = { text: question, quantities: quantitiesAsked(question, country), wanted, country, house, line, telling }; // prettier-ignore
    const isWhy = /\bwhy\b/i.test(question);
    const sum = isWhy ? undefined : reckonedOf(asked);
    if (sum && !sum.plainly && !sum.isLoose) return sum;
    const matches = match(withoutTail(question));
    const [best] = matches;
    const others = matches.flatMap(({ entry }) => (entry.unknown || entry === best?.entry ? [] : [entry]));
    const isKnown = best && best.score >= LIKELY.score && best.chance >= LIKELY.chance;
    const isCertain = isKnown && (best.score >= CERTAIN || (best.score >= SURE.score && chanceOfPlace(matches) >= SURE.chance)); // prettier-ignore
    const tellsIt = best && best.score >= SURE.score && best.chance >= PLAIN && sum?.plainly?.every((says) => best.entry.asked.some((way) => says.test(way))); // prettier-ignore
    // An entry that is asked with both things of such a sum tells that figure, and no other.
    if (sum && !tellsIt && !(sum.isLoose && isCertain)) return sum;
    if (isKnown) {
      const told = tell(best.entry, telling);
      // Numbers of the asker’s own that it leaves unsaid make no answer sure.
      const isSure = (isCertain || tellsIt) && !passesOver(asked, told);
      return {
        ...told,
        question,
        ...(!isSure && { meant: best.entry, chance: best.chance, others: others.slice(0, NEAREST - 1) }),
      };
    }
    const quoted = matches.slice(0, NEAREST + 2).some(({ entry }) => entry.unknown)
      ? undefined
      : quote(withoutTail(question));
    if (quoted && quoted.held >= QUOTED.held && quoted.words >= QUOTED.words)
      return { says: filledFrom(line, quoted.text), at: quoted.at, place: quoted.place, paths: [], question, inUnit: false, isQuoted: true }; // prettier-ignore
    return { nearest: [...(best && !best.entry.unknown ? [best.entry] : []), ...others].slice(0, NEAREST) };
  }
  const alone = (asking: Asking, whole = asking.question): Answer | NotKnown =>
    found(asking, wantedUnit(asking.question, countryIn(whole)), countryIn(whole));

  /** The answer to the first part of a rambling question that has one by itself. */
  function inClause(asking: Asking, whole: NotKnown): Answer | NotKnown {
    const asks = clausesOf(asking.question).filter(({ text, asks }) => asks && text.split(/\s+/).length > 2);
    const answers = asks.map(({ text }) => alone({ ...asking, question: text })).filter(isAnswer);
    const told = answers.find((each) => sureOf(each) ?? (each.chance ?? 0) >= LIKELY_PART / 2);
    if (told === undefined || (told.id !== undefined && unknown.has(told.id))) return whole;
    // What a part asks may not be what the whole does.
    const meant = list.entries.find(({ id }) => id === told.id);
    return { ...told, question: asking.question, ...(meant && { meant, others: told.others ?? [] }) };
  }

  /** The answer to a question, and to what else it asks in the same breath. */
  function inParts(asking: Asking): Answer | NotKnown {
    const whole = alone(asking);
    const parts = questionParts(asking.question);
    if (parts.length === 0) return isAnswer(whole) ? whole : inClause(asking, whole);
    const told = [sureOf(whole) ?? []].flat();
    for (const { ways } of parts) {
      const answers = ways.map((question) => alone({ ...asking, question }, asking.question)).filter(isAnswer);
      const likely = answers.find((each) => sureOf(each)) ?? answers.find(({ chance = 0, question }) => chance >= LIKELY_PART && question.split(/\s+/).length >= FEWEST_WORDS);
      // A sum of the whole is not a sum of its parts.
      if (likely && !(likely.id === undefined && told[0]?.question === asking.question && told[0].id === undefined) && !told.some(({ id, says }) => (id ?? says) === (likely.id ?? likely.says))) told.push(likely);
    } // prettier-ignore
    if (!told.some((each) => sureOf(each)) && (told.length < 2 || !isAnswer(whole))) return whole;
    const known = told.filter(({ id }) => id === undefined || !unknown.has(id));
    const inOrder = [...(known.length > 0 ? known : told)].sort((a, b) => Number(a.meant !== undefined) - Number(b.meant !== undefined)); // prettier-ignore
    const [first, ...rest] = inOrder.slice(0, MOST_PARTS);
    if (!first || (rest.length === 0 && isAnswer(whole) && whole.meant && parts.length > 2)) return whole; // prettier-ignore
    return { ...first, question: asking.question, ...(rest.length > 0 && { also: rest }) };
  }

  return ({ question: said, ...rest }) => {
    const question = english(said);
    const asking = { ...rest, question };
    const { before } = asking;
    const wanted = wantedUnit(question, countryIn(question));
    if (wanted && before !== undefined && followsOn(question)) {
      const again = found({ ...asking, question: before }, wanted);
      if (isAnswer(again) && again.inUnit) return again;
    }
    for (const whole of before === undefined ? [] : wholeQuestions(question, before)) {
      const again = inParts({ ...asking, question: whole });
      if (isAnswer(again) && !again.isQuoted) return again;
    }
    return inParts(asking);
  };
}
