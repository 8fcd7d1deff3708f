// What the path's steps are called, for pages whose islands should not carry every question and guess.
import { questionKinds } from '../exercises/kinds/index.ts';
import { passageOf } from '../exercises/passages.ts';
import { pathStages } from '../path/stages.ts';
import { kindsOfStage, type PathStage } from '../path/steps.ts';
import { predicts } from '../predict/index.ts';

/** Titles of the kinds and guesses of a stage, or of all. An unknown name stops the build. */
export function namesOfPath(only?: PathStage) {
  const stages = only ? [only] : pathStages;
  const steps = stages.flatMap(({ lessons }) => lessons.flatMap((lesson) => lesson.steps));
  const named = <T extends { readonly id: string; readonly title: string }>(
    ids: readonly string[],
    all: readonly T[],
  ) =>
    Object.fromEntries(
      ids.map((id) => {
        const found = all.find((each) => each.id === id);
        if (!found) throw new RangeError(`The path names ${id}, and there is no such thing.`);
        return [id, found.title];
      }),
    );
  const worked = steps.flatMap((step) => (step.do === 'work' ? [step.kind] : []));
  return {
    passages: Object.fromEntries(stages.flatMap(kindsOfStage).map((kind) => [kind, passageOf(kind)!])),
    kinds: named([...new Set([...stages.flatMap(kindsOfStage), ...worked])], questionKinds),
    guesses: named(
      steps.flatMap((step) => (step.do === 'guess' ? [step.id] : [])),
      predicts,
    ),
  };
}
