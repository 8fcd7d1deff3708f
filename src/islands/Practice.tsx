// Practice: one question after another, marked at once; each kind comes round again by the spacing rule.
import { createMemo, createSignal, For, onMount, Show } from 'solid-js';
import { quotedGiven } from '../core/quoted-given.ts';
import { fetchKinds, ifHere, kindsOf } from '../exercises/kinds/fetched-kinds.ts';
import type { Mark } from '../exercises/verdict.ts';
import { passageOf } from '../exercises/passages.ts';
import { nextKindToPractise, practicePool, nextQuestionToPractise } from '../exercises/practise.ts';
import {
  keepAnswer,
  loadProgress,
  practiceKeptAside,
  practiceSeed,
  useProgress,
} from '../browser/progress-store.ts';
import type { Question } from '../exercises/question.ts';
import {
  formTitles,
  levels,
  levelTitles,
  topics,
  topicTitles,
  type Level,
  type Topic,
} from '../exercises/topics.ts';
import { afterFrame, whenIdle } from '../browser/defer.ts';
import { asInBook } from '../house/line-of.ts';
import { liveLine, useHouse } from '../browser/house-store.ts';
import { kindsLeft } from '../path/kinds-left.ts';
import { lineAt, stepAfter, stepNow, type OpenLesson } from '../path/open-lesson.ts';
import { FileField } from './FileField.tsx';
import { announce } from './announce.ts';
import { focusAfter } from './focus-after.ts';
import { keepLesson, keptLesson } from './lesson-kept.ts';
import { fetchMarker } from './fetched-marker.ts';
import { MarkView } from './MarkView.tsx';
import { SecondTry } from './SecondTry.tsx';
import { QuestionView } from './QuestionView.tsx';
import { RecordSheet } from './RecordSheet.tsx';
import { textOfFile } from './open-file.ts';
import { saveFile } from './save-file.ts';
import { today } from './today.ts';
import { drawnOrLost } from './use-kinds.ts';

const BIGGEST_FILE = 1_000_000; // bytes of a file that is still opened

export default function Practice(props: { readonly list: string }) {
  const { mounted, progress, troubles, text } = useProgress();
  const { house } = useHouse();
  /** The house of the page, by all that its line is reckoned with. */
  const ownHouse = createMemo(() => asInBook(house()));
  const [topic, setTopic] = createSignal<Topic | 'all'>('all');
  const [level, setLevel] = createSignal<Level | 'all'>('all');
  const [question, setQuestion] = createSignal<Question>();
  const [answer, setAnswer] = createSignal('');
  const [marked, setMarked] = createSignal<Mark>();
  const [isFinal, setFinal] = createSignal(false);
  /** Kinds that the address names, as one lesson of the first weeks asks for. */
  const [named, setNamed] = createSignal<readonly string[]>([]);
  const [said, setSaid] = createSignal('');
  let nextButton: HTMLButtonElement | undefined;

  const [coming, setComing] = createSignal(true);
  const kinds = kindsOf(props.list);
  /** The lesson that sent the reader here, where these kinds are its own, and the step after. */
  const [lesson, setLesson] = createSignal<OpenLesson>();
  const after = () => stepAfter(lesson()!);
  /** Kinds that the lesson, or the day, still asks for. */
  const left = () => kindsLeft(named(), progress().log, lesson() ? undefined : today());
  const pool = createMemo(() => {
    const whole = practicePool(kinds, topic(), level(), mounted() ? practiceSeed() : '');
    const own = whole.filter(({ id }) => named().includes(id));
    const open = own.filter(({ id }) => left().includes(id)); // what is left of the lesson comes first
    return open.length > 0 ? open : own.length > 0 ? own : whole;
  });
  const isNamed = () => named().length > 0;
  /** The stage whose kinds these are, where its page sent the reader. */
  const [stage, setStage] = createSignal('');
  const areAllRight = () => isNamed() && left().length === 0;
  const backAt = () => (lesson() ? lineAt(lesson()!) : `first-weeks/${stage() && `${stage()}/`}`);
  const backSays = () =>
    lesson()
      ? `Back to your lesson, “${lesson()!.title}”`
      : stage()
        ? `Back to your first weeks: ${stage()}`
        : 'Back to your first weeks';
  const isDone = () => isFinal();
  const isSecondTry = () => marked()?.verdict === 'wrong' && !isFinal();

  let asked: readonly Question[] = []; // since the page was opened
  const sitting = () => ({
    progress: progress(),
    day: today(),
    seed: practiceSeed(),
    house: ownHouse(),
    asked,
  });
  function ask(next: Question | undefined): void {
    if (next) asked = [...asked, next];
    setQuestion(next);
  }
  let turn = 0;
  /** Asks the next question: at once when its kind is here, and else when that has come. */
  async function next(): Promise<void> {
    const own = ++turn;
    setAnswer('');
    setMarked(undefined);
    setFinal(false);
    const atOnce = ifHere(() => nextQuestionToPractise(pool(), sitting()));
    setComing(!atOnce);
    ask(atOnce?.done);
    if (!atOnce) {
      const later = await drawnOrLost(() => ({ question: nextQuestionToPractise(pool(), sitting()) }));
      if (!later || own !== turn) return; // something else was chosen meanwhile
      ask(later.question);
      setComing(false);
    }
    whenIdle(fetchFollowing);
  }
  /** Fetches the kind that will most likely be asked next, while the reader is at this one. */
  function fetchFollowing(): void {
    const following = nextKindToPractise(pool(), sitting());
    if (following !== undefined) fetchKinds([following]).catch(() => undefined); // it is told when it is asked for
  }
  const answerField = () => document.getElementById('practice-answer');
  /** The next question, with the focus where it is answered; its prompt describes that place. */
  function goOn(event: Event): void {
    void next().then(() => focusAfter(event, answerField));
  }
  /** Where the focus stays at the choice of what is asked, the question is said. */
  const say = () => announce('practice', () => question()?.prompt ?? 'No question fits this choice.');
  async function handIn(): Promise<void> {
    const asked = question();
    if (!asked || isDone()) return;
    const given = answer();
    const mark = await fetchMarker();
    if (!mark || question() !== asked || isDone()) return;
    const result = mark(asked, given);
    const isFirst = !isSecondTry();
    setMarked(result);
    if (result.verdict === 'unanswered' || result.verdict === 'unreadable') return;
    if (isFirst) keepAnswer(asked.kind, result.verdict, today()); // the first answer counts
    if (isFirst && result.verdict === 'wrong') return void queueMicrotask(() => answerField()?.focus());
    finish();
  }
  /** Shows the answer and its working. */
  function finish(): void {
    setFinal(true);
    queueMicrotask(() => nextButton?.focus());
  }
  function choose(chosen: string): Promise<void> {
    setTopic(topics.find((each) => each === chosen) ?? 'all');
    return next();
  }
  const load = async (file: File | undefined) => {
    if (!file) return;
    const read = await textOfFile(file, BIGGEST_FILE, 'a file of practice');
    if ('problem' in read) return void setSaid(read.problem);
    const wrong = loadProgress(read.text);
    setSaid(
      wrong.length === 0
        ? `Your practice is read from ${quotedGiven(file.name)}.`
        : `${quotedGiven(file.name)}: ${wrong.join(' ')}`,
    );
    void next();
  };
  const fromAddress = () => {
    const asks = new URLSearchParams(location.hash.slice(1));
    setNamed((asks.get('kinds') ?? '').split(',').filter((id) => kinds.some((kind) => kind.id === id)));
    const from = asks.get('stage') ?? '';
    setStage(/^[a-z]+$/.test(from) && topics.some((each) => each === from) ? from : '');
    const open = keptLesson();
    setLesson(open && stepNow(open).at === `practice/${location.hash}` ? open : undefined);
    return choose(asks.get('topic') ?? 'all');
  };
  onMount(() => {
    afterFrame(() => void liveLine()); // of which most questions speak
    afterFrame(() => void fromAddress()); // the page comes alive first
    addEventListener('hashchange', (event) => {
      void fromAddress().then(() => focusAfter(event, answerField));
    });
  });

  /** Said once nothing is left to ask: behind the answer that was the last, or before what is asked all the same. */
  const allAsked = () => (
    <Show when={areAllRight()}>
      <p class="lesson-way" role="status">
        That is all your {lesson() ? 'lesson asks' : 'first weeks ask here today'}.{' '}
        <a href={`../${backAt()}`}>{backSays()}</a>
        <Show when={lesson() && after()}>
          {(step) => (
            <a href={`../${step().at}`} onClick={() => keepLesson({ ...lesson()!, now: step().id })}>
              Next: {step().says}
            </a>
          )}
        </Show>
      </p>
    </Show>
  );
  const choices = () => (
    <form class="choose" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
      <div class="field">
        <label for="practice-topic">Practise</label>
        <select
          id="practice-topic"
          autocomplete="off"
          value={topic()}
          onChange={(event) => {
            setNamed([]);
            void choose(event.currentTarget.value).then(say);
          }}
        >
          <option value="all">everything, mixed</option>
          <For each={topics}>{(each) => <option value={each}>{topicTitles[each]}</option>}</For>
        </select>
      </div>
      <div class="field">
        <label for="practice-level">Level</label>
        <select
          id="practice-level"
          autocomplete="off"
          value={String(level())}
          onChange={(event) => {
            setLevel(levels.find((each) => String(each) === event.currentTarget.value) ?? 'all');
            void next().then(say);
          }}
        >
          <option value="all">all three</option>
          <For each={levels}>
            {(each) => <option value={String(each)}>{`${each}: ${levelTitles[each]}`}</option>}
          </For>
        </select>
      </div>
    </form>
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
          <Show when={!isDone()}>{allAsked()}</Show>
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
              {coming()
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
              <Show when={isDone()}>{allAsked()}</Show>
              <div id="practice-mark" aria-live="polite">
                <Show when={marked()}>
                  {(result) => <MarkView question={asked()} mark={result()} done={isDone()} />}
                </Show>
                <Show when={isSecondTry()}>
                  <SecondTry question={asked()} />
                </Show>
                <Show when={(isSecondTry() || isDone()) && passageOf(asked().kind, asked().topic)}>
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
      <section class="screen-only keep" aria-labelledby="keep-title">
        <h2 id="keep-title">Keep your practice</h2>
        <p>
          It is kept in this browser only, and sent nowhere. Save it to a file to take it to another machine.
        </p>
        <p class="actions">
          <button type="button" onClick={() => saveFile('practice.json', text(), 'application/json')}>
            Save to a file
          </button>{' '}
          <For each={mounted() ? practiceKeptAside() : []}>
            {(kept, i) => (
              <button
                type="button"
                onClick={() => saveFile('practice-kept-aside.json', kept, 'application/json')}
              >
                Save what was set aside{i() === 0 ? '' : `, ${i() + 1}`}
              </button>
            )}
          </For>
        </p>
        <div class="field">
          <FileField
            id="practice-file"
            label="Open practice from a file"
            accept=".json,application/json"
            saidBy="practice-file-said"
            open={load}
          />
        </div>
        <p role="status" id="practice-file-said">
          {said()}
        </p>
      </section>
    </>
  );
}
