// The answer to one question: a sum of its numbers, or the entry that it means, or what the book says nearest, or that it is not known.
import { lineOf } from '../house/line-of.ts';
import { filledFrom } from '../house/open-figures.ts';
import { passesOver } from './left-over.ts';
import { figureTeller } from './figure-asked.ts';
import { kinOf } from './kin.ts';
import { questionMatcher } from './match.ts';
import { passageFinder } from './passages.ts';
import { countryIn, quantitiesAsked, wantedUnit } from './quantities.ts';
import type { Answer, Asking, NotKnown } from './answer-given.ts';
import { bareQuestion } from './bare-question.ts';
import type { AskedList } from './entry.ts';
import type { Telling } from './holes.ts';
import { paceIn } from './pace-asked.ts';
import { reckonedOf } from './reckoners.ts';
import type { Numbered } from './reckoned.ts';
import { tellEntry } from './told-entry.ts';

/**
 * When a match is told: as the answer, where it is likely enough and holds enough of the question’s words; as what may be meant,
 * from `LIKELY` on; and below that it is not known. Set by what strangers’ questions came to, see tests/asking/strangers.test.ts.
 */
const SURE = { chance: 0.76, score: 0.4 } as const;
const TELLS = 0.55; // score from which an entry tells such a figure by itself
const LIKELY = { chance: 0.12, unknown: 0.4, score: 0.34 } as const;
const PLAIN = 0.2; // chance from which an entry tells a figure by itself better than the line’s proportions do
const CERTAIN = 0.95; // of its words: it is asked in these very words
const WHOLE = 0.999; // and in these very words alone
const NEAREST = 3;
/** From here a passage of the book is told where nothing else is: what it holds of the question’s words, and how many of them. */
const QUOTED = { held: 0.62, words: 3 } as const;

const REASONS = /\bwhy\b|\bhow come\b|what (?:happens|would happen|if)\b|is it true|reason\b/i;
const HARDLY = 0.35; // likelihood below which an entry is hardly meant

type Wanted = ReturnType<typeof wantedUnit>;

/** True where a text tells a number, and not as the end of another. */
const tells = (text: string, shown: string): boolean => {
  const at = text.indexOf(shown);
  return at >= 0 && !/[\d.,]$/.test(text.slice(0, at));
};

/** Makes one who answers a single question from a list. */
export function oneQuestion(list: AskedList): (asking: Asking, wanted: Wanted, country?: ReturnType<typeof countryIn>) => Answer | NotKnown {
  const { match } = questionMatcher(list);
  const kin = kinOf(list);
  const figureOf = figureTeller(list);
  const quote = passageFinder(list.passages ?? [], list.words);
  /** The answer to one question, in a unit if one is wanted. */
  return function found(
    { question, house, telling: wishes = {} }: Asking,
    wanted: Wanted,
    country = countryIn(question),
  ): Answer | NotKnown {
    const line = lineOf(house);
    const telling: Telling = { ...wishes, line, unit: wanted?.unit, pace: paceIn(question) };
    const asked: Numbered = { text: question, quantities: quantitiesAsked(question, country), wanted, country, house, line, telling }; // prettier-ignore
    const isWhy = /\bwhy\b/i.test(question);
    const figure = isWhy ? undefined : figureOf(asked);
    const reckoned = isWhy ? undefined : reckonedOf(asked);
    // A sum that does not tell the figure that was named is of another thing.
    const sum = figure && !reckoned?.paths.includes(figure.paths[0]!) ? undefined : reckoned;
    if (sum && !sum.plainly && !sum.isLoose) return sum;
    const matches = match(bareQuestion(question));
    const [best] = matches;
    const others = matches.flatMap(({ entry }) => (entry.unknown || entry === best?.entry ? [] : [entry]));
    const isKnown = best && best.score >= LIKELY.score && best.chance >= (best.entry.unknown ? LIKELY.unknown : LIKELY.chance);
    const isCertain = isKnown && (best.score >= CERTAIN || (best.score >= SURE.score && kin(matches) >= SURE.chance)); // prettier-ignore
    const tellsIt = best && best.score >= TELLS && best.chance >= PLAIN && sum?.plainly?.every((says) => best.entry.asked.some((way) => says.test(way))); // prettier-ignore
    // An entry that is asked with both things of such a sum tells that figure, and no other.
    if (sum && !tellsIt && !(sum.isLoose && isCertain)) return sum;
    if (figure) {
      // An entry of the list that tells the very figure tells more of it.
      const tellers = matches.slice(0, NEAREST).filter(({ chance, score }) => chance >= PLAIN || score >= WHOLE).map(({ entry }) => tellEntry(entry, telling));
      const fuller = tellers.find(({ says, sum: worked = '' }) => tells(`${says} ${worked}`, figure.shown));
      const { shown: _, ...told } = figure;
      if (fuller) return { ...fuller, question };
      if (!(isCertain && best.score >= WHOLE)) return { ...told, question, inUnit: wanted !== undefined };
    }
    const hold = matches.slice(0, NEAREST + 2).some(({ entry }) => entry.unknown) ? undefined : quote(bareQuestion(question));
    const quoted = hold && hold.held >= QUOTED.held && hold.words >= QUOTED.words ? hold : undefined;
    // Reasons and consequences stand in the chapters: there the book’s own sentences go before an entry that is hardly meant.
    const isByBook = quoted !== undefined && !isCertain && REASONS.test(question) && kin(matches) < HARDLY;
    if (isKnown && !isByBook) {
      const told = tellEntry(best.entry, telling);
      // Numbers of the asker’s own that it leaves unsaid make no answer sure.
      const isSure = (isCertain || tellsIt) && !passesOver(asked, told);
      return {
        ...told,
        question,
        ...(!isSure && { meant: best.entry, chance: best.chance, others: others.slice(0, NEAREST - 1) }),
      };
    }
    if (quoted)
      return { says: filledFrom(line, quoted.text), at: quoted.at, place: quoted.place, paths: [], question, inUnit: false, isQuoted: true }; // prettier-ignore
    return { nearest: [...(best && !best.entry.unknown ? [best.entry] : []), ...others].slice(0, NEAREST) };
  }
} // prettier-ignore
