// The words of every kind of question, by which a trainer finds it: those of what it asks, and those that readers use in their place.
import { draw } from '../exercises/draw.ts';
import { isChoiceQuestion, isOrderQuestion, type QuestionKind } from '../exercises/question.ts';
import { builtInHouse } from '../house/figures.ts';

/** What readers say for reducing a spirit, whatever the question calls it. */
const SAID = { 'reduc|brings? down|brought down': ['dilute', 'dilution'] };
const DRAWS = 3; // of each kind, whose words are read: some word their question in several ways

/** Every word of three letters or more, once, in a kind's questions; `asked` has other words for what the book calls a thing. */
export function wordsOfKind(kind: QuestionKind, asked: Readonly<Record<string, readonly string[]>>): string {
  const drawn = Array.from({ length: DRAWS }, (_, i) => draw(kind, `words/${i}`, builtInHouse)?.question);
  const text = [
    kind.id.replaceAll('-', ' '),
    ...drawn.flatMap((question) => {
      if (!question) return [];
      const lines = isChoiceQuestion(question) ? question.options.map((each) => each.text) : isOrderQuestion(question) ? question.items : question.working; // prettier-ignore
      return [question.title, question.prompt, ...lines];
    }),
  ]
    .join(' ')
    .toLowerCase();
  const others = Object.entries({ ...asked, ...SAID }).flatMap(([name, words]) => (new RegExp(`\\b(?:${name})`).test(text) ? words : [])); // prettier-ignore
  const words = `${text} ${others.join(' ')}`.match(/[a-zà-ÿ0-9]*[a-zà-ÿ]{3,}/g) ?? [];
  return [...new Set(words)].sort().join(' ');
}

/** The words of each kind by its id. */
export const wordsOfKinds = (kinds: readonly QuestionKind[], asked: Readonly<Record<string, readonly string[]>>): Readonly<Record<string, string>> =>
  Object.fromEntries(kinds.map((kind) => [kind.id, wordsOfKind(kind, asked)])); // prettier-ignore
