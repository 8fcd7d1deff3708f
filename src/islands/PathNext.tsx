// What comes next, because of what, and the one place to go on.
import { For, Show } from 'solid-js';
import type { Next } from '../path/next-on-path.ts';
import type { Lesson, PathStage, LessonStep } from '../path/steps.ts';
import { keepLesson } from './lesson-kept.ts';
import { nextSays, wayToStep, type Names, type PathLink } from './path-says.ts';

export interface PathPlace extends Names {
  /** The way from the page to the book's root. */
  readonly root: string;
}

/** A link that keeps the lesson that it opens. */
function WayLink(props: { readonly way: PathLink; readonly place: PathPlace; readonly class?: string }) {
  return (
    <a
      class={props.class}
      href={props.place.root + props.way.at}
      onClick={() => props.way.opens && keepLesson(props.way.opens)}
    >
      {props.way.says}
    </a>
  );
}

/** A way to a step. */
export function StepLink(props: {
  readonly stage: PathStage;
  readonly lesson: Lesson;
  readonly step: LessonStep;
  readonly place: PathPlace;
}) {
  return <WayLink way={wayToStep(props.stage, props.lesson, props.step, props.place)} place={props.place} />;
}

/** The place to go on alone, where the sentence stands elsewhere on the page. */
export function PathGo(props: { readonly next: Next; readonly place: PathPlace }) {
  return (
    <Show when={nextSays(props.next, props.place).go}>
      {(go) => <WayLink class="go" way={go()} place={props.place} />}
    </Show>
  );
}

export function PathNext(props: { readonly next: Next; readonly place: PathPlace }) {
  return (
    <div class="path-next" role="status">
      <p>
        <For each={nextSays(props.next, props.place).pieces}>
          {(piece) => {
            if (typeof piece === 'string') return piece;
            return 'b' in piece ? <b>{piece.b}</b> : <WayLink way={piece} place={props.place} />;
          }}
        </For>
      </p>
      <PathGo next={props.next} place={props.place} />
    </div>
  );
}
