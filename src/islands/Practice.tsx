// Practice: one question after another, marked at once; each kind comes round again by the spacing rule.
import { createEffect, createMemo, createSignal, onMount, Show } from 'solid-js';
import { kindsOf } from '../exercises/kinds/fetched-kinds.ts';
import type { passageOf } from '../exercises/passages.ts';
import { practicePool } from '../exercises/practise.ts';
import { practiceSeed, useProgress } from '../browser/progress-store.ts';
import { formTitles, topics, topicTitles, type Level, type Topic } from '../exercises/topics.ts';
import { afterFrame } from '../browser/defer.ts';
import { asInBook } from '../house/line-of.ts';
import { liveLine, useHouse } from '../browser/house-store.ts';
import { announce } from './announce.ts';
import { focusAfter } from './focus-after.ts';
import { MarkView } from './MarkView.tsx';
import { PracticeAllAsked } from './PracticeAllAsked.tsx';
import { PracticeChoices } from './PracticeChoices.tsx';
import { PracticeFile } from './PracticeFile.tsx';
import { usePracticeLesson } from './practice-lesson.ts';
import { usePracticeQuestion } from './practice-question.ts';
import { QuestionView } from './QuestionView.tsx';
import { RecordSheet } from './RecordSheet.tsx';
import { SecondTry } from './SecondTry.tsx';

const answerField = () => document.getElementById('practice-answer');

export default function Practice(props: { readonly list: string }) {
  const { mounted, progress, troubles } = useProgress();
  const { house } = useHouse();
  /** The house of the page, by all that its line is reckoned with. */
  const ownHouse = createMemo(() => asInBook(house()));
  const [topic, setTopic] = createSignal<Topic | 'all'>('all');
  const [level, setLevel] = createSignal<Level | 'all'>('all');
  let nextButton: HTMLButtonElement | undefined;

  const kinds = kindsOf(props.list);
  const asks = usePracticeLesson(kinds, () => progress().log);
  const { named, isNamed, lesson, left, areAllRight, backAt, backSays } = asks;
  const pool = createMemo(() => {
    const whole = practicePool(kinds, topic(), level(), mounted() ? practiceSeed() : '');
    const own = whole.filter(({ id }) => named().includes(id));
    const open = own.filter(({ id }) => left().includes(id)); // what is left of the lesson comes first
    return open.length > 0 ? open : own.length > 0 ? own : whole;
  });
  const { question, answer, setAnswer, marked, isDone, isComing, isSecondTry, next, finish, handIn } =
    usePracticeQuestion({
      pool,
      reader: () => ({ progress: progress(), house: ownHouse() }),
      toAnswer: () => answerField()?.focus(),
      toGoOn: () => nextButton?.focus(),
    });
  /** The next question, with the focus where it is answered; its prompt describes that place. */
  function goOn(event: Event): void {
    void next().then(() => focusAfter(event, answerField));
  }
  /** Where the focus stays at the choice of what is asked, the question is said. */
  const say = () => announce('practice', () => question()?.prompt ?? 'No question fits this choice.');
  function choose(chosen: string): Promise<void> {
    setTopic(topics.find((each) => each === chosen) ?? 'all');
    return next();
  }
  const fromAddress = () => choose(asks.readAddress());
  // Where the book explains a kind is asked only of an answer that was marked, so it comes no earlier.
  const [passage, setPassage] = createSignal<typeof passageOf>();
  const isMarked = () => isSecondTry() || isDone();
  createEffect(() => {
    if (isMarked() && !passage())
      void import('../exercises/passages.ts').then(
        (all) => setPassage(() => all.passageOf),
        () => undefined, // without it, no link is offered
      );
  });
  onMount(() => {
    afterFrame(() => void liveLine()); // of which most questions speak
    afterFrame(() => void fromAddress()); // the page comes alive first
    addEventListener('hashchange', (event) => {
      void fromAddress().then(() => focusAfter(event, answerField));
    });
  });
  const choices = () => (
    <PracticeChoices
      topic={topic()}
      level={level()}
      chooseTopic={(chosen) => {
        asks.nameNone();
        void choose(chosen).then(say);
      }}
      chooseLevel={(chosen) => {
        setLevel(chosen);
        void next().then(say);
      }}
    />
  );

  return (
    <>
      <section
        class="calculator practice screen-only"
        data-asked={isNamed() ? '' : undefined}
        aria-labelledby="practice-title"
      >
        <h2 id="practice-title">
          {isNamed()
            ? 'Practice for your first weeks'
            : topic() === 'all'
              ? 'Mixed practice'
              : topicTitles[topic() as Topic]}
        </h2>
        <Show when={isNamed()}>
          <p>
            {lesson() ? 'Only what your lesson asks for.' : 'Only what your first weeks ask for.'}{' '}
            <a href={`../${backAt()}`}>{backSays()}</a>
          </p>
          <Show when={!isDone()}>
            <PracticeAllAsked of={asks} />
          </Show>
        </Show>
        <Show when={!isNamed()}>{choices()}</Show>
        <Show when={troubles().length > 0}>
          <p class="problem" role="alert">
            {troubles().join(' ')}
          </p>
        </Show>
        <Show
          when={mounted() && question()}
          fallback={
            <p>
              {isComing()
                ? 'The first question appears as soon as the page is ready.'
                : 'No question fits this choice; choose another level.'}
            </p>
          }
        >
          {(asked) => (
            <form
              class="asking"
              autocomplete="off"
              onSubmit={(event) => {
                event.preventDefault();
                void handIn();
              }}
            >
              <p class="about">
                {topicTitles[asked().topic]} · {formTitles[asked().form]} · level {asked().level}
              </p>
              <Show when={asked()} keyed>
                {(each) => (
                  <QuestionView
                    question={each}
                    id="practice-answer"
                    answer={answer()}
                    onAnswer={setAnswer}
                    done={isDone()}
                    problem={marked() && !isDone() ? 'practice-mark' : undefined}
                  />
                )}
              </Show>
              <p class="actions">
                <Show
                  when={isDone()}
                  fallback={
                    <>
                      <button type="submit">
                        {isSecondTry() ? 'Mark my second answer' : 'Mark my answer'}
                      </button>{' '}
                      <Show
                        when={isSecondTry()}
                        fallback={
                          <button type="button" onClick={goOn}>
                            Another question
                          </button>
                        }
                      >
                        <button type="button" onClick={finish}>
                          Show the answer
                        </button>
                      </Show>
                    </>
                  }
                >
                  <button type="button" ref={nextButton} onClick={goOn}>
                    {areAllRight() ? 'More questions all the same' : 'Next question'}
                  </button>
                </Show>
              </p>
              <Show when={isDone()}>
                <PracticeAllAsked of={asks} />
              </Show>
              <div id="practice-mark" aria-live="polite">
                <Show when={marked()}>
                  {(result) => <MarkView question={asked()} mark={result()} done={isDone()} />}
                </Show>
                <Show when={isSecondTry()}>
                  <SecondTry question={asked()} />
                </Show>
                <Show when={isMarked() && passage()?.(asked().kind, asked().topic)}>
                  {(at) => (
                    <p>
                      <a href={`../${at()}`}>Where the book explains it</a>
                    </p>
                  )}
                </Show>
              </div>
            </form>
          )}
        </Show>
        <Show when={isNamed()}>
          <details>
            <summary>Practise something else</summary>
            {choices()}
          </details>
        </Show>
      </section>
      <RecordSheet kinds={kinds} />
      <PracticeFile opened={() => void next()} />
    </>
  );
}
