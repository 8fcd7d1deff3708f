// Where in the process a place in a text is: the running topic, from the trade words that lead up to it.
import { stages, type Stage } from '../core/figures/index.ts';
import { stageOf, type Mention } from './words.ts';

export type StageTopic = Readonly<Record<Stage, number>>;

const MEMORY = 160; // characters over which a word fades to a third
const REACH = 700; // beyond this a word is forgotten
const AHEAD = 90; // words that follow soon count as well, half as much

/** A function that tells how much each stage is the topic at a place, 0 to 1, for places in rising order. */
export function topics(mentions: readonly Mention[]): (at: number) => StageTopic {
  const loud = mentions.flatMap((mention) => {
    const of = stageOf(mention.concept);
    return of ? [{ ...of, start: mention.start }] : [];
  });
  let from = 0;
  return (at) => {
    while (from < loud.length && loud[from]!.start < at - REACH) from++;
    const sums: Record<Stage, number> = { malting: 0, milling: 0, mashing: 0, fermenting: 0, distilling: 0, maturing: 0 };
    for (let i = from; i < loud.length && loud[i]!.start < at + AHEAD; i++) {
      const { stage, loud: weight, start } = loud[i]!;
      const apart = Math.abs(at - start);
      sums[stage] += weight * Math.exp(-apart / MEMORY) * (start < at ? 1 : 0.5);
    }
    const most = Math.max(0.2, ...stages.map((stage) => sums[stage]));
    return Object.fromEntries(stages.map((stage) => [stage, sums[stage] / most])) as Record<Stage, number>;
  }; // prettier-ignore
}
