// What comes next, because of what, and the one place to go on.
import { Match, Show, Switch } from 'solid-js';
import { formatCount } from '../core/format.ts';
import type { Stage } from '../house/figures.ts';
import type { Next } from '../path/next.ts';
import { openLesson } from '../path/open-lesson.ts';
import { addressOfStep, type Lesson, type PathStage, type Step } from '../path/steps.ts';
import { keepLesson } from './lesson-kept.ts';
import { inWords } from './today.ts';

/** Names that a page carries for its island. */
export interface Names {
  readonly kinds: Readonly<Record<string, string>>;
  readonly guesses: Readonly<Record<string, string>>;
  /** Where each kind is explained. */
  readonly passages: Readonly<Record<string, string>>;
}
export interface Place extends Names {
  /** The way from the page to the book's root. */
  readonly root: string;
}

export const practiceAt = (root: string, kinds: readonly string[]) =>
  `${root}practice/#kinds=${kinds.join(',')}`;
export const addressIn = (root: string, at: string) => root + at;
export const titleOf = (stage: Stage) => stage[0]!.toUpperCase() + stage.slice(1);

/** What a step is called. */
export function stepSays(step: Step, { kinds, guesses }: Names): string {
  if (step.do === 'read') return `Read: ${step.title}`;
  if (step.do === 'guess') return `Guess: ${guesses[step.id] ?? step.id}`;
  if (step.do === 'work') return `Worked example: ${kinds[step.kind]}`;
  return step.do === 'practise'
    ? `Practise: ${step.kinds.map((kind) => kinds[kind]).join('; ')}`
    : `Do: ${step.says}`;
}

/** A way to a step: the pages that it leads to know the lesson, and lead back and on. */
export function StepLink(props: {
  readonly stage: PathStage;
  readonly lesson: Lesson;
  readonly step: Step;
  readonly place: Place;
  readonly says?: string;
  readonly isMain?: boolean;
}) {
  const says = (step: Step) => stepSays(step, props.place);
  return (
    <a
      class={props.isMain ? 'go' : undefined}
      href={addressIn(props.place.root, addressOfStep(props.stage.stage, props.step))}
      onClick={() => keepLesson(openLesson(props.stage, props.lesson, props.step, says))}
    >
      {props.says ?? says(props.step)}
    </a>
  );
}

export function PathNext(props: { readonly next: Next; readonly place: Place }) {
  const of = <B extends Next['because']>(because: B) =>
    props.next.because === because ? (props.next as Extract<Next, { because: B }>) : undefined;
  const named = (kinds: readonly string[]) => kinds.map((kind) => props.place.kinds[kind]).join('; ');
  const stagePage = (stage: Stage) => `${props.place.root}first-weeks/${stage}/`;
  return (
    <div class="path-next" role="status">
      <Switch>
        <Match when={of('missed')}>
          {(next) => (
            <>
              <p>
                Next, because you missed it last time: <b>{named(next().kinds)}</b>. Read{' '}
                <a href={addressIn(props.place.root, props.place.passages[next().kinds[0]!]!)}>the passage</a>{' '}
                again, then try once more.
              </p>
              <a class="go" href={practiceAt(props.place.root, next().kinds)}>
                Practise what you missed
              </a>
            </>
          )}
        </Match>
        <Match when={of('due')}>
          {(next) => (
            <>
              <p>
                Next, because it was right once and a day has passed: <b>{named(next().kinds)}</b>. Right
                again today, and it counts.
              </p>
              <a class="go" href={practiceAt(props.place.root, next().kinds)}>
                Practise what is due
              </a>
            </>
          )}
        </Match>
        <Match when={of('step')}>
          {(next) => (
            <>
              <p>
                Next: {titleOf(next().stage.stage)}, <b>{next().lesson.title}</b>.{' '}
                {stepSays(next().step, props.place).replace(/\.$/, '')}.
              </p>
              <StepLink {...next()} place={props.place} says="Go on where you were" isMain />
            </>
          )}
        </Match>
        <Match when={of('sign')}>
          {(next) => (
            <>
              <p>
                {titleOf(next().stage.stage)} has reached its standard. Next: print the sheet, and take it to
                your trainer to sign.
                <Show when={next().open}>
                  {(open) => <> {formatCount(open(), 'step')} of its lessons can be done before that.</>}
                </Show>
              </p>
              <a class="go" href={`${stagePage(next().stage.stage)}#sign`}>
                Print the sheet to sign
              </a>
            </>
          )}
        </Match>
        <Match when={of('wait')}>
          {(next) => (
            <p>
              All that {next().stage.stage} asks is right once. Come back on {inWords(next().from)}: what is
              right again then counts.
            </p>
          )}
        </Match>
        <Match when={of('all')}>
          <p>
            All is signed. <a href={`${props.place.root}practice/`}>Practice</a> goes on asking what would
            fade.
          </p>
        </Match>
      </Switch>
    </div>
  );
}
