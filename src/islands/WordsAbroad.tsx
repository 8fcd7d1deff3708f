// The trade's words in one language at a time: shown with their readings and standing, ticked for cards, and printed four cards to a sheet.
import { createMemo, createSignal, For, onMount, Show } from 'solid-js';
import { unwrap } from 'solid-js/store';
import { bookStamp } from '../house/book.ts';
import { keepText, keptText, storageKey } from '../browser/browser-store.ts';
import { languageIds, languages, tagOf, wordSources, type Language, type TradeWord, type WordAbroad } from '../walk/audience-words.ts'; // prettier-ignore
import { useAnnouncement } from './announce.ts';
import { NotKept } from './NotKept.tsx';
import { printPart } from './print-part.ts';
import { Tick } from './Tick.tsx';

const ON_A_CARD = 13; // all words then go on the four cards of one sheet
const [LANGUAGE, OFF] = [storageKey('words-language'), storageKey('words-off')];

/** The words that were taken off the cards; anything that is not a list of words counts for nothing. */
function keptOff(): ReadonlySet<string> {
  try {
    const data: unknown = JSON.parse(keptText(OFF) ?? '[]');
    return new Set(Array.isArray(data) ? data.filter((each) => typeof each === 'string') : []);
  } catch {
    return new Set();
  }
}

export default function WordsAbroad(props: { readonly words: readonly TradeWord[] }) {
  const words = unwrap(props.words);
  const [language, setLanguage] = createSignal<Language>('fr');
  const [off, setOff] = createSignal<ReadonlySet<string>>(new Set());
  const [isKept, setKept] = createSignal(true);
  onMount(() => {
    const kept = keptText(LANGUAGE);
    if (languageIds.includes(kept as Language)) setLanguage(kept as Language);
    setOff(keptOff());
  });
  const choose = (next: Language) => {
    setLanguage(next);
    setKept(keepText(LANGUAGE, next));
  };
  const take = (next: ReadonlySet<string>) => {
    setOff(next);
    setKept(keepText(OFF, JSON.stringify([...next])));
  };
  const tick = (english: string) => {
    const next = new Set(off());
    if (!next.delete(english)) next.add(english);
    take(next);
  };
  const name = () => languages[language()][0];
  const ticked = createMemo(() => words.filter(({ english }) => !off().has(english)));
  const gaps = () => words.filter(({ abroad }) => !abroad[language()]).length;
  const sources = createMemo(() => [
    ...new Set(words.flatMap(({ abroad }) => abroad[language()]?.from ?? [])),
  ]);
  const standing = ({ from }: WordAbroad) => (from ? `read, ${sources().indexOf(from) + 1}` : 'memory');
  const cards = createMemo(() =>
    Array.from({ length: Math.ceil(ticked().length / ON_A_CARD) }, (_, i) =>
      ticked().slice(i * ON_A_CARD, (i + 1) * ON_A_CARD),
    ),
  );
  const leaves = () =>
    Array.from({ length: Math.ceil(cards().length / 4) }, (_, i) => cards().slice(4 * i, 4 * i + 4));
  const whole = () =>
    `${name()}: ${ticked().length} of ${words.length} words on ${cards().length === 1 ? 'one card' : `${cards().length} cards`}${gaps() === 0 ? '' : `; ${gaps()} left empty to write in`}.`;
  useAnnouncement('words', () => [language(), off()], whole);
  return (
    <div class="words-desk">
      <section class="calculator" aria-labelledby="words-title">
        <h2 id="words-title">Words and cards</h2>
        <div class="field">
          <label for="words-language">Language</label>
          <select
            id="words-language"
            autocomplete="off"
            onChange={({ currentTarget }) => choose(currentTarget.value as Language)}
          >
            <For each={languageIds}>
              {(id) => (
                <option value={id} selected={language() === id}>
                  {languages[id][0]}
                </option>
              )}
            </For>
          </select>
        </div>
        <p>{whole()}</p>
        <p class="actions">
          <button type="button" disabled={ticked().length === 0} onClick={() => printPart('word-cards')}>
            Print the cards
          </button>
          <button
            type="button"
            onClick={() => take(off().size === 0 ? new Set(words.map(({ english }) => english)) : new Set())}
          >
            {off().size === 0 ? 'Tick none' : 'Tick all'}
          </button>
        </p>
        <div role="status">
          <NotKept isKept={isKept()} what="what you tick" />
        </div>
        <table class="words">
          <thead>
            <tr>
              <th scope="col">English</th>
              <th scope="col">
                {name()}, <span lang={tagOf(language())}>{languages[language()][1]}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            <For each={words}>
              {({ english, means, abroad }) => (
                <tr>
                  <th scope="row">
                    <Tick checked={!off().has(english)} take={() => tick(english)}>
                      {english}
                      <Show when={means}>
                        <small> {means}</small>
                      </Show>
                    </Tick>
                  </th>
                  <td>
                    <Show when={abroad[language()]} fallback={<ToWrite />}>
                      {(word) => (
                        <>
                          <Said word={word()} language={language()} /> <small>{standing(word())}</small>
                        </>
                      )}
                    </Show>
                  </td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
        <Show when={sources().length > 0}>
          <ol class="word-sources">
            <For each={sources()}>{(source) => <li>Read in: {wordSources[source]}.</li>}</For>
          </ol>
        </Show>
      </section>
      <div class="word-cards">
        <For each={leaves()}>
          {(leaf) => (
            <div class="word-leaf">
              <For each={leaf}>
                {(card) => (
                  <div class="word-card">
                    <h3>Trade words: {name()}</h3>
                    <dl>
                      <For each={card}>
                        {({ english, abroad }) => (
                          <div>
                            <dt>{english}</dt>
                            <dd>
                              <Show when={abroad[language()]} fallback={<ToWrite />}>
                                {(word) => <Said word={word()} language={language()} />}
                              </Show>
                            </dd>
                          </div>
                        )}
                      </For>
                    </dl>
                    <p>Mostly from memory: let a native reader see it. Book {bookStamp}.</p>
                  </div>
                )}
              </For>
            </div>
          )}
        </For>
      </div>
    </div>
  );
}

/** A word in its own language, with its reading. */
function Said(props: { readonly word: WordAbroad; readonly language: Language }) {
  return (
    <>
      <span lang={tagOf(props.language)}>{props.word.word}</span>
      <Show when={props.word.reading !== props.word.word && props.word.reading}>
        {(reading) => (
          <>
            {' '}
            <span class="reading" lang={props.language === 'zh' ? 'zh-Latn-pinyin' : 'ja-Hrkt'}>
              {reading()}
            </span>
          </>
        )}
      </Show>
    </>
  );
}

/** The place for a word of which the book is not sure. */
const ToWrite = () => (
  <span class="to-write">
    <span class="visually-hidden">no word is sure; write it in</span>
  </span>
);
