// Practice summed up by topic and kind: what a progress table and a record sheet show.
import type { Progress } from './progress.ts';
import type { Listed } from './kinds/list.ts';
import type { MarkVerdict } from './verdict.ts';
import { topics, type Topic } from './topics.ts';

const KNOWN_FROM = 4; // compartment from which a kind counts as known well: it rests eight days or more

export interface KindRecord {
  readonly title: string;
  readonly answers: number;
  readonly right: number;
  /** The last answer, and its day. */
  readonly last: MarkVerdict;
  readonly day: string;
}
export interface TopicRecord {
  readonly topic: Topic;
  /** Kinds of question that there are. */
  readonly kinds: number;
  readonly practised: readonly KindRecord[];
  readonly answers: number;
  readonly right: number;
  readonly known: number;
}

/** The records of all topics, in the book's order. */
export function recordOf({ log, standing }: Progress, kinds: readonly Listed[]): readonly TopicRecord[] {
  return topics.map((topic) => {
    const own = kinds.filter((kind) => kind.topic === topic);
    const asked = own.filter(({ until }) => until === undefined);
    const practised = own.flatMap(({ id, title }): KindRecord[] => {
      const entries = log.filter((entry) => entry.kind === id);
      const last = entries.at(-1);
      const right = entries.filter(({ verdict }) => verdict === 'right').length;
      return last ? [{ title, answers: entries.length, right, last: last.verdict, day: last.day }] : [];
    });
    const sum = (of: (record: KindRecord) => number) =>
      practised.reduce((total, record) => total + of(record), 0);
    return {
      topic,
      kinds: asked.length,
      practised,
      answers: sum(({ answers }) => answers),
      right: sum(({ right }) => right),
      known: asked.filter(({ id }) => (standing[id]?.box ?? 0) >= KNOWN_FROM).length,
    };
  });
}
