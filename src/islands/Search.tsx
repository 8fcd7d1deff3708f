// The search page: a question is answered from the house, and what the book has on it is listed as one types.
import MiniSearch, { type SearchResult } from 'minisearch';
import { createEffect, createMemo, createSignal, For, onCleanup, onMount, Show } from 'solid-js';
import type { Answer, Asking, NotKnown } from '../asking/answer-given.ts';
import { quotedGiven } from '../core/quoted-given.ts';
import { useKnown } from '../browser/known-store.ts';
import { filledFrom } from '../house/open-figures.ts';
import { useHouse } from '../browser/house-store.ts';
import { useUnits } from '../browser/units-store.ts';
import { unitsOf } from '../core/units.ts';
import { factSays } from '../house/facts.ts';
import { factsPart } from '../house/parts/facts.ts';
import { usePart } from '../browser/part-store.ts';
import { useAnnouncement } from './announce.ts';
import { asQuestion, SearchAnswer } from './SearchAnswer.tsx';
import { searchOptions, type ShownPassage } from './search-options.ts';

const SHOWN = 30; // results listed at most
const ALSO = 6; // listed below an answer, where nothing has all of its words
const LONGEST = 300; // characters that are looked for
const REST = 200; // ms without a key until a question is answered

type Answerer = (asking: Asking) => Answer | NotKnown;

export default function Search(props: { readonly index: string; readonly asked: string }) {
  const [words, setWords] = createSignal('');
  const [question, setQuestion] = createSignal('');
  const [index, setIndex] = createSignal<MiniSearch>();
  const [answerer, setAnswerer] = createSignal<Answerer>();
  const [problem, setProblem] = createSignal<string>();
  const { house, line } = useHouse();
  const unitLiked = useUnits();
  const facts = usePart(factsPart);
  const { unknown } = useKnown();
  let field: HTMLInputElement | undefined;
  let form: HTMLFormElement | undefined;
  let list: HTMLOListElement | undefined;
  let before: string | undefined; // the question that was answered last

  const found = createMemo((): Answer | NotKnown | undefined => {
    if (question().trim() === '') return undefined;
    const answer = answerer()?.({
      question: question(),
      house: house(),
      before,
      telling: {
        likes: (kind) => (unitLiked(kind) === unitsOf(kind)[0] ? undefined : unitLiked(kind)),
        says: (fact) => factSays(facts.value(), fact),
        unknown: unknown(),
      },
    });
    if (answer && 'nearest' in answer && !isAsked(question())) return undefined;
    return answer;
  });
  const answer = () => {
    const now = found();
    return now && !('nearest' in now) ? now : undefined;
  };
  createEffect(() => (before = answer()?.question ?? before));

  const results = createMemo(() => {
    if (words().trim() === '') return [];
    const all = index()?.search(words()) ?? [];
    const some = all.length === 0 && answer() ? (index()?.search(words(), { combineWith: 'OR' }) ?? []).slice(0, ALSO) : all; // prettier-ignore
    return some as (SearchResult & ShownPassage)[];
  });
  const say = () => {
    if (problem()) return problem()!;
    if (words().trim() === '') return '';
    if (!index()) return 'The index is loading.';
    const count = results().length;
    if (count === 0)
      return found() ? '' : `Nothing found for “${quotedGiven(words())}”. Try fewer or shorter words.`;
    return `${count} ${count === 1 ? 'place' : 'places'} found${count > SHOWN ? `; the first ${SHOWN} are listed` : ''}.`;
  };
  const aloud = () => {
    const now = found();
    const told =
      now && ('nearest' in now ? 'I do not know that.' : [now, ...(now.also ?? [])].map(spoken).join(' '));
    return [told, say()].filter(Boolean).join(' ');
  };
  useAnnouncement(
    'search',
    () => [aloud(), question()],
    aloud,
    () => form,
  );

  onMount(() => {
    const asked = new URLSearchParams(location.hash.slice(1)).get('for')?.slice(0, LONGEST);
    // The field is not bound to the words: what was typed before the page was ready stays in it.
    if (asked && field!.value === '') field!.value = asked;
    setWords(field!.value);
    setQuestion(field!.value);
    field!.focus();
  });
  let isFetched = false;
  /** Fetches the index and what answers once there is a word to look for. */
  function fetchAll(): void {
    if (isFetched) return;
    isFetched = true;
    const text = (address: string) =>
      fetch(address).then((answer) => (answer.ok ? answer.text() : Promise.reject(new Error(String(answer.status))))); // prettier-ignore
    text(props.index)
      .then((told) => setIndex(MiniSearch.loadJSON(told, searchOptions)))
      .catch(() =>
        setProblem(
          'The index could not be fetched. Load the page once with a network; the glossary and the chapters can be read all the same.',
        ),
      );
    // Without what answers, the search goes on.
    Promise.all([import('../asking/answer.ts'), text(props.asked)])
      .then(([asking, told]) => setAnswerer(() => asking.answerer(JSON.parse(told))))
      .catch(() => undefined);
  }

  createEffect(() => words().trim() !== '' && fetchAll());

  /** Up and down walk through field and results. */
  const walk = (event: KeyboardEvent) => {
    if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') return;
    const stops = [field!, ...(list?.querySelectorAll('a') ?? [])] as HTMLElement[];
    const now = stops.indexOf(document.activeElement as HTMLElement);
    const next = stops[now + (event.key === 'ArrowDown' ? 1 : -1)];
    if (now < 0 || !next) return;
    event.preventDefault();
    next.focus();
  };
  let timer: ReturnType<typeof setTimeout> | undefined;
  onCleanup(() => clearTimeout(timer));
  const take = (text: string) => {
    setWords(text);
    clearTimeout(timer);
    timer = setTimeout(() => setQuestion(text), REST);
    history.replaceState(
      null,
      '',
      text.trim() === '' ? location.pathname : `#for=${encodeURIComponent(text.toWellFormed())}`,
    );
  };
  const ask = (text: string) => {
    field!.value = text;
    take(text);
    clearTimeout(timer);
    setQuestion(text);
    field!.focus();
  };

  return (
    <form
      class="search"
      role="search"
      autocomplete="off"
      ref={form}
      onKeyDown={walk}
      onSubmit={(event) => {
        event.preventDefault();
        clearTimeout(timer);
        setQuestion(words());
        if (!found()) list?.querySelector('a')?.focus();
      }}
    >
      <label for="search-words">A question, or words to look for</label>
      <input
        id="search-words"
        class="words"
        type="search"
        ref={field}
        autocomplete="off"
        maxlength={LONGEST}
        onInput={(event) => take(event.currentTarget.value)}
      />
      <Show when={found()}>{(now) => <SearchAnswer found={now()} ask={ask} />}</Show>
      <p class="count">{say()}</p>
      <Show when={results().length > 0}>
        <ol ref={list} class="found">
          <For each={results().slice(0, SHOWN)}>
            {(result) => (
              <li>
                <a href={`../${result.at}`}>{result.title}</a> <span class="where">{result.where}</span>
                <Show when={result.opening}>
                  <p>{filledFrom(line(), result.opening)}</p>
                </Show>
              </li>
            )}
          </For>
        </ol>
      </Show>
    </form>
  );
}

/** An answer as it is said aloud. */
const spoken = ({ meant, isQuoted, says }: Answer): string =>
  meant ? `If you mean “${asQuestion(meant.asked[0]!)}” ${says}` : isQuoted ? `The book says: ${says}` : says;

/** True for what reads as a question: three words, or a question mark. */
const isAsked = (text: string) => text.trim().split(/\s+/).length >= 3 || text.includes('?');
