// The fault desk: one complaint, readings that each cost time, a cause and a first thing to do, and what the readings said.
import { createEffect, createMemo, createSignal, For, onCleanup, onMount, Show, untrack } from 'solid-js';
import { unwrap } from 'solid-js/store';
import { wasGiven } from '../core/quoted-given.ts';
import { isRefusal } from '../core/refusal.ts';
import {
  readingInWords,
  complaintOf,
  drawFault,
  valueInWords,
  type FaultCase,
  type ShownReading,
} from '../fault/draw.ts';
import { readDone, wasShown, withDone, type CaseDone } from '../fault/kept.ts';
import { faultOfLink } from '../fault/link.ts';
import { readingsHad, markFault, type FaultMark } from '../fault/mark.ts';
import { minutes } from '../fault/minutes.ts';
import { keepAside, keepText, keptText, storageKey } from '../browser/browser-store.ts';
import { useHouse } from '../browser/house-store.ts';
import { codeOfHouse } from '../shift/link.ts';
import { isSeed, SEEDS } from '../shift/seed.ts';
import { announce } from './announce.ts';
import { FaultResult } from './FaultResult.tsx';
import { today } from './today.ts';

const KEY = storageKey('faults');

export default function FaultDesk(props: { readonly sources: Readonly<Record<string, string>> }) {
  const { mounted, line, name } = useHouse();
  const [typed, setTyped] = createSignal('1');
  const [now, setNow] = createSignal<FaultCase>();
  const [asked, setAsked] = createSignal<readonly string[]>([]);
  const [cause, setCause] = createSignal('');
  const [first, setFirst] = createSignal('');
  const [mark, setMark] = createSignal<FaultMark>();
  const [problem, setProblem] = createSignal('');
  const [linked, setLinked] = createSignal<number>(); // the case of the address, until it is opened
  const [isAgain, setIsAgain] = createSignal(false); // the answer to the case was shown before
  const [house, setHouse] = createSignal(''); // the code of the house that it was drawn in
  const [whose, setWhose] = createSignal('');
  const [done, setDone] = createSignal<readonly CaseDone[]>([]);
  let title: HTMLHeadingElement | undefined;
  let isHeld = false; // true while what was kept can neither be read nor set aside

  const firsts = createMemo(() => [...(now()?.bench.firsts ?? [])].sort((a, b) => (a.says < b.says ? -1 : 1)));
  const groups = createMemo(() => {
    const causes = now()?.bench.causes ?? [];
    return [...new Set(causes.map(({ group }) => group))].map((name) => ({ name, causes: causes.filter(({ group }) => group === name) }));
  });
  const had = () => readingsHad(now()!, asked()).filter(({ minutes }) => minutes > 0);
  const left = () => now()!.readings.filter(({ id, minutes }) => minutes > 0 && !asked().includes(id));
  const spent = () => had().reduce((sum, { minutes }) => sum + minutes, 0);

  const look = () => {
    const found = faultOfLink(location.hash);
    if (typeof found === 'number') setLinked(found);
    else if (found) setProblem(found.problem);
  };
  createEffect(() => {
    const seed = mounted() ? linked() : undefined;
    if (seed === undefined) return;
    setLinked(undefined);
    untrack(() => begin(String(seed)));
  });
  onMount(() => {
    look();
    addEventListener('hashchange', look);
    onCleanup(() => removeEventListener('hashchange', look));
    readKept();
  });
  /** What this browser keeps, another tab's answers among it. */
  function readKept(): void {
    if (isHeld) return;
    const text = keptText(KEY);
    if (text === null) return;
    const read = readDone(text);
    isHeld = read === undefined && !keepAside(storageKey('faults-kept-aside'), text);
    if (read && read.length >= done().length) setDone(read); // a browser that keeps no more goes by what this page has seen
  }

  function begin(text: string): void {
    const seed = /^\d{1,6}$/.test(text.trim()) ? Number(text) : undefined;
    if (!isSeed(seed)) {
      setProblem(wasGiven('Number of the case', text, `it can be a whole number from ${SEEDS[0]} to ${SEEDS[1]}.`)); // prettier-ignore
      return void document.getElementById('fault-seed')?.focus();
    }
    setProblem('');
    setTyped(String(seed));
    const reckoned = unwrap(line());
    const made = isRefusal(reckoned) ? undefined : drawFault(seed, reckoned);
    if (!made) return void setProblem('No fault can be planted and told apart in this house. Try another number, or the built-in house.'); // prettier-ignore
    readKept();
    setHouse(codeOfHouse({ name: '', ...reckoned.house }));
    setIsAgain(wasShown(done(), seed, house()));
    setMark(undefined);
    setAsked([]);
    setCause('');
    setFirst('');
    setNow(made);
    queueMicrotask(() => title?.focus());
  }
  function ask(reading: ShownReading, event: Event): void {
    setAsked([...asked(), reading.id]);
    announce('fault', () => `${readingInWords(reading)} Usual: ${valueInWords(reading, reading.usual)}. ${minutes(spent())} so far.`); // prettier-ignore
    if ((event as PointerEvent).pointerType !== 'touch')
      queueMicrotask(() => document.querySelector<HTMLElement>('.fault-ask button')?.focus());
  }
  function answer(event: Event): void {
    event.preventDefault();
    if (cause() === '' || first() === '') return void setProblem('Name a cause and choose what to do first.');
    setProblem('');
    const made = markFault(now()!, { asked: asked(), cause: cause(), first: first() });
    readKept();
    const one = { seed: now()!.seed, total: made.total, day: today(), house: house() };
    setIsAgain(wasShown(done(), one.seed, one.house));
    setMark(made);
    setDone(withDone(done(), one));
    if (!isHeld) keepText(KEY, JSON.stringify(done()));
    queueMicrotask(() => document.getElementById('fault-end')?.focus());
  }

  return (
    <section class="calculator fault" aria-label="The fault desk">
      <form
        class="shift-begin"
        autocomplete="off"
        onSubmit={(event) => {
          event.preventDefault();
          begin(typed());
        }}
      >
        <div class="field" data-state={problem() && !now() ? 'wrong' : 'ok'}>
          <label for="fault-seed">Number of the case</label>
          <input
            id="fault-seed"
            class="words"
            type="text"
            inputmode="numeric"
            maxlength={40}
            value={typed()}
            onInput={({ currentTarget }) => setTyped(currentTarget.value)}
            aria-describedby="fault-seed-meaning"
          />
          <p class="meaning" id="fault-seed-meaning">
            The same number plants the same trouble for everybody with the same house.
          </p>
        </div>
        <p class="actions">
          <button type="submit" id="fault-begin" disabled={!mounted()}>
            Open the case at {name()}
          </button>
        </p>
      </form>
      <Show when={problem()}>
        <p class="problem" role="alert">
          {problem()}
        </p>
      </Show>
      <Show when={now()}>
        {(of) => (
          <>
            <h2 tabindex="-1" ref={title}>
              Case {of().seed}: {of().bench.title.toLowerCase()}
            </h2>
            <Show when={isAgain() && !mark()}>
              <p>
                The answer to this case was shown in this browser before. Go through it again for practice: the line to hand in will say “second go or later”.
              </p>
            </Show>
            <p class="fault-complaint">{complaintOf(of())}</p>
            <Show when={asked().length > 0}>
              <div class="table" tabindex="0" role="group" aria-label="What you have asked for">
                <table>
                  <thead>
                    <tr>
                      <th scope="col">Found</th>
                      <th scope="col">Usual</th>
                      <th scope="col" class="number">
                        Min
                      </th>
                    </tr>
                  </thead>
                  <tbody>
                    <For each={had()}>
                      {(each) => (
                        <tr>
                          <th scope="row">{readingInWords(each)}</th>
                          <td>{valueInWords(each, each.usual)}</td>
                          <td class="number">{each.minutes}</td>
                        </tr>
                      )}
                    </For>
                  </tbody>
                </table>
              </div>
            </Show>
            <Show
              when={mark()}
              fallback={
                <>
                  <h3>Ask for a reading</h3>
                  <p role="status">{minutes(spent())} spent. Ask for no more than decides it.</p>
                  <ul class="fault-ask">
                    <For each={left()}>
                      {(each) => (
                        <li>
                          <button type="button" onClick={(event) => ask(each, event)}>
                            {each.asks} <span class="cost">{each.minutes} min</span>
                          </button>
                        </li>
                      )}
                    </For>
                  </ul>
                  <form autocomplete="off" onSubmit={answer}>
                    <h3>Say what it is</h3>
                    <div class="field">
                      <label for="fault-cause">The cause</label>
                      <select
                        id="fault-cause"
                        value={cause()}
                        onChange={({ currentTarget }) => setCause(currentTarget.value)}
                      >
                        <option value="">Choose one</option>
                        <For each={groups()}>
                          {(group) => (
                            <optgroup label={group.name}>
                              <For each={group.causes}>{({ id, title: says }) => <option value={id}>{says}</option>}</For>
                            </optgroup>
                          )}
                        </For>
                      </select>
                    </div>
                    <fieldset class="options">
                      <legend>What you do first</legend>
                      <For each={firsts()}>
                        {({ id, says }) => (
                          <label class="tick">
                            <input type="radio" name="fault-first" checked={first() === id} onChange={() => setFirst(id)} />
                            <span>{says}</span>
                          </label>
                        )}
                      </For>
                    </fieldset>
                    <p class="actions">
                      <button type="submit">Answer, and be marked</button>
                    </p>
                  </form>
                </>
              }
            >
              {(made) => (
                <FaultResult
                  of={of()}
                  mark={made()}
                  asked={asked()}
                  chosenCause={cause()}
                  isAgain={isAgain()}
                  house={name()}
                  code={house()}
                  sources={props.sources}
                  whose={whose()}
                  setWhose={setWhose}
                  next={() => begin(String(of().seed === SEEDS[1] ? SEEDS[0] : of().seed + 1))}
                />
              )}
            </Show>
          </>
        )}
      </Show>
      <Show when={done().length > 0}>
        <p class="small">
          Answered in this browser, the first go of each: {done().length} {done().length === 1 ? 'case' : 'cases'}, on average{' '}
          {Math.round(done().reduce((sum, { total }) => sum + total, 0) / done().length)} of 100.
        </p>
      </Show>
    </section>
  );
} // prettier-ignore
