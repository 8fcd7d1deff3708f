// One stage of the first weeks: its lessons step by step, the worked example, the standard, and the sheet to sign.
import { For, onMount, Show } from 'solid-js';
import { formatCount } from '../core/format.ts';
import { changeName } from '../browser/progress-store.ts';
import { asideId, isDone, safetyNext, signedId } from '../path/next-on-path.ts';
import { idOfStep, kindsOfStage, lineOfStep, type PathStage, type LessonStep } from '../path/steps.ts';
import { standingOfStage } from '../path/standing-of.ts';
import { dropLesson, keptLesson } from './lesson-kept.ts';
import { isKept, markStep, ticks } from './path-kept.ts';
import { NotKept } from './NotKept.tsx';
import { PathGo, PathNext, StepLink } from './PathNext.tsx';
import { PathSignOff } from './PathSignOff.tsx';
import { practiceAt, stepSays, stageTitle, type Names } from './path-says.ts';
import { printPart } from './print-part.ts';
import { Tick } from './Tick.tsx';
import { today, dateInWords } from './today.ts';
import { usePath } from './use-path.ts';
import { WorkedOpen } from './WorkedOpen.tsx';

export default function FirstWeeksStage(props: Names & { readonly stage: PathStage }) {
  const { stage, guesses, passages } = props; // an island never changes its props
  const { mounted, done, next, name } = usePath([stage]);
  const place = { root: '../../', kinds: props.kinds, guesses, passages };
  const kinds = kindsOfStage(stage);
  const lessons: HTMLDetailsElement[] = [];
  /** Once, when the page comes alive: the lesson that is next, or come back to, stands open. A hand that opens others is let be. */
  onMount(() => {
    const now = stage.lessons.findIndex(({ steps }) => steps.some((step) => !isDone(step, done())));
    const line = document.getElementById(location.hash.slice(1))?.closest('.path-steps > li');
    const from = lessons.findIndex((each) => line && each.contains(line)); // the step that the reader comes back to
    const shown = from >= 0 ? from : now;
    if (shown > 0) lessons.forEach((each, i) => (each.open = i === shown));
    line?.scrollIntoView({ block: 'center' });
  });
  const standing = () => standingOfStage(kinds, done().log);
  const lessonOfWorked = stage.lessons.find(({ steps }) => steps.some((step) => step.do === 'work'))!;
  const worked = lessonOfWorked.steps.find((step) => step.do === 'work')!;
  const signed = () => (mounted() ? ticks()[signedId(stage)] : undefined);
  const open = () => stage.lessons.flatMap(({ steps }) => steps.filter((step) => !isDone(step, done())));
  const isAside = () => done().ticked.includes(asideId(stage));
  const safety = () => safetyNext(stage, done());
  /** Reading, worked examples and tasks are marked by hand; guesses and answers mark themselves. */
  const isByHand = (step: LessonStep) => step.do === 'read' || step.do === 'task';
  return (
    <div class="path">
      <div class="screen-only">
        <Show
          when={!signed()}
          fallback={
            <>
              <Show when={next().because !== 'all'}>
                <PathNext next={next()} place={place} />
              </Show>
              <div class="path-next">
                <p>
                  You have marked this stage as signed on {dateInWords(signed()!)}.{' '}
                  <a href="../">To the whole of your first weeks</a>
                </p>
                <Show when={open().length > 0 && !safety()}>
                  <Tick
                    checked={isAside()}
                    take={(isTicked) => markStep(asideId(stage), isTicked ? today() : undefined)}
                  >
                    Put aside what is still open: {formatCount(open().length, 'step')}
                  </Tick>
                </Show>
              </div>
            </>
          }
        >
          <PathNext next={next()} place={place} />
        </Show>
        <NotKept isKept={isKept()} what="what you mark here" />
        <h2 id="lessons">Lessons</h2>
        <For each={stage.lessons}>
          {(lesson, i) => (
            <details open={i() === 0} ref={(each) => (lessons[i()] = each)}>
              <summary>
                {i() + 1}. {lesson.title}
                <Show when={lesson.steps.every((step) => isDone(step, done()))}>: done</Show>
              </summary>
              <ol class="path-steps">
                <For each={lesson.steps}>
                  {(step) => {
                    const isElsewhere = step.do === 'task' && step.at === undefined;
                    const says = () =>
                      isElsewhere ? (
                        stepSays(step, place)
                      ) : (
                        <StepLink stage={stage} lesson={lesson} step={step} place={place} />
                      );
                    return (
                      <li id={lineOfStep(idOfStep(step))} data-done={isDone(step, done()) ? '' : undefined}>
                        <Show
                          when={isByHand(step)}
                          fallback={
                            <span>
                              {says()}
                              <Show when={isDone(step, done())}>: done</Show>
                            </span>
                          }
                        >
                          <Tick
                            checked={isDone(step, done())}
                            take={(isTicked) => markStep(idOfStep(step), isTicked ? today() : undefined)}
                          >
                            {says()}
                          </Tick>
                        </Show>
                      </li>
                    );
                  }}
                </For>
              </ol>
            </details>
          )}
        </For>
        <WorkedOpen
          kind={worked.kind}
          title={props.kinds[worked.kind]!}
          onDone={() => markStep(idOfStep(worked), today())}
        />
        <Show when={isDone(worked, done())}>
          <p class="lesson-way">
            Worked on your own. <PathGo next={next()} place={place} />
          </p>
        </Show>
        <h2 id="standard">The standard</h2>
        <p>Each of these right twice, at least a day apart, with no miss between. The first answer counts.</p>
        <ul class="path-standard">
          <For each={standing().kinds}>
            {(each) => (
              <li data-done={each.reached ? '' : undefined}>
                <a href={place.root + practiceAt([each.kind], stage.stage)}>{props.kinds[each.kind]}</a>
                <span>
                  {each.reached
                    ? `reached, ${dateInWords(each.reached)}`
                    : each.missed
                      ? 'missed last time'
                      : each.once
                        ? `right once; counts from ${dateInWords(each.from!)}`
                        : 'not yet right'}
                </span>
              </li>
            )}
          </For>
        </ul>
        <p>
          <a href={place.root + practiceAt(kinds, stage.stage)}>
            Practise all of {stageTitle(stage.stage).toLowerCase()}’s standard
          </a>
        </p>
        <h2 id="sign">Sign-off</h2>
        <p>
          {standing().day
            ? `The standard was reached on ${dateInWords(standing().day!)}. Print the sheet; your trainer asks, watches and signs.`
            : `${standing().reached} of ${kinds.length} are reached. Once staying safe is done the sheet can be printed before that, and says so.`}{' '}
          It shows answers in this book and nothing more: it does not show that anyone can do the work safely,
          and allows nobody to work alone. The site’s own authorisation and local rules come first.
        </p>
        <div class="field">
          <label for="path-name">Name on the sheet</label>
          <input
            id="path-name"
            class="words"
            type="text"
            maxlength="60"
            autocomplete="off"
            value={name()}
            onInput={(event) => changeName(event.currentTarget.value)}
          />
        </div>
        <Show
          when={!safety()}
          fallback={
            <p class="caution">
              Staying safe comes before the sheet, which is offered once it is done. Still open:{' '}
              <StepLink stage={stage} {...safety()!} place={place} />
            </p>
          }
        >
          <p class="actions">
            <button type="button" onClick={() => printPart('sign-off')}>
              Print the sheet to sign
            </button>
          </p>
        </Show>
        <Show when={open().length > 0}>
          <p class="remark">
            {formatCount(open().length, 'step')} of the lessons {open().length === 1 ? 'is' : 'are'} still
            open.
          </p>
        </Show>
        <Show when={standing().day && (!safety() || signed())}>
          <Tick
            checked={signed() !== undefined}
            take={(isTicked) => {
              markStep(signedId(stage), isTicked ? today() : undefined);
              if (isTicked && keptLesson()?.stage === stage.stage) dropLesson();
            }}
          >
            My trainer has signed it
          </Tick>
        </Show>
      </div>
      <PathSignOff
        stage={stage}
        standing={standing()}
        names={props.kinds}
        name={name()}
        tasks={stage.lessons.flatMap(({ steps }) =>
          steps.flatMap((step) =>
            step.do === 'task'
              ? [{ says: step.says, day: mounted() ? ticks()[idOfStep(step)] : undefined }]
              : [],
          ),
        )}
      />
    </div>
  );
}
