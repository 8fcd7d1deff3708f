// A trainer's own sheet taken on the screen, from its link or file: marked at once, at the end or never shown, as its trainer chose.
import { createEffect, createMemo, createSignal, For, lazy, onMount, Show } from 'solid-js';
import { formatCount, formatNumber } from '../core/format.ts';
import { lineReady } from '../exercises/own-line.ts';
import { askingOwn, marksIn, ownScore, type OwnAsked, type OwnSheet } from '../exercises/own/own-sheet.ts';
import { LONGEST_OWN_SHEET, ownSheetMark, readOwnSheet } from '../exercises/own/own-text.ts';
import { answersCode, resultCode } from '../exercises/result.ts';
import { isNumberQuestion } from '../exercises/question.ts';
import { newsOf } from '../exercises/sheet-news.ts';
import { pointsOf, type Mark } from '../exercises/verdict.ts';
import { keepAside, keepText, keptText, storageKey } from '../browser/browser-store.ts';
import { focusAfter } from './focus-after.ts';
import { handedInHere, type HandedIn } from './handed-in-here.ts';
import { HandIn } from './HandIn.tsx';
import { fetchMarker, markerHere } from './fetched-marker.ts';
import { NumberField } from './NumberField.tsx';
import { OtherVersion } from './OtherVersion.tsx';
import { TextFileField } from './TextFileField.tsx';
import { readOwnLink } from './own-address.ts';
import { localDay, readTaken, freshTaken, type TakenOwnSheet } from './own-taken.ts';
import { kindsById } from './own-kinds.ts';
import { TakeAgain, MINUTE_MS, NameOnSheet, ResultCode, timeAllowed } from './TakeParts.tsx';
import { drawnInSteps } from './use-kinds.ts';

// What shows questions comes once a sheet is open.
const MarkView = lazy(() => import('./MarkView.tsx').then((part) => ({ default: part.MarkView })));
const QuestionView = lazy(() =>
  import('./QuestionView.tsx').then((part) => ({ default: part.QuestionView })),
);

export default function TakeOwnSheet(props: { readonly list: string }) {
  const [sheet, setSheet] = createSignal<OwnSheet>();
  const [version, setVersion] = createSignal<number>();
  const [chosen, setChosen] = createSignal(1);
  const [other, setOther] = createSignal<HandedIn & { readonly wanted: number }>();
  const [isWrong, setWrong] = createSignal(false);
  const [asked, setAsked] = createSignal<readonly OwnAsked[]>([]);
  const [work, setWork] = createSignal<TakenOwnSheet>(freshTaken(0));
  const [problem, setProblem] = createSignal<string>();
  const [said, setSaid] = createSignal('');
  const [ready, setReady] = createSignal(false);
  let heading: HTMLHeadingElement | undefined;
  let result: HTMLDivElement | undefined;
  let isHeld = false; // true while answers that cannot be read could not be set aside: nothing is written over them

  const mark = createMemo(() => (sheet() ? ownSheetMark(sheet()!) : ''));
  const keyAt = (at: number) => storageKey(`own-taken/${mark()}/${at}`);
  const key = () => keyAt(version() ?? 1);
  const open = async (of: OwnSheet, at: number, name?: string) => {
    const before = name === undefined ? handedInHere(keyAt, at) : undefined;
    setOther(before && { ...before, wanted: at });
    if (before) return;
    await lineReady(of.house);
    const [kinds] = await Promise.all([kindsById(props.list, of.own), QuestionView.preload(), MarkView.preload()]).catch(() => [undefined]); // prettier-ignore
    const drawn = kinds && (await drawnInSteps(askingOwn(of, at, kinds), []));
    if (!kinds) setProblem('A part of the book did not come; load the page again.');
    if (!drawn || sheet() !== of) return;
    setAsked(drawn);
    setVersion(at);
    const text = keptText(key());
    const kept = text === null ? freshTaken(drawn.length, Date.now()) : readTaken(text, drawn.length);
    isHeld = kept === undefined && !keepAside(`${key()}-kept-aside`, text!);
    if (kept === undefined) setSaid('Answers to this sheet were kept in this browser and cannot be read; they are set aside in it. Please start again.'); // prettier-ignore
    setWork(kept ?? freshTaken(drawn.length, Date.now()));
    if (name !== undefined) change({ name });
  };
  const take = (of: OwnSheet, at?: number) => {
    setProblem(undefined);
    setVersion(undefined);
    setOther(undefined);
    setSheet(of);
    if (at !== undefined || of.versions === 1) void open(of, at ?? 1);
  };
  const read = async () => {
    const found = await readOwnLink(location.hash);
    if (typeof found === 'string') setProblem(found);
    else if (found) take(found.sheet, found.version);
    setReady(true);
  };
  onMount(() => {
    void read();
    addEventListener('hashchange', () => void read());
    // Another tab with the same sheet: what is answered there stands here as well.
    addEventListener('storage', ({ key: changed, newValue }) => {
      if (version() === undefined || newValue === null || changed !== key()) return;
      const theirs = readTaken(newValue, asked().length);
      if (theirs) setWork(theirs);
      else setSaid('Another tab wrote answers to this sheet that cannot be read. Nothing was changed here.');
    });
  });
  const change = (part: Partial<TakenOwnSheet>) => {
    setWork({ ...work(), ...part });
    if (isHeld || !keepText(key(), JSON.stringify(work())))
      setSaid('This browser does not keep your answers; hand in before you close the page.');
  };
  createEffect(() => (work().handedIn > 0 || work().done.includes(true)) && void fetchMarker());
  const markOf = (place: number): Mark | undefined =>
    markerHere()?.(asked()[place]!.question, work().answers[place] ?? '');
  const asksFor = () => asked().map(({ question }) => (isNumberQuestion(question) ? question.of : undefined));
  let told = ''; // the answer whose unit was told to be none that is read
  const markOne = async (place: number) => {
    const given = work().answers[place] ?? '';
    const only = work().answers.map((each, i) => (i === place ? each : ''));
    const [says] = await import('../exercises/unit-not-read.ts').then(
      ({ unitsNotRead }) => unitsNotRead(only, asksFor()),
      () => [],
    );
    if (says !== undefined && told !== given) {
      told = given;
      return void setSaid(`${says} Press again to have it marked as it is.`);
    }
    setSaid('');
    change({ done: work().done.map((each, i) => each || i === place) });
  };
  const isHandedIn = () => work().handedIn > 0 && markerHere() !== undefined;
  const marks = () => asked().flatMap((_, i) => markOf(i) ?? []);
  const score = createMemo(
    () =>
    ownScore(sheet() ?? { passMark: 0 }, asked().map(({ item }) => item.marks), marks().map(({ verdict }) => pointsOf(verdict))), // prettier-ignore
  );
  const code = () =>
    resultCode({
      sheet: mark(),
      version: version()!,
      name: work().name,
      marks: marks(),
      day: localDay(work().handedIn),
      attempt: work().attempt ?? 1,
      answers: answersCode(work().answers),
    });
  const again = () => {
    change({ ...freshTaken(asked().length, Date.now()), name: work().name, attempt: (work().attempt ?? 1) + 1 });
    heading?.focus();
  }; // prettier-ignore
  const isShown = (place: number) =>
    sheet()!.shows === 'never'
      ? false
      : isHandedIn() || (sheet()!.shows === 'at once' && work().done[place]!);
  const isDone = (place: number) => work().handedIn > 0 || work().done[place]!;
  const minutesTaken = () => Math.max(1, Math.round((work().handedIn - work().begun) / MINUTE_MS));
  const isLate = () =>
    sheet()!.minutes > 0 && work().handedIn > work().begun + (sheet()!.minutes + 0.5) * MINUTE_MS;

  return (
    <section class="taking" aria-label="The sheet">
      <Show when={problem()}>
        <p class="problem" role="alert">
          {problem()}
        </p>
      </Show>
      <Show when={ready() && !sheet()}>
        <div class="calculator">
          <p>This page opens a sheet from the link, or the file, that your trainer gave you.</p>
          <TextFileField
            id="take-own-file"
            label="A sheet from a file"
            most={LONGEST_OWN_SHEET}
            what="a sheet"
            take={(text) => {
              const found = readOwnSheet(text);
              if (typeof found === 'string') setProblem(found);
              else if (found.notes === undefined) setProblem('This sheet was not drawn before it was saved.');
              else take(found);
            }}
            tell={setProblem}
          />
        </div>
      </Show>
      <Show when={other()}>
        {(before) => (
          <OtherVersion
            of={before()}
            version={before().wanted}
            goOn={(name) => void open(sheet()!, before().wanted, name).then(() => heading?.focus())}
          />
        )}
      </Show>
      <Show when={sheet() && version() === undefined && !other() && sheet()}>
        {(now) => (
          <form class="calculator" onSubmit={(event) => event.preventDefault()}>
            <h2>{now().title || 'A sheet'}: which version is yours?</h2>
            <p>
              {now().items.length} questions, {marksIn(now())} marks
              {now().minutes > 0 ? `, ${formatCount(now().minutes, 'minute')} from when you begin` : ''}.
            </p>
            <NumberField
              id="take-version"
              label={`Your version, 1 to ${now().versions}`}
              kind="count"
              range={[1, now().versions]}
              step={1}
              value={chosen()}
              take={(value) => void setChosen(Math.round(value))}
              onState={setWrong}
            />
            <p class="actions">
              <button
                type="button"
                disabled={isWrong()}
                onClick={(event) => {
                  if (location.hash !== '')
                    history.replaceState(null, '', `${location.hash.split('&')[0]}&version=${chosen()}`); // a reload opens the same version
                  void open(now(), chosen()).then(() =>
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
            {sheet()!.title || 'A sheet'}, version {version()}
          </h2>
          <p class="own-time">
            {timeAllowed(work().begun, sheet()!.minutes)}{' '}
            {sheet()!.shows === 'never' ? 'You hand in a code; what was right, your trainer tells you.' : ''}
          </p>
          <Show when={isHandedIn() && sheet()!.shows !== 'never'}>
            <For each={newsOf(sheet()!, asked())}>{(each) => <p class="remark">{each}</p>}</For>
          </Show>
          <Show when={isHandedIn()}>
            <div
              class="handed-in"
              role="status"
              tabindex="-1"
              ref={(box) => {
                result = box;
                queueMicrotask(() => result?.focus());
              }}
            >
              <p class="verdict">
                <Show when={sheet()!.shows !== 'never'} fallback={<b>Handed in.</b>}>
                  <b>
                    {formatNumber(score().got, score().got % 1 === 0 ? 0 : 1)} of {score().of} marks
                    {score().isPass === undefined ? '' : score().isPass ? ': a pass' : ': not yet a pass'}.
                  </b>
                </Show>{' '}
                {minutesTaken()} {minutesTaken() === 1 ? 'minute' : 'minutes'} after the beginning
                {isLate() ? ', which is after the time allowed' : ''}. Your result code:
              </p>
              <ResultCode code={code()} say={setSaid} />
              <TakeAgain attempt={work().attempt ?? 1} again={again} />
            </div>
          </Show>
          <NameOnSheet
            name={work().name}
            handedIn={work().handedIn > 0}
            change={(name) => change({ name })}
          />
          <ol class="questions">
            <For each={asked()}>
              {({ question, item }, i) => (
                <li>
                  <p class="about">
                    {item.marks} {item.marks === 1 ? 'mark' : 'marks'}
                  </p>
                  <QuestionView
                    question={question}
                    id={`answer-${i() + 1}`}
                    answer={work().answers[i()] ?? ''}
                    done={isDone(i())}
                    onAnswer={(text) =>
                      change({ answers: work().answers.map((each, j) => (j === i() ? text : each)) })
                    }
                  />
                  <Show when={sheet()!.shows === 'at once' && !isDone(i())}>
                    <p class="actions">
                      <button
                        type="button"
                        disabled={(work().answers[i()] ?? '').trim() === ''}
                        onClick={() => void markOne(i())}
                      >
                        Mark question {i() + 1}
                      </button>
                    </p>
                  </Show>
                  <Show when={isShown(i()) && markOf(i())}>
                    {(mark) => <MarkView question={question} mark={mark()} done />}
                  </Show>
                </li>
              )}
            </For>
          </ol>
          <Show when={work().handedIn === 0}>
            <HandIn
              answers={work().answers}
              asked={asksFor()}
              says="Hand in"
              handIn={() => change({ handedIn: Date.now() })}
            />
          </Show>
          <p role="status">{said()}</p>
        </form>
      </Show>
    </section>
  );
}
