// The fault desk: one complaint, readings that each cost time, a cause and a first thing to do, and what the readings said.
import { createEffect, createMemo, createSignal, For, onCleanup, onMount, Show, untrack } from 'solid-js';
import { unwrap } from 'solid-js/store';
import { wasGiven } from '../core/format.ts';
import { isRefusal } from '../core/refusal.ts';
import { answerOf, complaintOf, drawFault, told, type FaultCase, type Shown } from '../fault/draw.ts';
import { readDone, withDone, type Done } from '../fault/kept.ts';
import { faultOfLink } from '../fault/link.ts';
import { hadOf, markFault, type FaultMark } from '../fault/mark.ts';
import { keepAside, keepText, keptText, keyOf } from '../browser/browser-store.ts';
import { useHouse } from '../browser/house-store.ts';
import { isSeed, SEEDS } from '../shift/seed.ts';
import { announce } from './announce.ts';
import { FaultResult } from './FaultResult.tsx';
import { today } from './today.ts';

const KEY = keyOf('faults');

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
  const [whose, setWhose] = createSignal('');
  const [done, setDone] = createSignal<readonly Done[]>([]);
  let title: HTMLHeadingElement | undefined;
  let isHeld = false; // true while what was kept can neither be read nor set aside

  const firsts = createMemo(() => [...(now()?.bench.firsts ?? [])].sort((a, b) => (a.says < b.says ? -1 : 1)));
  const groups = createMemo(() => {
    const causes = now()?.bench.causes ?? [];
    return [...new Set(causes.map(({ group }) => group))].map((name) => ({ name, causes: causes.filter(({ group }) => group === name) }));
  });
  const had = () => hadOf(now()!, asked()).filter(({ minutes }) => minutes > 0);
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
    const text = keptText(KEY);
    const read = text === null ? [] : readDone(text);
    isHeld = read === undefined && !keepAside(keyOf('faults-kept-aside'), text!);
    setDone(read ?? []);
  });

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
    setMark(undefined);
    setAsked([]);
    setCause('');
    setFirst('');
    setNow(made);
    queueMicrotask(() => title?.focus());
  }
  function ask(reading: Shown, event: Event): void {
    setAsked([...asked(), reading.id]);
    announce('fault', () => `${answerOf(reading)} Usual: ${told(reading, reading.usual)}. ${spent()} minutes so far.`); // prettier-ignore
    if ((event as PointerEvent).pointerType !== 'touch')
      queueMicrotask(() => document.querySelector<HTMLElement>('.fault-ask button')?.focus());
  }
  function answer(event: Event): void {
    event.preventDefault();
    if (cause() === '' || first() === '') return void setProblem('Name a cause and choose what to do first.');
    setProblem('');
    const made = markFault(now()!, { asked: asked(), cause: cause(), first: first() });
    setMark(made);
    setDone(withDone(done(), { seed: now()!.seed, total: made.total, day: today() }));
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
                          <th scope="row">{answerOf(each)}</th>
                          <td>{told(each, each.usual)}</td>
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
                  <p role="status">{spent()} minutes spent. Ask for no more than decides it.</p>
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
                  house={name()}
                  line={unwrap(line())}
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
          Answered in this browser: {done().length} {done().length === 1 ? 'case' : 'cases'}, on average{' '}
          {Math.round(done().reduce((sum, { total }) => sum + total, 0) / done().length)} of 100.
        </p>
      </Show>
    </section>
  );
} // prettier-ignore
