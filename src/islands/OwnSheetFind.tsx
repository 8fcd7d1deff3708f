// Finds kinds of question by their words, shows one drawn, and adds it to a trainer's own sheet or puts it in place of another.
import { formatCount } from '../core/format.ts';
import { createMemo, createSignal, For, Show } from 'solid-js';
import { keepTogether } from '../core/keep-together.ts';
import type { House } from '../core/line/house.ts';
import { draw } from '../exercises/draw.ts';
import { hardnessOf } from '../exercises/hardness.ts';
import type { OwnQuestion } from '../exercises/own/own-question.ts';
import type { Question, QuestionKind } from '../exercises/question.ts';
import { formTitles, topics, topicTitles, type Topic } from '../exercises/topics.ts';
import { answerInWords } from '../exercises/wording.ts';
import { drawnOrLost } from './use-kinds.ts';

const SHOWN = 6; // kinds at a time: more would push the sheet off a phone

export function OwnSheetFind(props: {
  readonly kinds: readonly QuestionKind[];
  /** The trainer's own questions, whose wording is searched as well. */
  readonly own: readonly OwnQuestion[];
  readonly house: House;
  /** The place, from 1, that the next one takes; nothing when it is added at the end. */
  readonly swapping: number | undefined;
  readonly add: (kind: QuestionKind) => void;
}) {
  const [words, setWords] = createSignal('');
  const [topic, setTopic] = createSignal<Topic | 'all' | 'own'>('all');
  const [from, setFrom] = createSignal(0);
  const [preview, setPreview] = createSignal<{
    readonly id: string;
    readonly question: Question | undefined;
  }>();
  let tries = 0;
  const [inside, setInside] = createSignal<Readonly<Record<string, string>>>({}); // the words of what each kind asks
  let isFetched = false;
  /** Fetches those words with the first use of the search; without them it looks in titles. */
  const fetchWords = () => {
    if (isFetched) return;
    isFetched = true;
    void fetch(new URL('words.json', location.href)).then((answer) => answer.json()).then(setInside, () => (isFetched = false)); // prettier-ignore
  };
  const found = createMemo(() => {
    const wanted = words().toLowerCase().split(/\s+/).filter(Boolean);
    return props.kinds.filter((kind) => {
      const isOf =
        topic() === 'all' || (topic() === 'own' ? kind.id.startsWith('own-') : kind.topic === topic());
      const asks = inside()[kind.id] ?? props.own.find(({ id }) => id === kind.id)?.wording ?? '';
      const text =
        `${kind.title} ${topicTitles[kind.topic]} ${formTitles[kind.form]} ${kind.id} ${asks}`.toLowerCase();
      return isOf && wanted.every((word) => text.includes(word));
    });
  });
  const page = () => found().slice(from(), from() + SHOWN);
  const show = async (kind: QuestionKind) => {
    tries++;
    const drawn = await drawnOrLost(() => draw(kind, `preview/${tries}`, props.house));
    setPreview({ id: kind.id, question: drawn?.question });
  };
  const showText = (kind: QuestionKind) => (preview()?.id === kind.id ? 'Show another' : 'Show one');
  const addText = () => (props.swapping === undefined ? 'Add' : `Put it in place of ${props.swapping}`);
  return (
    <section class="calculator sheet-desk own-find" aria-labelledby="own-find-title">
      <h2 id="own-find-title">
        {props.swapping === undefined ? 'Find questions' : `Find one in place of question ${props.swapping}`}
      </h2>
      <form class="choose" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
        <div class="field">
          <label for="own-words">Words in its name or its question</label>
          <input
            id="own-words"
            class="words"
            type="search"
            maxlength="60"
            autocomplete="off"
            value={words()}
            onFocus={fetchWords}
            onInput={(event) => {
              fetchWords();
              setWords(event.currentTarget.value);
              setFrom(0);
            }}
          />
        </div>
        <div class="field">
          <label for="own-topic">Stage</label>
          <select
            id="own-topic"
            autocomplete="off"
            value={topic()}
            onChange={(event) => {
              setTopic(event.currentTarget.value as Topic);
              setFrom(0);
            }}
          >
            <option value="all">all</option>
            <option value="own">my own questions</option>
            <For each={topics}>{(each) => <option value={each}>{topicTitles[each]}</option>}</For>
          </select>
        </div>
      </form>
      <p role="status" class="fits">
        {found().length === 0
          ? 'None has these words.'
          : `${formatCount(found().length, 'kind')} of question; ${from() + 1} to ${Math.min(found().length, from() + SHOWN)} are listed.`}
      </p>
      <ul class="own-found">
        <For each={page()}>
          {(kind) => (
            <li>
              <p>
                <b>{kind.title}</b>{' '}
                <span class="about">
                  {topicTitles[kind.topic]}, level {kind.level}, {formTitles[kind.form].toLowerCase()}
                </span>
              </p>
              <p class="actions">
                <button
                  type="button"
                  aria-label={`${showText(kind)}: ${kind.title}`}
                  onClick={() => void show(kind)}
                >
                  {showText(kind)}
                </button>
                <button
                  type="button"
                  aria-label={`${addText()}: ${kind.title}`}
                  onClick={() => props.add(kind)}
                >
                  {addText()}
                </button>
              </p>
              <Show when={preview()?.id === kind.id && preview()}>
                {(shown) => (
                  <div class="own-preview" role="status">
                    <Show when={shown().question} fallback={<p>This house allows no such question.</p>}>
                      {(question) => (
                        <>
                          <p class="prompt">{keepTogether(question().prompt)}</p>
                          <p>
                            Answer: <b class="number">{answerInWords(question())}</b>{' '}
                            <span class="about">hardness {hardnessOf(question()).points} points</span>
                          </p>
                        </>
                      )}
                    </Show>
                  </div>
                )}
              </Show>
            </li>
          )}
        </For>
      </ul>
      <Show when={found().length > SHOWN}>
        <p class="actions">
          <button type="button" disabled={from() === 0} onClick={() => setFrom(Math.max(0, from() - SHOWN))}>
            The {SHOWN} before
          </button>
          <button
            type="button"
            disabled={from() + SHOWN >= found().length}
            onClick={() => setFrom(from() + SHOWN)}
          >
            The next {SHOWN}
          </button>
        </p>
      </Show>
    </section>
  );
}
