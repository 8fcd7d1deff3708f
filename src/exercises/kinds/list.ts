// All kinds of question without their sums, as a text that a page carries: enough to choose from, and a tenth of what the sums weigh.
import type { QuestionKind } from '../question.ts';
import { forms, topics, type Level } from '../topics.ts';

/** What is said of a kind of question before it is drawn. */
export type Listed = Pick<QuestionKind, 'id' | 'title' | 'topic' | 'form' | 'level' | 'since' | 'until'>;

/** Kinds of question as text, one a line. */
export const kindsText = (kinds: readonly Listed[]): string =>
  kinds
    .map(({ id, title, topic, form, level, since, until }) =>
      [id, title, topics.indexOf(topic), forms.indexOf(form), level, since, until ?? ''].join('\t'),
    )
    .join('\n');

/** The kinds of question of such a text, in its order. */
export const readKindsText = (text: string): readonly Listed[] =>
  text.split('\n').map((line) => {
    const [id, title, topic, form, level, since, until] = line.split('\t');
    return {
      id: id!,
      title: title!,
      topic: topics[Number(topic)]!,
      form: forms[Number(form)]!,
      level: Number(level) as Level,
      since: Number(since),
      ...(until ? { until: Number(until) } : {}),
    };
  });
