// Kinds of question with options: which figure cannot be true, and what would you do.
import type { House } from '../core/line/house.ts';
import type { Line } from '../core/line/line.ts';
import type { SourceId } from '../core/sources.ts';
import type { Chance } from './chance.ts';
import { lineIfAny } from '../house/line-of.ts';
import type { ChoiceQuestion, QuestionKind } from './question.ts';
import type { Level, Topic } from './topics.ts';

export interface Option {
  readonly text: string;
  /** Why it is right, or is not. */
  readonly why: string;
}

export interface Choice {
  readonly id: string;
  readonly title: string;
  readonly topic: Topic;
  readonly form: ChoiceQuestion['form'];
  readonly level: Level;
  readonly sources: readonly SourceId[];
  /** The prompt, the one right option, and the others (three are shown). Figures may be drawn by chance or come from the line. */
  readonly ask: (
    chance: Chance,
    line: Line,
    house: House,
  ) => { readonly prompt: string; readonly right: Option; readonly others: readonly Option[] };
}

const OTHERS = 3; // wrong options shown

/** Options with their figures as they were first told. */
function firstTold(options: readonly Option[], { quotes }: Chance): readonly Option[] {
  const texts = quotes.texts(options.map(({ text }) => text));
  return options.map(({ why }, i) => ({ text: texts[i]!, why }));
}

/** Declares a kind of question with options, shown in an order drawn by chance. */
export function choice({ id, title, topic, form, level, sources, ask }: Choice): QuestionKind {
  const draw: QuestionKind['draw'] = (chance, house) => {
    const now = lineIfAny(house);
    if (!now) return undefined;
    const { prompt, right, others } = ask(chance, now, house);
    const drawn = chance.shuffle([right, ...chance.shuffle(others).slice(0, OTHERS)]);
    const options = form === 'impossible' ? firstTold(drawn, chance) : drawn;
    const place = drawn.indexOf(right);
    return {
      kind: id,
      title,
      topic,
      form,
      level,
      sources,
      prompt,
      options,
      answer: place,
      working: [`${options[place]!.text.replace(/\.?$/, '.')} ${right.why}`],
    };
  };
  return { id, title, topic, form, level, since: 1, draw };
}
