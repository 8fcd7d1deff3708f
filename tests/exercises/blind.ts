// How far a reader gets with options who reads neither numbers nor meaning: npm run blind [generator] prints it.
import { GENERATOR, draw } from '../../src/exercises/draw.ts';
import { questionKinds } from '../../src/exercises/kinds/index.ts';
import { isChoiceQuestion, type QuestionKind } from '../../src/exercises/question.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { offChance, readByTone } from './tone.ts';

/** An option as such a reader sees it: its length, its figures and its wording without them. */
interface Seen {
  readonly text: string;
  readonly wording: string;
  readonly words: ReadonlySet<string>;
}
const seen = (text: string): Seen => {
  const wording = text.replace(/\d[\d,.\u202f]*/g, '#').toLowerCase();
  return { text, wording, words: new Set(wording.match(/\p{L}{3,}/gu) ?? []) };
};

/** What was seen of a wording, or a word, in earlier draws of the kind: how often it was shown, and how often right. */
type Memory = Map<string, { shown: number; right: number }>;
const shareOf = (memory: Memory, key: string) => {
  const { shown, right } = memory.get(key) ?? { shown: 0, right: 0 };
  return (right + 0.25) / (shown + 1);
};
const shared = (one: Seen, other: Seen) => {
  const both = [...one.words].filter((word) => other.words.has(word)).length;
  return both / Math.max(1, new Set([...one.words, ...other.words]).size);
};
const likeness = (option: Seen, all: readonly Seen[]) =>
  all.reduce((sum, other) => sum + (other === option ? 0 : shared(option, other)), 0);
const digits = ({ text }: Seen) => text.match(/\d/g)?.length ?? 0;

/** Readers, each by what it goes for: the option that has most of it. */
export const readers: Readonly<
  Record<string, (option: Seen, place: number, all: readonly Seen[], memory: Memory) => number>
> = {
  longest: ({ text }) => text.length,
  shortest: ({ text }) => -text.length,
  'most words': ({ wording }) => wording.split(/\s+/).length,
  first: (_, place) => -place,
  second: (_, place) => Number(place === 1),
  third: (_, place) => Number(place === 2),
  last: (_, place) => place,
  'most digits': digits,
  'fewest digits': (option) => -digits(option),
  'wording most like the others': (option, _, all) => likeness(option, all),
  'wording least like the others': (option, _, all) => -likeness(option, all),
  'most often right before': ({ wording }, _, __, memory) => shareOf(memory, wording),
  'words most often right before': ({ words }, _, __, memory) =>
    [...words].reduce((sum, word) => sum + Math.log(shareOf(memory, word)), 0) / Math.max(1, words.size),
};

/** How often a reader is right with a kind, and how often chance is, both as shares. */
export interface Blind {
  readonly kind: QuestionKind;
  readonly chance: number;
  readonly right: Readonly<Record<string, number>>;
}

/** Has every reader answer some draws of each kind with options that the generator has. */
export function blindReaders(draws: number, generator = GENERATOR): readonly Blind[] {
  return questionKinds
    .filter(
      ({ form, since, until = Infinity }) =>
        (form === 'judgement' || form === 'impossible') && since <= generator && generator <= until,
    )
    .map((kind) => {
      const memory: Memory = new Map();
      const right = Object.fromEntries(Object.keys(readers).map((name) => [name, 0]));
      let chance = 0;
      let asked = 0;
      for (let seed = 0; seed < draws; seed++) {
        const question = draw(kind, `blind/${seed}`, builtInHouse, generator)?.question;
        if (!question || !isChoiceQuestion(question)) continue;
        asked++;
        const options = question.options.map(({ text }) => seen(text));
        chance += 1 / options.length;
        for (const [name, likes] of Object.entries(readers)) {
          const liked = options.map((option, place) => likes(option, place, options, memory));
          const most = Math.max(...liked);
          const chosen = liked.flatMap((each, place) => (each > most - 1e-9 ? [place] : []));
          if (chosen.includes(question.answer)) right[name]! += 1 / chosen.length;
        }
        options.forEach(({ wording, words }, place) => {
          for (const key of [wording, ...words]) {
            const { shown, right } = memory.get(key) ?? { shown: 0, right: 0 };
            memory.set(key, { shown: shown + 1, right: right + Number(place === question.answer) });
          }
        });
      }
      return {
        kind,
        chance: chance / asked,
        right: Object.fromEntries(Object.entries(right).map(([name, count]) => [name, count / asked])),
      };
    });
}

/** Points that each reader is above chance over some kinds, each kind counting alike. */
export const aboveChance = (all: readonly Blind[]): Readonly<Record<string, number>> =>
  Object.fromEntries(
    Object.keys(readers).map((name) => [
      name,
      (100 * all.reduce((sum, { right, chance }) => sum + right[name]! - chance, 0)) / all.length,
    ]),
  );

if (process.argv[1] === import.meta.filename) {
  const generator = Number(process.argv[2] ?? GENERATOR);
  const all = blindReaders(200, generator);
  const print = (title: string, points: Readonly<Record<string, number>>) =>
    console.log(
      `${title}\n${Object.entries(points)
        .map(([name, above]) => `  ${above.toFixed(1).padStart(6)}  ${name}`)
        .join('\n')}`,
    );
  print('Points above chance, all kinds with options', aboveChance(all));
  for (const form of ['judgement', 'impossible'] as const)
    print(form, aboveChance(all.filter(({ kind }) => kind.form === form)));
  for (const each of all) {
    const [name, above] = Object.entries(aboveChance([each])).reduce((a, b) => (b[1] > a[1] ? b : a));
    console.log(`${above.toFixed(0).padStart(4)}  ${each.kind.id}: ${name}`);
  }
  const byTone = readByTone(200, generator);
  print('\nPoints off chance by tone, learnt from every kind but the one asked', offChance(byTone));
  for (const each of byTone)
    console.log(
      `${Object.values(offChance([each]))
        .map((off) => off.toFixed(0).padStart(5))
        .join('')}  ${each.kind.id}`,
    );
}
