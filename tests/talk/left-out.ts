// Every author's talks read by a reader that was learnt without them: the only numbers that are told of it.
import { join } from 'node:path';
import { judge, scripts, type Judgement, type Script } from './judge.ts';
import { readScript } from '../../src/talk/script.ts';
import { modelAsText, modelOf } from '../../src/talk/model-text.ts';
import { firstWithout, groupsOf, readerWithout } from './learn/stacked.ts';
import { toLearn } from './learn/talks.ts';
import { recombinedTalks } from './recombine.ts';

export interface LeftOut {
  readonly script: Script;
  readonly judgement: Judgement;
}

/** Every talk judged by a reader that has not learnt from its author, nor from those left out with them. Takes some minutes. */
export function leftOut(talks = [...scripts(), ...recombinedTalks()].map(toLearn), first = firstWithout(talks)): LeftOut[] {
  const without = readerWithout(talks, first);
  const all = scripts();
  return groupsOf(talks).flatMap((group) => {
    const model = modelOf(modelAsText(without(group))); // as rounded as what is shipped
    return all
      .filter(({ author }) => group.includes(author))
      .map((script) => ({ script, judgement: judge(script, (text) => readScript(text, model)) }));
  });
} // prettier-ignore

/** The talks of authors from whom nothing was ever learnt, nor anything looked up, judged by the reader that is shipped. */
export const neverLearnt = (): LeftOut[] =>
  scripts(join(import.meta.dirname, 'never-learnt')).map((script) => ({ script, judgement: judge(script) }));
