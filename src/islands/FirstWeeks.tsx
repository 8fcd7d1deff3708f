// The first weeks at a glance: what comes next, each stage with what is reached, and the picture of it all.
import { For, Show } from 'solid-js';
import { formatCount } from '../core/format.ts';
import { asideId, nextOnPath, signedId, stepsDone } from '../path/next-on-path.ts';
import { kindsOfStage, type PathStage } from '../path/steps.ts';
import { masteredByDay, standingOfStage } from '../path/standing-of.ts';
import { isKept } from './path-kept.ts';
import { NotKept } from './NotKept.tsx';
import { PathNext } from './PathNext.tsx';
import { PathRise } from './PathRise.tsx';
import { stageTitle, type Names } from './path-says.ts';
import { usePath } from './use-path.ts';

export default function FirstWeeks(props: Names & { readonly stages: readonly PathStage[] }) {
  const path = props.stages; // an island never changes its props
  const all = [...new Set(path.flatMap(kindsOfStage))];
  const { done, day, next, troubles } = usePath(path);
  const { kinds, guesses, passages } = props;
  const place = { root: '../', kinds, guesses, passages };
  const saysOf = (stage: PathStage) => {
    const { kinds, once, reached, day } = standingOfStage(kindsOfStage(stage), done().log);
    const [steps, all] = stepsDone(stage, done());
    const isLeft = steps < all && !done().ticked.includes(asideId(stage));
    if (day !== undefined && done().ticked.includes(signedId(stage)))
      return isLeft ? `signed; ${formatCount(all - steps, 'step')} still open` : 'signed';
    if (day !== undefined) return 'reached, to be signed';
    if (once > 0) return `${reached} of ${kinds.length} reached, ${once} right once`;
    if (steps > 0) return `begun: ${steps} of ${all} steps done`;
    const isTried = done().log.some(({ kind }) => kinds.some((each) => each.kind === kind));
    return isTried || done().open === stage.stage ? 'begun' : 'not begun';
  };
  /** A sheet waits for a trainer: what goes on meanwhile in the other stages. */
  const meanwhile = () => {
    const now = next();
    if (now.because !== 'sign') return undefined;
    const other = nextOnPath(path.filter((stage) => stage !== now.stage), done(), day()); // prettier-ignore
    return other.because === 'all' ? undefined : other;
  };
  return (
    <section class="path" aria-labelledby="path-next-title">
      <h2 id="path-next-title">Where you are</h2>
      <PathNext next={next()} place={place} />
      <Show when={meanwhile()}>
        {(other) => (
          <>
            <p>Meanwhile:</p>
            <PathNext next={other()} place={place} />
          </>
        )}
      </Show>
      <NotKept isKept={isKept() && troubles().length === 0} what="all of your way" />
      <ol class="path-stages">
        <For each={path}>
          {(stage) => {
            const standing = () => standingOfStage(kindsOfStage(stage), done().log);
            return (
              <li>
                <a href={`${stage.stage}/`}>{stageTitle(stage.stage)}</a>
                <meter
                  min="0"
                  max={2 * kindsOfStage(stage).length}
                  value={standing().once + standing().reached}
                  aria-label={`${stageTitle(stage.stage)}: how much is mastered`}
                />
                <span>{saysOf(stage)}</span>
              </li>
            );
          }}
        </For>
      </ol>
      <h2>What you master</h2>
      <PathRise
        days={masteredByDay(all, done().log)}
        of={all.length}
        right={done().log.filter(({ verdict }) => verdict === 'right').length}
      />
    </section>
  );
}
