// Kinds of question with options: which figure cannot be true, and what would you do.
import type { House } from '../core/line/house.ts';
import type { Line } from '../core/line/line.ts';
import type { SourceId } from '../core/sources.ts';
import type { Chance } from './seeded-random.ts';
import { lineIfAny } from '../house/line-of.ts';
import type { ChoiceQuestion, QuestionKind } from './question.ts';
import type { Level, Topic } from './topics.ts';

export interface Option {
  readonly text: string;
  /** Why it is right, or is not. */
  readonly why: string;
}

export interface ChoiceKind {
  readonly id: string;
  readonly title: string;
  readonly topic: Topic;
  readonly form: ChoiceQuestion['form'];
  readonly level: Level;
  readonly sources: readonly SourceId[];
  /** The prompt, the one right option, and the others (three are shown). Figures may be drawn by chance or come from the line. */
  readonly ask: (chance: Chance, line: Line, house: House) => Asking;
}

interface Asking {
  readonly prompt: string;
  readonly right: Option;
  readonly others: readonly Option[];
  /** What else would do; then one draw in two asks for what would not. */
  readonly bothWays?: BothWays;
}

/**
 * A question that is asked both ways: which one would do, among some that would not, or which one would not, among some
 * that would. So no option is right more often than it is wrong, and to know it again says nothing.
 */
interface BothWays {
  readonly would: readonly Option[];
  /** The `others`, if not said. */
  readonly wouldNot?: readonly Option[];
  /** How either is asked, in place of the prompt's last sentence. */
  readonly asks?: readonly [would: string, wouldNot: string];
}

/** The generator from which options give nothing away by their wording. */
export const EVEN_WORDING_SINCE = 3;
const ASKS = ['Which of these would be right?', 'Which of these would be wrong?'] as const;

function oneWay(asking: Asking, chance: Chance): Asking {
  const { prompt, others, bothWays } = asking;
  if (!bothWays || chance.generator < EVEN_WORDING_SINCE) return asking;
  const { would, wouldNot = others, asks = ASKS } = bothWays;
  const isTurned = chance.below(2) === 1;
  const scene = prompt.replace(/[^.?!”]+\?$/, '').trim();
  return isTurned
    ? {
        prompt: `${scene} ${asks[1]}`,
        right: chance.pick(wouldNot),
        others: would.map(({ text, why }) => ({ text, why: `This one is in order. ${why}` })),
      }
    : { prompt: `${scene} ${asks[0]}`, right: chance.pick(would), others: wouldNot };
}

const OTHERS = 3; // wrong options shown

/** Options with their figures as they were first told. */
function firstTold(options: readonly Option[], { quotes }: Chance): readonly Option[] {
  const texts = quotes.texts(options.map(({ text }) => text));
  return options.map(({ why }, i) => ({ text: texts[i]!, why }));
}

/** Declares a kind of question with options, shown in an order drawn by chance. */
export function choice({ id, title, topic, form, level, sources, ask }: ChoiceKind): QuestionKind {
  const draw: QuestionKind['draw'] = (chance, house) => {
    const now = lineIfAny(house);
    if (!now) return undefined;
    const { prompt, right, others } = oneWay(ask(chance, now, house), chance);
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
