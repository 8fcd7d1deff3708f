// What comes next, because of what, and the one place to go on.
import { Match, Switch } from 'solid-js';
import type { Stage } from '../house/figures.ts';
import type { Next } from '../path/next.ts';
import type { Step } from '../path/steps.ts';
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

/** Where a step is done, and what it is called. */
export function stepLink(step: Step, { root, kinds, guesses }: Place) {
  if (step.do === 'read') return { href: addressIn(root, step.at), says: `Read: ${step.title}` };
  if (step.do === 'guess')
    return {
      href: `${addressIn(root, step.at)}#guess-${step.id}`,
      says: `Guess: ${guesses[step.id] ?? step.id}`,
    };
  if (step.do === 'work') return { href: '#worked', says: `Worked example: ${kinds[step.kind]}` };
  if (step.do === 'practise')
    return {
      href: practiceAt(root, step.kinds),
      says: `Practise: ${step.kinds.map((kind) => kinds[kind]).join('; ')}`,
    };
  return { href: step.at === undefined ? undefined : addressIn(root, step.at), says: `Do: ${step.says}` };
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
          {(next) => {
            const link = () => stepLink(next().step, props.place);
            const onPage = () => link().href === undefined || link().href!.startsWith('#');
            return (
              <>
                <p>
                  Next: {titleOf(next().stage.stage)}, <b>{next().lesson.title}</b>. {link().says}.
                </p>
                <a
                  class="go"
                  href={
                    onPage() ? `${stagePage(next().stage.stage)}${link().href ?? '#lessons'}` : link().href
                  }
                >
                  Go on where you were
                </a>
              </>
            );
          }}
        </Match>
        <Match when={of('sign')}>
          {(next) => (
            <>
              <p>
                {titleOf(next().stage.stage)} has reached its standard. Print the sheet, and take it to your
                trainer.
              </p>
              <a class="go" href={`${stagePage(next().stage.stage)}#sign`}>
                To the sheet to sign
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
