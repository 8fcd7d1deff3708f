// Kinds of question that ask to put steps in order.
import type { SourceId } from '../core/sources.ts';
import type { QuestionKind } from './question.ts';
import type { Level, Topic } from './topics.ts';

export interface Order {
  readonly id: string;
  readonly title: string;
  readonly topic: Topic;
  readonly level: Level;
  readonly sources: readonly SourceId[];
  readonly prompt: string;
  /** The steps in the right order, which must leave no doubt; five are drawn. */
  readonly steps: readonly string[];
  /** Why this order. */
  readonly why: string;
}

const SHOWN = 5; // steps drawn from the list

/** Declares a kind of question that shows some of the steps, mixed. */
export function order({ id, title, topic, level, sources, prompt, steps, why }: Order): QuestionKind {
  const draw: QuestionKind['draw'] = (chance) => {
    const places = chance
      .shuffle(steps.map((_, i) => i))
      .slice(0, SHOWN)
      .sort((a, b) => a - b);
    const mixed = chance.shuffle(places);
    return {
      kind: id,
      title,
      topic,
      form: 'order',
      level,
      sources,
      prompt,
      items: mixed.map((place) => steps[place]!),
      answer: places.map((place) => mixed.indexOf(place)),
      working: [...places.map((place, i) => `${i + 1}. ${steps[place]!}`), why],
    };
  };
  return { id, title, topic, form: 'order', level, since: 1, draw };
}
