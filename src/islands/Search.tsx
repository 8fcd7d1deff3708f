// The search page: results as one types, all of them links that the Tab and arrow keys reach.
import MiniSearch, { type SearchResult } from 'minisearch';
import { createEffect, createSignal, For, onMount, Show } from 'solid-js';
import { shown } from '../core/shown.ts';
import { searchOptions, type Shown } from './search-options.ts';

const SHOWN = 30; // results listed at most
const LONGEST = 100; // characters that are looked for

export default function Search(props: { readonly index: string }) {
  const [words, setWords] = createSignal('');
  const [index, setIndex] = createSignal<MiniSearch>();
  const [problem, setProblem] = createSignal<string>();
  let field: HTMLInputElement | undefined;
  let list: HTMLOListElement | undefined;

  const results = () =>
    (words().trim() === '' ? [] : (index()?.search(words()) ?? [])) as (SearchResult & Shown)[];
  const say = () => {
    if (problem()) return problem();
    if (words().trim() === '') return '';
    if (!index()) return 'The index is loading.';
    const count = results().length;
    if (count === 0) return `Nothing found for “${shown(words())}”. Try fewer or shorter words.`;
    return `${count} ${count === 1 ? 'place' : 'places'} found${count > SHOWN ? `; the first ${SHOWN} are listed` : ''}.`;
  };

  onMount(() => {
    const asked = new URLSearchParams(location.hash.slice(1)).get('for')?.slice(0, LONGEST);
    // The field is not bound to the words: what was typed before the page was ready stays in it.
    if (asked && field!.value === '') field!.value = asked;
    setWords(field!.value);
    field!.focus();
  });
  let isFetched = false;
  /** Fetches the index once there is a word to look for. */
  function fetchIndex(): void {
    if (isFetched) return;
    isFetched = true;
    fetch(props.index)
      .then((answer) => (answer.ok ? answer.text() : Promise.reject(new Error(String(answer.status)))))
      .then((text) => setIndex(MiniSearch.loadJSON(text, searchOptions)))
      .catch(() =>
        setProblem(
          'The index could not be fetched. Load the page once with a network; the glossary and the chapters can be read all the same.',
        ),
      );
  }

  createEffect(() => words().trim() !== '' && fetchIndex());

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
  const take = (text: string) => {
    setWords(text);
    history.replaceState(
      null,
      '',
      text.trim() === '' ? location.pathname : `#for=${encodeURIComponent(text.toWellFormed())}`,
    );
  };

  return (
    <form
      class="search"
      role="search"
      autocomplete="off"
      onKeyDown={walk}
      onSubmit={(event) => {
        event.preventDefault();
        list?.querySelector('a')?.focus();
      }}
    >
      <label for="search-words">Words to look for</label>
      <input
        id="search-words"
        class="words"
        type="search"
        ref={field}
        autocomplete="off"
        maxlength={LONGEST}
        onInput={(event) => take(event.currentTarget.value)}
      />
      <p role="status">{say()}</p>
      <Show when={results().length > 0}>
        <ol ref={list} class="found">
          <For each={results().slice(0, SHOWN)}>
            {(result) => (
              <li>
                <a href={`../${result.at}`}>{result.title}</a> <span class="where">{result.where}</span>
                <Show when={result.opening}>
                  <p>{result.opening}</p>
                </Show>
              </li>
            )}
          </For>
        </ol>
      </Show>
    </form>
  );
}
