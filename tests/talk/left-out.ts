// Every author's talks read by a reader that was learnt without them: the only numbers that are told of it.
import { judge, scripts, type Judgement, type Script } from './judge.ts';
import { readScript } from '../../src/talk/script.ts';
import { modelAsText, modelOf } from '../../src/talk/model-text.ts';
import { firstWithout, learnReader } from './learn/stacked.ts';
import { toLearn } from './learn/talks.ts';

/** The author of the first talks, which the reader was once tuned on: learnt from, and never told of. */
export const TUNED_ON = 'house';

export interface LeftOut {
  readonly script: Script;
  readonly judgement: Judgement;
}

/** Every talk judged by a reader that has not learnt from its author. Takes some minutes. */
export function leftOut(): LeftOut[] {
  const all = scripts();
  const talks = all.map(toLearn);
  const first = firstWithout(talks);
  const authors = [...new Set(all.map(({ author }) => author))].filter((author) => author !== TUNED_ON);
  return authors.flatMap((author) => {
    const model = modelOf(modelAsText(learnReader(talks, author, first))); // as rounded as what is shipped
    return all
      .filter((script) => script.author === author)
      .map((script) => ({ script, judgement: judge(script, (text) => readScript(text, model)) }));
  });
}
