// How far a reader gets with options who knows only the tone of right ones, learnt from every kind but the one asked: npm run blind prints it too.
import { GENERATOR, draw } from '../../src/exercises/draw.ts';
import { questionKinds } from '../../src/exercises/kinds/index.ts';
import { isChoiceQuestion, type QuestionKind } from '../../src/exercises/question.ts';
import { builtInHouse } from '../../src/house/figures.ts';

/** A question as such a reader sees it: the tone of each option, and which way it is asked. */
interface Toned {
  readonly options: readonly (readonly string[])[];
  readonly answer: number;
  /** True where the one is asked for that would not do. */
  readonly isTurned: boolean;
}
/** A kind with options in words, as drawn. */
interface Worded {
  readonly kind: QuestionKind;
  readonly asked: readonly Toned[];
}

/** The signs of tone in a text: its words, the stops within it, and pairs of neighbours. */
export function signsOf(text: string): readonly string[] {
  const words = text.toLowerCase().match(/\p{L}+(?:’\p{L}+)?|[,;:]/gu) ?? [];
  return [...new Set([...words, ...words.slice(1).map((word, i) => `${words[i]} ${word}`)])];
}

const FEWEST_WORDS = 7; // an option in words has so many on average, and hardly a figure; one that is a name has fewer
function worded(kind: QuestionKind, draws: number, generator: number): Worded | undefined {
  const questions = Array.from({ length: draws }, (_, seed) => draw(kind, `tone/${seed}`, builtInHouse, generator)?.question).filter(
    (question) => question !== undefined && isChoiceQuestion(question),
  ); // prettier-ignore
  const texts = questions.flatMap(({ options }) => options.map(({ text }) => text));
  const words = texts.reduce((sum, text) => sum + text.split(/\s+/).length, 0) / texts.length;
  const withFigures = texts.filter((text) => /\d/.test(text)).length / texts.length;
  if (words < FEWEST_WORDS || withFigures > 0.2) return undefined;
  const asked = questions.map(({ prompt, options, answer }) => ({
    options: options.map(({ text }) => signsOf(text)),
    answer,
    isTurned: /\b(?:wrong|not|cannot)\b[^.?]*\?$/.test(prompt),
  }));
  return { kind, asked };
}

/** What a reader has seen: options of other kinds, each once, and whether each would do. */
type Seen = readonly { readonly signs: readonly string[]; readonly would: boolean }[];
const seenIn = (all: readonly Worded[]): Seen =>
  all.flatMap(({ asked }) => {
    const once = new Map<string, Seen[number]>();
    for (const { options, answer, isTurned } of asked)
      options.forEach((signs, place) =>
        once.set(`${signs.join()}/${(place === answer) !== isTurned}`, { signs, would: (place === answer) !== isTurned }),
      ); // prettier-ignore
    return [...once.values()];
  });

/** How much an option sounds like one that would do. */
type Ear = (signs: readonly string[]) => number;

/** Naive Bayes: the logarithm of how much more often each sign stood in options that would do. */
function bayes(seen: Seen, signsUsed: (sign: string) => boolean = () => true): Ear {
  const counts = new Map<string, [number, number]>();
  const all: [number, number] = [0, 0];
  for (const { signs, would } of seen) {
    all[+would]!++;
    for (const sign of signs.filter(signsUsed)) {
      const count = counts.get(sign) ?? [0, 0];
      count[+would]!++;
      counts.set(sign, count);
    }
  }
  return (signs) =>
    signs.reduce((sum, sign) => {
      const count = counts.get(sign);
      return count ? sum + Math.log(((count[1] + 0.5) * (all[0] + 1)) / ((count[0] + 0.5) * (all[1] + 1))) : sum;
    }, 0); // prettier-ignore
}

const ROUNDS = 60; // passes over what was seen, after which its weights hardly move
const HOLD = 0.002; // how hard a weight is drawn back to nothing at each look
/** Logistic regression over the same signs, either class weighing alike. */
function logistic(seen: Seen): Ear {
  const weights = new Map<string, number>();
  const wouldShare = seen.filter(({ would }) => would).length / seen.length;
  const ear: Ear = (signs) => signs.reduce((sum, sign) => sum + (weights.get(sign) ?? 0), 0);
  for (let round = 0; round < ROUNDS; round++)
    for (const { signs, would } of seen) {
      const off = Number(would) - 1 / (1 + Math.exp(-ear(signs)));
      const step = (0.1 * off) / (2 * (would ? wouldShare : 1 - wouldShare));
      for (const sign of signs) weights.set(sign, (weights.get(sign) ?? 0) * (1 - HOLD) + step);
    }
  return ear;
}

const CAREFUL = 'leave|permit|call|procedure|alarm|stop|stay|keep|report|wait|until|trained|outside|away|ask|tell|responsible|charge|checked|safe|first|lead|rinse|warning|others|everybody|everyone|nobody|help|rules|measured|site'.split('|'); // prettier-ignore
const CARELESS = 'quick|quickly|only|just|open|since|slowly|half|little|short|enough|yourself|alone|finish|save|hold|climb|sniff|let|as long as|go on|hurry|already|always|anyway|but|minute|minutes|hand|lean|run|try|wait and see'.split('|'); // prettier-ignore
/** Two lists made by hand. */
const lists: Ear = (signs) =>
  signs.reduce((sum, sign) => sum + Number(CAREFUL.includes(sign)) - Number(CARELESS.includes(sign)), 0);

/** Readers by tone, each taught by what was seen of other kinds, as they are asked now and as older sheets asked them. */
export const ears: Readonly<Record<string, (seen: Seen, older: Seen) => Ear>> = {
  'words and pairs, by naive Bayes': (seen) => bayes(seen),
  'words alone, by naive Bayes': (seen) => bayes(seen, (sign) => !sign.includes(' ')),
  'words and pairs, by logistic regression': logistic,
  'words and pairs, learnt from older sheets': (_, older) => bayes(older),
  'careful and careless words': () => lists,
};

/** How often a reader by tone is right with a kind, and how often chance is, both as shares. */
export interface ByTone {
  readonly kind: QuestionKind;
  readonly chance: number;
  readonly right: Readonly<Record<string, number>>;
}

const GAVE_AWAY = 6; // the last generator whose options told by their tone

const allWorded = (draws: number, generator: number) =>
  questionKinds
    .filter(({ form, since, until = Infinity }) => (form === 'judgement' || form === 'impossible') && since <= generator && generator <= until)
    .flatMap((kind) => worded(kind, draws, generator) ?? []); // prettier-ignore

/** Has every reader answer some draws of each kind with options in words, having learnt from all others. */
export function readByTone(draws: number, generator = GENERATOR): readonly ByTone[] {
  const all = allWorded(draws, generator);
  const before = allWorded(draws, GAVE_AWAY);
  return all.map((one) => {
    const { kind, asked } = one;
    const seen = seenIn(all.filter((other) => other !== one));
    const older = seenIn(before.filter((other) => other.kind !== kind));
    const right = Object.entries(ears).map(([name, taught]) => {
      const ear = taught(seen, older);
      const share = asked.map(({ options, answer, isTurned }) => {
        const heard = options.map((signs) => ear(signs) * (isTurned ? -1 : 1));
        const most = Math.max(...heard);
        const chosen = heard.flatMap((each, place) => (each > most - 1e-9 ? [place] : []));
        return chosen.includes(answer) ? 1 / chosen.length : 0;
      });
      return [name, share.reduce((sum, each) => sum + each, 0) / asked.length] as const;
    });
    const chance = asked.reduce((sum, { options }) => sum + 1 / options.length, 0) / asked.length;
    return { kind, chance, right: Object.fromEntries(right) };
  });
}

/** Points that each reader is off chance over some kinds, each kind counting alike. */
export const offChance = (all: readonly ByTone[]): Readonly<Record<string, number>> =>
  Object.fromEntries(
    Object.keys(ears).map((name) => [
      name,
      (100 * all.reduce((sum, { right, chance }) => sum + right[name]! - chance, 0)) / all.length,
    ]),
  );
