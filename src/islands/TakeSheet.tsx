// A sheet taken on the screen: answers are kept while one works; handing in marks them and gives the result code.
import { createEffect, createMemo, createSignal, For, onMount, Show } from 'solid-js';
import { pointsOf, type Mark } from '../exercises/verdict.ts';
import { kindsOf } from '../exercises/kinds/fetched-kinds.ts';
import { isNumberQuestion } from '../exercises/question.ts';
import { answersCode, MOST_ATTEMPTS, resultCode } from '../exercises/result.ts';
import { lineReady } from '../exercises/own-line.ts';
import { readSheetLink, sheetLink } from '../exercises/sheet-link.ts';
import { keepAside, keepText, keptText, storageKey } from '../browser/browser-store.ts';
import { BY_AN_OLDER_EDITION, newsOf } from '../exercises/sheet-news.ts';
import {
  askingSheet,
  sheetMark,
  firstKinds,
  type AskedQuestion,
  type Worksheet,
} from '../exercises/worksheet.ts';
import { topicTitles } from '../exercises/topics.ts';
import { focusAfter } from './focus-after.ts';
import { handedInHere, type HandedIn } from './handed-in-here.ts';
import { HandIn } from './HandIn.tsx';
import { fetchMarker, markerHere } from './fetched-marker.ts';
import { MarkView } from './MarkView.tsx';
import { NumberField } from './NumberField.tsx';
import { OtherVersion } from './OtherVersion.tsx';
import { QuestionView } from './QuestionView.tsx';
import { TakeAgain, NameOnSheet, ResultCode } from './TakeParts.tsx';
import { today } from './today.ts';
import { drawnInSteps } from './use-kinds.ts';

/** Answers on their way, kept under the sheet's name and version. */
interface Kept {
  readonly name: string;
  readonly answers: readonly string[];
  readonly handedIn: boolean;
  /** The day it was handed in; older builds did not keep it. */
  readonly day?: string;
  /** 1 for the first time; left out it is that. */
  readonly attempt?: number;
}
const keyOfAnswers = (sheet: Worksheet, version: number) =>
  storageKey(`sheet/${sheetMark(sheetLink(sheet))}/${version}`);

const freshAnswers = (count: number): Kept => ({
  name: '',
  answers: Array.from({ length: count }, () => ''),
  handedIn: false,
});

/** The answers that a text keeps; undefined when it is damaged. */
function answersIn(text: string, count: number): Kept | undefined {
  try {
    const { name, answers, handedIn, day, attempt } = (JSON.parse(text) ?? {}) as Partial<Kept>;
    const isWhole =
      typeof name === 'string' &&
      Array.isArray(answers) &&
      answers.length === count &&
      answers.every((each) => typeof each === 'string');
    const isAttempt = Number.isInteger(attempt) && attempt! >= 1 && attempt! <= MOST_ATTEMPTS;
    return isWhole
      ? { name, answers, handedIn: handedIn === true, ...(typeof day === 'string' && { day }), ...(isAttempt && { attempt: attempt! }) }
      : undefined; // prettier-ignore
  } catch {
    return undefined;
  }
}

export default function TakeSheet(props: { readonly list: string }) {
  const kinds = kindsOf(props.list);
  const [sheet, setSheet] = createSignal<Worksheet>();
  const [version, setVersion] = createSignal<number>();
  const [isWrongVersion, setWrongVersion] = createSignal(false);
  const [asked, setAsked] = createSignal<readonly AskedQuestion[]>([]);
  const questions = createMemo(() => asked().map(({ question }) => question));
  const [work, setWork] = createSignal<Kept>({ name: '', answers: [], handedIn: false });
  const [problem, setProblem] = createSignal<string>();
  const [ready, setReady] = createSignal(false);
  const [said, setSaid] = createSignal('');
  const [chosenVersion, setChosen] = createSignal(1);
  const [other, setOther] = createSignal<HandedIn & { readonly wanted: number }>();

  let heading: HTMLHeadingElement | undefined;
  let isHeld = false; // true while answers that cannot be read could not be kept aside: nothing is written over them

  function takeKept(key: string): void {
    const text = keptText(key);
    const kept = text === null ? freshAnswers(questions().length) : answersIn(text, questions().length);
    isHeld = kept === undefined && !keepAside(`${key}-kept-aside`, text!);
    if (kept === undefined)
      setSaid(
        version() === undefined
          ? 'Answers to this sheet were kept in this browser and cannot be read; they stay in it, under another name, for anyone who can mend them. Please start again.'
          : 'Another tab wrote answers to this sheet that cannot be read; they stay in this browser, under another name. Nothing was changed here.',
      );
    if (kept || version() === undefined) setWork(kept ?? freshAnswers(questions().length));
  }
  async function open(version: number, name?: string): Promise<void> {
    const now = sheet()!;
    const before = name === undefined ? handedInHere((each) => keyOfAnswers(now, each), version) : undefined;
    setOther(before && { ...before, wanted: version });
    if (before) return;
    await lineReady(now.house);
    const drawn = await drawnInSteps(askingSheet(now, version, kinds), firstKinds(now, kinds));
    if (!drawn || sheet() !== now) return; // another link was opened meanwhile
    setAsked(drawn);
    setSaid('');
    takeKept(keyOfAnswers(now, version));
    setVersion(version);
    if (name !== undefined) change({ name });
    history.replaceState(null, '', sheetLink(now, version)); // a reload opens the same version
  }
  function read(): void {
    const reading = readSheetLink(location.hash);
    setProblem(reading && 'problem' in reading ? reading.problem : undefined);
    setVersion(undefined);
    setOther(undefined);
    setSheet(reading && 'sheet' in reading ? reading.sheet : undefined);
    if (reading && 'sheet' in reading && (reading.version !== undefined || reading.sheet.versions === 1))
      void open(reading.version ?? 1);
    setReady(true);
  }
  onMount(() => {
    read();
    addEventListener('hashchange', read);
    // Another tab with the same sheet: what is answered there stands here as well.
    addEventListener('storage', ({ key, newValue }) => {
      if (version() !== undefined && newValue !== null && key === keyOfAnswers(sheet()!, version()!))
        takeKept(key);
    });
  });
  const change = (part: Partial<Kept>) => {
    setWork({ ...work(), ...part });
    if (isHeld || !keepText(keyOfAnswers(sheet()!, version()!), JSON.stringify(work())))
      setSaid('This browser does not keep your answers; hand in before you close the page.');
  };
  const marks = (): readonly Mark[] =>
    questions().flatMap((question, i) => markerHere()?.(question, work().answers[i] ?? '') ?? []);
  /** Handed in, and here is what marks. */
  const isMarked = () => work().handedIn && markerHere() !== undefined;
  createEffect(() => work().handedIn && void fetchMarker());
  const points = () => marks().reduce((sum, { verdict }) => sum + pointsOf(verdict), 0);
  const code = () =>
    resultCode({
      sheet: sheetMark(sheetLink(sheet()!)),
      version: version()!,
      name: work().name,
      marks: marks(),
      ...(work().day === undefined ? {} : { day: work().day! }),
      attempt: work().attempt ?? 1,
      answers: answersCode(work().answers),
    });
  const again = () => {
    setWork({ ...freshAnswers(questions().length), name: work().name, attempt: (work().attempt ?? 1) + 1 });
    change({});
    heading?.focus();
  };

  return (
    <section class="taking" aria-label="The sheet">
      <Show when={problem()}>
        <p class="problem" role="alert">
          {problem()}
        </p>
      </Show>
      <Show when={ready() && !sheet() && !problem()}>
        <p>
          This page opens a sheet from the link that your trainer gave you. To practise without one, go to{' '}
          <a href="../practice/">Practice</a>; to make one, to <a href="../sheets/">Sheets</a>.
        </p>
      </Show>
      <Show when={other()}>
        {(before) => (
          <OtherVersion
            of={before()}
            version={before().wanted}
            goOn={(name) => void open(before().wanted, name).then(() => heading?.focus())}
          />
        )}
      </Show>
      <Show when={sheet() && version() === undefined && !other() && sheet()}>
        {(now) => (
          <form class="calculator" onSubmit={(event) => event.preventDefault()}>
            <h2>Which version is yours?</h2>
            <NumberField
              id="take-version"
              label={`Your version, 1 to ${now().versions}`}
              kind="count"
              range={[1, now().versions]}
              step={1}
              value={chosenVersion()}
              take={(value) => void setChosen(Math.round(value))}
              onState={setWrongVersion}
            />
            <p class="actions">
              <button
                type="button"
                disabled={isWrongVersion()}
                onClick={(event) => {
                  void open(chosenVersion()).then(() =>
                    focusAfter(event, () => heading ?? document.getElementById('other-version')),
                  );
                }}
              >
                Begin
              </button>
            </p>
          </form>
        )}
      </Show>
      <Show when={version() !== undefined}>
        <form class="calculator asking" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
          <h2 tabindex="-1" ref={heading}>
            Version {version()}
          </h2>
          {/* What has moved tells answers, so it waits until they are handed in. */}
          <For
            each={
              work().handedIn
                ? newsOf(sheet()!, asked())
                : sheet()!.generator === 1
                  ? [BY_AN_OLDER_EDITION]
                  : []
            }
          >
            {(each) => <p class="remark">{each}</p>}
          </For>
          <Show when={isMarked()}>
            <div
              class="handed-in"
              role="status"
              tabindex="-1"
              ref={(box) => queueMicrotask(() => box.focus())}
            >
              <p class="verdict">
                <b>
                  {points()} of {questions().length} points.
                </b>{' '}
                Your result code:
              </p>
              <ResultCode code={code()} say={setSaid} />
              <TakeAgain attempt={work().attempt ?? 1} again={again} />
            </div>
          </Show>
          <NameOnSheet name={work().name} handedIn={work().handedIn} change={(name) => change({ name })} />
          <ol class="questions">
            <For each={questions()}>
              {(question, i) => (
                <li>
                  <p class="about">
                    {topicTitles[question.topic]}, level {question.level}
                  </p>
                  <QuestionView
                    question={question}
                    id={`answer-${i() + 1}`}
                    answer={work().answers[i()] ?? ''}
                    done={work().handedIn}
                    onAnswer={(text) =>
                      change({ answers: work().answers.map((each, j) => (j === i() ? text : each)) })
                    }
                  />
                  <Show when={isMarked()}>
                    <MarkView question={question} mark={marks()[i()]!} done />
                  </Show>
                </li>
              )}
            </For>
          </ol>
          <Show when={!work().handedIn}>
            <HandIn
              answers={work().answers}
              asked={questions().map((each) => (isNumberQuestion(each) ? each.of : undefined))}
              says="Hand in and mark"
              handIn={() => change({ handedIn: true, day: today() })}
            />
          </Show>
          <p role="status">{said()}</p>
        </form>
      </Show>
    </section>
  );
}
