// A sealed sheet taken on the screen: its questions as text, no marks, and answers that go back sealed to the trainer's key.
import { createSignal, For, lazy, onMount, Show } from 'solid-js';
import { keepTogether } from '../core/keep-together.ts';
import { letterOfPlace } from '../exercises/letters.ts';
import { handInInside, handInText } from '../exercises/sealed/hand-in.ts';
import { aboutHandIn, LONGEST_SEALED, readSealed, textAsked, type SealedQuestion, type SealedSheet } from '../exercises/sealed/sealed-sheet.ts'; // prettier-ignore
import { digestOf, sealedTo } from '../handing/sealing.ts';
import { canSign } from '../handing/signing.ts';
import { keepAside, keepText, keptText, storageKey } from '../browser/browser-store.ts';
import { toBase64url } from '../house/base64url.ts';
import { oneLine } from '../exercises/own/one-line.ts';
import { focusAfter } from './focus-after.ts';
import { handedInHere, type HandedIn } from './handed-in-here.ts';
import { HandIn } from './HandIn.tsx';
import { TextFileField } from './TextFileField.tsx';
import { OtherVersion } from './OtherVersion.tsx';
import { localDay, freshTaken, readTaken, timeText, type TakenOwnSheet } from './own-taken.ts';
import { saveFile } from './save-file.ts';
import { readSealedLink } from './sealed-address.ts';
import { NameOnSheet, ResultCode, timeAllowed } from './TakeParts.tsx';

const Chart = lazy(() => import('./Chart.tsx').then((part) => ({ default: part.Chart })));

function Answer(props: {
  readonly question: SealedQuestion;
  readonly id: string;
  readonly answer: string;
  readonly done: boolean;
  readonly onAnswer: (text: string) => void;
}) {
  const place = (i: number) => props.answer.indexOf(letterOfPlace(i));
  const lines = () => props.question.lines ?? [];
  return (
    <div class="question">
      <p class="prompt" id={`${props.id}-prompt`}>
        {keepTogether(props.question.prompt)}
      </p>
      <Show when={props.question.curve}>{(curve) => <Chart of={curve()} opened={curve()} />}</Show>
      <Show when={props.question.form === 'number'}>
        <div class="field answer">
          <label for={props.id}>{props.question.ask}</label>
          <input
            id={props.id}
            class="words"
            type="text"
            autocomplete="off"
            maxlength="200"
            aria-describedby={`${props.id}-prompt`}
            readOnly={props.done}
            value={props.answer}
            onInput={(event) => props.onAnswer(event.currentTarget.value)}
          />
        </div>
      </Show>
      <Show when={props.question.form === 'choice'}>
        <fieldset class="options" aria-describedby={`${props.id}-prompt`}>
          <legend>{props.question.ask}</legend>
          <For each={lines()}>
            {(line, i) => (
              <label class="tick">
                <input
                  type="radio"
                  name={props.id}
                  autocomplete="off"
                  disabled={props.done}
                  checked={props.answer === letterOfPlace(i())}
                  onChange={() => props.onAnswer(letterOfPlace(i()))}
                />
                <span>
                  <b>{letterOfPlace(i())}</b> {keepTogether(line)}
                </span>
              </label>
            )}
          </For>
        </fieldset>
      </Show>
      <Show when={props.question.form === 'order'}>
        <fieldset class="options" aria-describedby={`${props.id}-prompt`}>
          <legend>Press the steps in order; press one again to take it back.</legend>
          <For each={lines()}>
            {(line, i) => (
              <button
                type="button"
                class="step"
                disabled={props.done}
                aria-pressed={place(i()) >= 0}
                onClick={() =>
                  props.onAnswer(
                    place(i()) < 0
                      ? props.answer + letterOfPlace(i())
                      : props.answer.replace(letterOfPlace(i()), ''),
                  )
                }
              >
                <b>{letterOfPlace(i())}</b> <span>{line}</span>
                <span class="place">{place(i()) < 0 ? '' : place(i()) + 1}</span>
              </button>
            )}
          </For>
        </fieldset>
      </Show>
    </div>
  );
}

export default function TakeSealed() {
  const [sheet, setSheet] = createSignal<SealedSheet>();
  const [version, setVersion] = createSignal<number>();
  const [work, setWork] = createSignal<TakenOwnSheet>(freshTaken(0));
  const [code, setCode] = createSignal('');
  const [other, setOther] = createSignal<HandedIn & { readonly wanted: number }>();
  const [problem, setProblem] = createSignal<string>();
  const [said, setSaid] = createSignal('');
  const [ready, setReady] = createSignal(false);
  let heading: HTMLHeadingElement | undefined;
  let sent: HTMLDivElement | undefined;
  let isHeld = false; // true while answers that cannot be read could not be set aside: nothing is written over them

  const questions = () => sheet()?.versions.find((each) => each.version === version())?.questions ?? [];
  const keyAt = (at: number) => storageKey(`sealed-taken/${sheet()!.id}/${at}`);
  const key = () => keyAt(version()!);
  const seal = async () => {
    const [of, at, { name, answers, begun, handedIn, attempt = 1 }] = [sheet()!, version()!, work()];
    try {
      const inside = handInInside({
        sheet: of.id, version: at, name: oneLine(name).slice(0, 60).trim(), answers: answers.map(oneLine),
        begun, handedIn, day: localDay(handedIn), attempt, seen: await digestOf(textAsked(questions())),
      }); // prettier-ignore
      const bytes = await sealedTo(of.to, aboutHandIn(of.id), new TextEncoder().encode(inside));
      setCode(handInText(of.id, toBase64url(bytes)));
    } catch {
      setSaid(
        'The answers could not be sealed: the key in this sheet is damaged. Write your answers on paper.',
      );
    }
  };
  const open = (of: SealedSheet, at: number, name?: string) => {
    const before = name === undefined ? handedInHere(keyAt, at) : undefined;
    setOther(before && { ...before, wanted: at });
    if (before) return;
    setVersion(at);
    const count = questions().length;
    const text = keptText(key());
    const kept = text === null ? freshTaken(count, Date.now()) : readTaken(text, count);
    isHeld = kept === undefined && !keepAside(`${key()}-kept-aside`, text!);
    if (kept === undefined) setSaid('Answers to this sheet were kept in this browser and cannot be read; they are set aside in it. Please start again.'); // prettier-ignore
    setWork(kept ?? freshTaken(count, Date.now()));
    if (name !== undefined) change({ name });
    if (sheet() === of && work().handedIn > 0) void seal();
  };
  const take = (found: SealedSheet | string | undefined) => {
    setProblem(typeof found === 'string' ? found : undefined);
    if (typeof found !== 'object') return;
    setVersion(undefined);
    setOther(undefined);
    setCode('');
    setSheet(found);
    if (found.versions.length === 1) open(found, found.versions[0]!.version);
  };
  const read = async () => {
    take(canSign() ? await readSealedLink(location.hash) : 'This page came by an address that browsers do not trust with keys (plain http). Open it by https, or write your answers on paper.'); // prettier-ignore
    setReady(true);
  };
  onMount(() => {
    void read();
    addEventListener('hashchange', () => void read());
    addEventListener('storage', ({ key: changed, newValue }) => {
      if (version() === undefined || newValue === null || changed !== key()) return;
      const theirs = readTaken(newValue, questions().length);
      if (!theirs) return void setSaid('Another tab wrote answers to this sheet that cannot be read. Nothing was changed here.'); // prettier-ignore
      setWork(theirs);
      if (theirs.handedIn > 0) void seal();
    });
  });
  const change = (part: Partial<TakenOwnSheet>) => {
    setWork({ ...work(), ...part });
    if (isHeld || !keepText(key(), JSON.stringify(work())))
      setSaid('This browser does not keep your answers; hand in before you close the page.');
  };
  /** Seals what was answered, and shows what is to be sent: the questions may be many screens long. */
  const handIn = async () => {
    change({ handedIn: Date.now() });
    await seal();
    sent?.scrollIntoView({ block: 'start' });
    sent?.focus({ preventScroll: true });
  };

  return (
    <section class="taking" aria-label="The sheet">
      <Show when={problem()}>
        <p class="problem" role="alert">
          {problem()}
        </p>
      </Show>
      <Show when={ready() && !sheet()}>
        <div class="calculator">
          <p>This page opens a sealed sheet from the link, or the file, that your trainer gave you.</p>
          <TextFileField
            id="take-sealed-file"
            label="A sealed sheet from a file"
            most={LONGEST_SEALED}
            what="a sealed sheet"
            take={(text) => take(readSealed(text))}
            tell={take}
          />
        </div>
      </Show>
      <Show when={other()}>
        {(before) => (
          <OtherVersion
            of={before()}
            version={before().wanted}
            goOn={(name) => {
              open(sheet()!, before().wanted, name);
              heading?.focus();
            }}
          />
        )}
      </Show>
      <Show when={version() === undefined && !other() && sheet()}>
        {(now) => (
          <form class="calculator" onSubmit={(event) => event.preventDefault()}>
            <h2>{now().title || 'A sealed sheet'}: which version is yours?</h2>
            <p class="actions">
              <For each={now().versions}>
                {(each) => (
                  <button
                    type="button"
                    onClick={(event) => {
                      open(now(), each.version);
                      focusAfter(event, () => heading ?? document.getElementById('other-version'));
                    }}
                  >
                    Version {each.version}
                  </button>
                )}
              </For>
            </p>
          </form>
        )}
      </Show>
      <Show when={version() !== undefined}>
        <form class="calculator asking" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
          <h2 tabindex="-1" ref={heading}>
            {sheet()!.title || 'A sealed sheet'}, version {version()}
          </h2>
          <p class="own-time">
            {timeAllowed(work().begun, sheet()!.minutes)} This sheet holds no answers. Yours go back sealed,
            and your trainer marks them.
          </p>
          <Show when={code() !== '' && work().handedIn > 0}>
            <div class="handed-in sealed-code" role="status" tabindex="-1" ref={sent}>
              <p class="verdict">
                <b>Handed in at {timeText(work().handedIn)}.</b> Send this text to your trainer, all of it:
              </p>
              <ResultCode code={code()} say={setSaid} />
              <p class="actions">
                <button
                  type="button"
                  onClick={() => saveFile('hand-in.txt', code(), 'text/plain;charset=utf-8')}
                >
                  Save it to a file
                </button>
              </p>
              <p class="small">For a second attempt ask your trainer for another version.</p>
            </div>
          </Show>
          <NameOnSheet
            name={work().name}
            handedIn={work().handedIn > 0}
            change={(name) => change({ name })}
          />
          <ol class="questions">
            <For each={questions()}>
              {(question, i) => (
                <li>
                  <p class="about">
                    {question.marks} {question.marks === 1 ? 'mark' : 'marks'}
                  </p>
                  <Answer
                    question={question}
                    id={`answer-${i() + 1}`}
                    answer={work().answers[i()] ?? ''}
                    done={work().handedIn > 0}
                    onAnswer={(text) =>
                      change({ answers: work().answers.map((each, j) => (j === i() ? text : each)) })
                    }
                  />
                </li>
              )}
            </For>
          </ol>
          <Show when={work().handedIn === 0}>
            <HandIn
              answers={work().answers}
              asked={questions().map(({ form, ask }) => (form === 'number' ? { ask } : undefined))}
              says="Seal and hand in"
              waits={work().name.trim() === '' ? 'Write your name first.' : undefined}
              handIn={() => void handIn()}
            />
          </Show>
          <p role="status">{said()}</p>
        </form>
      </Show>
    </section>
  );
}
