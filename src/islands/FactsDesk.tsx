// The fact sheet of the house: a choice, a number or its own words for each thing that visitors ask, and a sheet of them to print.
import { createEffect, createSignal, For, Show } from 'solid-js';
import { parseNumber } from '../core/reading/plain.ts';
import { factsAgainstVessels } from '../house/facts-beside.ts';
import { factIds, factKind, factSays, type Fact, type FactId } from '../house/facts.ts';
import { choiceProblem, factsPart, wordsToKeep, withFact, wordsProblem } from '../house/parts/facts.ts';
import { plantPart } from '../house/parts/plant.ts';
import { usePart } from '../browser/part-store.ts';
import { stampInWords } from '../house/book.ts';
import { useHouse } from '../browser/house-store.ts';
import { useAnnouncement } from './announce.ts';
import { ChoiceField } from './ChoiceField.tsx';
import { StockField } from './StockField.tsx';
import { dateInWords, today } from './today.ts';
import { Troubles } from './Troubles.tsx';

export default function FactsDesk() {
  const { value: given, set, mounted } = usePart(factsPart);
  const { name } = useHouse();
  let desk: HTMLDivElement | undefined;
  const { value: plant } = usePart(plantPart);
  const differing = () => factsAgainstVessels(given(), plant());
  const said = () => factIds.filter((id) => factSays(given(), id) !== undefined);
  const change = (id: FactId, part: Parameters<typeof withFact>[2]) => set(withFact(given(), id, part))[0];
  const count = () => `${said().length} of ${factIds.length} are answered.`;
  useAnnouncement('facts', given, count, () => desk);

  return (
    <div ref={desk} class="facts-desk">
      <Troubles />
      <section class="calculator stock facts" aria-labelledby="facts-title">
        <h2 id="facts-title">What {name()} says</h2>
        <p class="purpose">{count()} Leave out what you do not know: better no answer than a guess.</p>
        <div>
          <For each={factIds}>
            {(id) => <FactFields of={id} given={given()[id] ?? {}} change={(part) => change(id, part)} />}
          </For>
        </div>
        <For each={differing()}>{(says) => <p class="remark">{says}</p>}</For>
        <p class="actions">
          <button type="button" onClick={() => print()} disabled={said().length === 0}>
            Print the fact sheet
          </button>{' '}
          <a href="../../cards/">Pocket cards</a>
        </p>
      </section>
      <section class="fact-sheet" aria-label={`Fact sheet of ${name()}`}>
        <dl>
          <For each={said()}>
            {(id) => (
              <div>
                <dt>{factKind(id).asks}</dt>
                <dd>{factSays(given(), id)}</dd>
              </div>
            )}
          </For>
        </dl>
        <p class="foot">
          {stampInWords(name())}
          {mounted() && `, ${dateInWords(today())}`}. Said by the house, and not reckoned.
        </p>
      </section>
    </div>
  );
}

/** How one fact is given: its choice or its number, where it has one, and words. */
function FactFields(props: {
  readonly of: FactId;
  readonly given: Fact;
  readonly change: (part: { is?: Fact['is'] | undefined; words?: string | undefined }) => string | undefined;
}) {
  const id = `fact-${props.of}`;
  const { label, choices, ppm, asks } = factKind(props.of);
  const [wrong, setWrong] = createSignal<string>();
  const measure = (text: string) => {
    const isEmpty = text.trim() === '';
    const is = parseNumber(text) ?? text;
    const problem = isEmpty ? undefined : choiceProblem(props.of, is);
    setWrong(problem ?? props.change({ is: isEmpty ? undefined : is }));
  };
  return (
    <div class="fact">
      <Show when={choices}>
        {(all) => (
          <ChoiceField
            id={id}
            label={label}
            options={{
              '': 'Not said',
              ...Object.fromEntries(Object.entries(all()).map(([is, [option]]) => [is, option])),
            }}
            value={String(props.given.is ?? '')}
            take={(is) => props.change({ is: is === '' ? undefined : is })}
          />
        )}
      </Show>
      <Show when={ppm}>
        <StockField
          id={id}
          label={`${label}, ppm`}
          text={String(props.given.is ?? '')}
          problem={wrong()}
          isNumber
          take={measure}
        />
      </Show>
      <WordsField
        id={choices || ppm ? `${id}-words` : id}
        label={choices || ppm ? 'In your own words' : label}
        of={choices || ppm ? label : undefined}
        meaning={choices || ppm ? undefined : asks}
        words={props.given.words ?? ''}
        problemOf={(words) => wordsProblem(props.of, words)}
        take={(words) => props.change({ words })}
      />
    </div>
  );
}

/** What the house says, as it says it to visitors. */
function WordsField(props: {
  readonly id: string;
  readonly label: string;
  /** What the words are of, for those who hear the label alone. */
  readonly of: string | undefined;
  readonly meaning: string | undefined;
  readonly words: string;
  readonly problemOf: (words: string) => string | undefined;
  readonly take: (words: string | undefined) => string | undefined;
}) {
  const [draft, setDraft] = createSignal<string>(); // as it is being typed, until it is taken and left
  const [problem, setProblem] = createSignal<string>();
  let field: HTMLTextAreaElement | undefined;
  useAnnouncement(props.id, problem, () => problem() ?? '', () => field); // prettier-ignore
  createEffect(() => {
    const text = draft() ?? props.words;
    if (field!.value !== text) field!.value = text; // a built field of many lines has no value to take over
  });
  const take = (text: string) => {
    setDraft(text);
    const words = wordsToKeep(text);
    setProblem((words === '' ? undefined : props.problemOf(words)) ?? props.take(words === '' ? undefined : words)); // prettier-ignore
  };
  return (
    <div class="field codes" data-state={problem() ? 'wrong' : 'ok'}>
      <label for={props.id}>
        {props.label}
        <Show when={props.of}>
          <span class="visually-hidden">: {props.of}</span>
        </Show>
      </label>
      <textarea
        ref={field}
        id={props.id}
        rows={2}
        autocomplete="off"
        aria-invalid={problem() ? 'true' : 'false'}
        aria-describedby={
          problem() ? `${props.id}-problem` : props.meaning ? `${props.id}-meaning` : undefined
        }
        onInput={(event) => take(event.currentTarget.value)}
        onBlur={() => !problem() && setDraft(undefined)}
      />
      <Show when={problem()}>
        <p class="problem" id={`${props.id}-problem`}>
          {problem()}
        </p>
      </Show>
      <Show when={props.meaning && !problem()}>
        <p class="meaning" id={`${props.id}-meaning`}>
          {props.meaning}
        </p>
      </Show>
    </div>
  );
}
