// Every author's talks read by a reader that was learnt without them: the only numbers that are told of it.
import { judge, scripts, type Judgement, type Script } from './judge.ts';
import { readScript } from '../../src/talk/script.ts';
import { modelAsText, modelOf } from '../../src/talk/model-text.ts';
import { firstWithout, learnReader } from './learn/stacked.ts';
import { toLearn } from './learn/talks.ts';
import { recombinedTalks } from './recombine.ts';
import { TUNED_ON } from './tuned-on.ts';

export interface LeftOut {
  readonly script: Script;
  readonly judgement: Judgement;
}

const GROUPS = 5; // of authors that are left out together, so that a reader is learnt for each group and not for each author

function prepared() {
  const all = scripts();
  const talks = [...all, ...recombinedTalks()].map(toLearn);
  const first = firstWithout(talks);
  const authors = [...new Set(all.map(({ author }) => author))].filter((author) => author !== TUNED_ON);
  const groupOf = (author: string) =>
    authors.filter((_, i) => i % GROUPS === authors.indexOf(author) % GROUPS);
  return (author: string): LeftOut[] => {
    const out = groupOf(author);
    const model = modelOf(modelAsText(learnReader(talks, out, first))); // as rounded as what is shipped
    return all
      .filter((script) => out.includes(script.author))
      .map((script) => ({ script, judgement: judge(script, (text) => readScript(text, model)) }));
  };
}

/** The talks of one author, judged by a reader that has not learnt from them, nor from those left out with them. Takes a while. */
export const judgedWithout = (author: string): LeftOut[] =>
  prepared()(author).filter(({ script }) => script.author === author);

/** Every talk judged by a reader that has not learnt from its author. Takes some minutes. */
export function leftOut(): LeftOut[] {
  const without = prepared();
  const authors = [...new Set(scripts().map(({ author }) => author))].filter((author) => author !== TUNED_ON);
  return authors.slice(0, GROUPS).flatMap(without); // the first of each group
}
