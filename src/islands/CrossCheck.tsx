// Do the figures that a guide quotes agree? Each is typed as it is said; the answer follows at once.
import { createMemo, createSignal, For, onMount, Show } from 'solid-js';
import { formatNumber } from '../core/format.ts';
import { kinds } from '../core/kinds.ts';
import { quotableFigures, quotableNames, type Quoted, type QuotableName } from '../core/line/quoted.ts';
import { reconcile, type Finding, type JudgedFigure, type Reconciliation } from '../core/line/reconcile.ts';
import { spoken } from '../core/line/spoken.ts';
import { rangeInWords, sentences } from '../core/line/verdict.ts';
import { setByTheHouse } from '../core/line/set-by-the-house.ts';
import { isRefusal } from '../core/refusal.ts';
import { keepText, keptText, keyOf } from '../house/browser-store.ts';
import { useHouse } from '../house/store.ts';
import { useCountry } from '../house/units-store.ts';
import { ofHouse } from '../talk/own-house.ts';
import { readSaid } from '../talk/said.ts';
import { AgainstHouse } from './AgainstHouse.tsx';
import { useAnnouncement } from './announce.ts';
import { Follows, Verdict } from './CrossCheckAnswer.tsx';
import { focusAfter } from './focus-after.ts';

const KEY = keyOf('quoted');
const NOT_KEPT =
  'This browser does not let the handbook keep what you type here; it lasts until the page is closed.';
const LONGEST = 60; // characters of a figure as it is said
const QUIET = 200; // ms without typing before the figures are held against each other
const findings: Readonly<Record<Finding, string>> = {
  agrees: 'agrees',
  doubtful: 'doubtful',
  disagrees: 'disagrees',
  'not checkable': 'nothing else you quote checks it',
  'cannot be': 'cannot be',
};
type Texts = Readonly<Partial<Record<QuotableName, string>>>;
/** A figure of the house as a guide would type it. */
function typed(name: QuotableName, value: number): string {
  const { kind } = quotableFigures[name];
  const digits = kind === 'gravity' ? 3 : value % 1 === 0 || value >= 1000 ? 0 : 1;
  return formatNumber(value, digits);
}
const isName = (name: string): name is QuotableName => Object.hasOwn(quotableFigures, name);

/** Texts kept in the browser; anything that is not a text of a known figure counts for nothing. */
function kept(): Texts {
  try {
    const data: unknown = JSON.parse(keptText(KEY) ?? '{}');
    if (typeof data !== 'object' || data === null) return {};
    return Object.fromEntries(
      Object.entries(data).filter(
        ([name, text]) => isName(name) && typeof text === 'string' && text.length <= LONGEST,
      ),
    ) as Texts;
  } catch {
    return {};
  }
}

export default function CrossCheck() {
  const [texts, setTexts] = createSignal<Texts>({});
  /** The texts once the reader has stopped typing: the adjustment may take a tenth of a second. */
  const [quiet, setQuiet] = createSignal<Texts>({});
  const [isKept, setKept] = createSignal(true);
  let timer: ReturnType<typeof setTimeout> | undefined;
  const show = (next: Texts) => {
    setTexts(next);
    clearTimeout(timer);
    timer = setTimeout(() => setQuiet(next), QUIET);
  };
  onMount(() => show(kept()));
  const change = (next: Texts) => {
    show(next);
    setKept(keepText(KEY, JSON.stringify(next)));
  };
  const { line } = useHouse();
  const [held, setHeld] = createSignal(false);
  const fillIn = () =>
    change({
      ...Object.fromEntries(quotableNames.map((name) => [name, typed(name, ofHouse(name, line())!)])),
      ...Object.fromEntries(Object.entries(texts()).filter(([, text]) => text.trim() !== '')),
    });
  const adder = () => document.getElementById('quoted-add');
  const names = () => quotableNames.filter((name) => name in texts());
  const rest = () => quotableNames.filter((name) => !(name in texts()));
  const country = useCountry();
  const said = createMemo<Quoted>(() =>
    Object.fromEntries(
      quotableNames.flatMap((name) => {
        const read = readSaid(quiet()[name] ?? '', name, country());
        return isRefusal(read) ? [] : [[name, read]];
      }),
    ),
  );
  const saidFigures = createMemo(() =>
    quotableNames.flatMap((figure) => {
      const read = said()[figure];
      return read ? [{ figure, said: read }] : [];
    }),
  );
  /** Why a text cannot be read; nothing while the field is empty. */
  const unreadable = (name: QuotableName): string | undefined => {
    if (texts()[name]!.trim() === '') return undefined;
    const read = readSaid(texts()[name]!, name, country());
    return isRefusal(read) ? read.refused : undefined;
  };
  const answer = createMemo<{ found?: Reconciliation; trouble?: string }>((last) => {
    if (Object.keys(said()).length === 0) return {};
    const result = reconcile(said());
    return isRefusal(result) ? { ...last, trouble: result.refused } : { found: result };
  }, {});
  const found = createMemo(() => answer().found);
  useAnnouncement('together', found, () =>
    found() ? sentences(found()!).join(' ') : 'No figure is quoted.',
  );
  const judged = (name: QuotableName) => found()?.figures.find(({ figure }) => figure === name);

  return (
    <section class="calculator cross-check" aria-labelledby="cross-check-title">
      <h2 id="cross-check-title">The figures you quote</h2>
      <p class="purpose">
        Choose a figure and type it as you say it: 42,500, or about 9, or 5,500 to 6,000. A few are enough.
        What you type stays in this browser{isKept() ? '' : ' until the page is closed'}, and goes nowhere
        else.
      </p>
      <div role="status">
        <Show when={!isKept()}>
          <p class="problem">{NOT_KEPT}</p>
        </Show>
      </div>
      <div class="together" data-stale={answer().trouble ? '' : undefined}>
        <Show when={found()}>{(result) => <Verdict of={result()} />}</Show>
      </div>
      <form class="inputs" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
        <For each={names()}>
          {(name) => (
            <div
              class="field"
              data-state={unreadable(name) ? 'wrong' : 'ok'}
              data-finding={judged(name)?.finding}
            >
              <label for={`quoted-${name}`}>{quotableFigures[name].label}</label>
              <span class="with-unit">
                <input
                  id={`quoted-${name}`}
                  class="number"
                  type="text"
                  maxlength={LONGEST}
                  autocomplete="off"
                  value={texts()[name] ?? ''}
                  aria-invalid={unreadable(name) ? 'true' : 'false'}
                  aria-describedby={`quoted-${name}-finding`}
                  onInput={(event) => change({ ...texts(), [name]: event.currentTarget.value })}
                />
                <span class="unit">{kinds[quotableFigures[name].kind].unit}</span>
                <button
                  type="button"
                  class="reset"
                  title={`Leave ${quotableFigures[name].label} out`}
                  onClick={(event) => {
                    change(Object.fromEntries(Object.entries(texts()).filter(([other]) => other !== name)));
                    focusAfter(event, adder);
                  }}
                >
                  leave out
                </button>
              </span>
              <p class="meaning" id={`quoted-${name}-finding`}>
                <Show when={!unreadable(name)} fallback={unreadable(name)}>
                  <Show when={judged(name)} fallback="Not quoted yet.">
                    {(figure) => <FindingText of={figure()} />}
                  </Show>
                </Show>
              </p>
            </div>
          )}
        </For>
        <div class="field">
          <label for="quoted-add">Add a figure</label>
          <select
            id="quoted-add"
            autocomplete="off"
            onChange={(event) => {
              const name = event.currentTarget.value;
              if (isName(name)) {
                change({ ...texts(), [name]: '' });
                queueMicrotask(() => document.getElementById(`quoted-${name}`)?.focus());
              }
              event.currentTarget.value = '';
            }}
          >
            <option value="">Choose …</option>
            <For each={rest()}>{(name) => <option value={name}>{quotableFigures[name].label}</option>}</For>
          </select>
        </div>
      </form>
      <Show when={answer().trouble}>
        <p class="problem" role="alert">
          {answer().trouble}
        </p>
      </Show>
      <div class="together" data-stale={answer().trouble ? '' : undefined}>
        <Show when={found()}>{(result) => <Follows of={result()} />}</Show>
      </div>
      <AgainstHouse id="quoted-against-house" said={saidFigures()} held={held()} hold={setHeld} />
      <p class="actions">
        <button type="button" onClick={fillIn}>
          Fill in the rest from my house
        </button>
        <button
          type="button"
          disabled={names().length === 0}
          onClick={(event) => {
            change({});
            focusAfter(event, adder);
          }}
        >
          Clear all
        </button>
      </p>
    </section>
  );
}

function FindingText(props: { readonly of: JudgedFigure }) {
  const better = () => props.of.fits ?? props.of.adjusted;
  return (
    <>
      <strong class={`finding ${props.of.finding.replace(' ', '-')}`}>{findings[props.of.finding]}</strong>
      <Show when={props.of.reason}>: {props.of.reason}</Show>
      <Show when={props.of.finding === 'doubtful' || props.of.finding === 'disagrees'}>
        {setByTheHouse.includes(props.of.figure)
          ? '; check it: the house decides it'
          : `; if this one alone is wrong, ${rangeInWords(props.of.figure, better().low, better().high)} would fit: say “${spoken(props.of.figure, Math.max(0, better().value), [better().low, better().high])}”`}
      </Show>
    </>
  );
}
