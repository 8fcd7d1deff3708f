// The form of a question of one's own: wording, values, and the formula with its known mistakes, or choices.
import { For, Index, Show } from 'solid-js';
import { kindMeanings } from '../core/kind-meanings.ts';
import { kinds, type KindName } from '../core/kinds.ts';
import { unitsRead } from '../core/units.ts';
import { kindsOffered, type Draft } from '../exercises/own/draft.ts';
import { formulaFunctions, LONGEST_FORMULA } from '../exercises/own/formula.ts';
import { OWN_QUESTION_LIMITS } from '../exercises/own/own-question.ts';
import { unitLabel } from '../exercises/own/unit-label.ts';
import { levels, levelTitles, topics, topicTitles, type Level, type Topic } from '../exercises/topics.ts';

const MOST_DIGITS = 4;

export function OwnQuestionForm(props: {
  readonly draft: Draft;
  readonly change: (part: Partial<Draft>) => void;
}) {
  const changed = <T extends object>(list: readonly T[], place: number, part: Partial<T>) =>
    list.map((each, i) => (i === place ? { ...each, ...part } : each));
  return (
    <form class="own-form" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
      <Line
        id="own-q-title"
        label="Title"
        most={OWN_QUESTION_LIMITS.title}
        value={props.draft.title}
        take={(title) => props.change({ title })}
      />
      <div class="field">
        <label for="own-q-topic">Stage</label>
        <select
          id="own-q-topic"
          autocomplete="off"
          value={props.draft.topic}
          onChange={(event) => props.change({ topic: event.currentTarget.value as Topic })}
        >
          <For each={topics}>{(each) => <option value={each}>{topicTitles[each]}</option>}</For>
        </select>
      </div>
      <div class="field">
        <label for="own-q-level">Level</label>
        <select
          id="own-q-level"
          autocomplete="off"
          value={String(props.draft.level)}
          onChange={(event) => props.change({ level: Number(event.currentTarget.value) as Level })}
        >
          <For each={levels}>
            {(each) => <option value={String(each)}>{`${each}: ${levelTitles[each]}`}</option>}
          </For>
        </select>
      </div>
      <div class="field codes">
        <label for="own-q-wording">The question; a value stands in it as {'{malt}'}</label>
        <textarea
          id="own-q-wording"
          class="own-wording"
          rows="3"
          maxlength={OWN_QUESTION_LIMITS.wording}
          autocomplete="off"
          value={props.draft.wording}
          onInput={(event) => props.change({ wording: event.currentTarget.value })}
        />
      </div>
      <fieldset>
        <legend>Values</legend>
        <p class="small">
          Each trainee’s numbers are drawn from a range, 4000 to 6000 step 500, or a list, 390; 402; 411.
        </p>
        <Index each={props.draft.values}>
          {(value, i) => (
            <div class="own-row">
              <Line
                id={`own-v-name-${i}`}
                label={`Name of value ${i + 1}`}
                most={24}
                value={value().name}
                take={(name) => props.change({ values: changed(props.draft.values, i, { name }) })}
              />
              <div class="field">
                <label for={`own-v-unit-${i}`}>Its unit</label>
                <select
                  id={`own-v-unit-${i}`}
                  autocomplete="off"
                  value={value().unit}
                  onChange={(event) =>
                    props.change({
                      values: changed(props.draft.values, i, { unit: event.currentTarget.value }),
                    })
                  }
                >
                  <For each={kindsOffered}>
                    {(kind) => (
                      <optgroup label={kindMeanings[kind]}>
                        <For each={unitsRead(kind)}>
                          {({ unit }) => <option value={`${kind}|${unit}`}>{unitLabel(kind, unit)}</option>}
                        </For>
                      </optgroup>
                    )}
                  </For>
                </select>
              </div>
              <Line
                id={`own-v-takes-${i}`}
                label="Numbers it may take"
                most={200}
                value={value().takes}
                take={(takes) => props.change({ values: changed(props.draft.values, i, { takes }) })}
              />
            </div>
          )}
        </Index>
        <More
          what="value"
          count={props.draft.values.length}
          most={OWN_QUESTION_LIMITS.values}
          add={() =>
            props.change({ values: [...props.draft.values, { name: '', unit: 'mass|kg', takes: '' }] })
          }
          less={() => props.change({ values: props.draft.values.slice(0, -1) })}
        />
      </fieldset>
      <div class="field">
        <label for="own-q-asks">It is answered by</label>
        <select
          id="own-q-asks"
          autocomplete="off"
          value={props.draft.asks}
          onChange={(event) => props.change({ asks: event.currentTarget.value as Draft['asks'] })}
        >
          <option value="number">a number, by a formula</option>
          <option value="choice">one of a few choices</option>
        </select>
      </div>
      <Show when={props.draft.asks === 'number'} fallback={<Choices {...props} />}>
        <fieldset>
          <legend>The answer</legend>
          <p class="small">
            Write + − × / ^ and brackets, names of values, and {Object.keys(formulaFunctions).join(', ')}.
            malt[t] takes malt in tonnes; 0.789[kg/L] is a number with its unit.
          </p>
          <Line
            id="own-q-formula"
            label="Formula of the answer"
            most={LONGEST_FORMULA}
            value={props.draft.formula}
            take={(formula) => props.change({ formula })}
          />
          <div class="field">
            <label for="own-q-of">Asked for in</label>
            <select
              id="own-q-of"
              autocomplete="off"
              value={props.draft.of}
              onChange={(event) => props.change({ of: event.currentTarget.value as KindName })}
            >
              <For each={kindsOffered}>
                {(kind) => (
                  <option
                    value={kind}
                  >{`${kinds[kind].unit || 'a plain number'}: ${kindMeanings[kind]}`}</option>
                )}
              </For>
            </select>
          </div>
          <div class="field">
            <label for="own-q-digits">Decimals asked for</label>
            <select
              id="own-q-digits"
              autocomplete="off"
              value={String(props.draft.digits)}
              onChange={(event) => props.change({ digits: Number(event.currentTarget.value) })}
            >
              <For each={Array.from({ length: MOST_DIGITS + 1 }, (_, i) => i)}>
                {(each) => <option value={String(each)}>{each}</option>}
              </For>
            </select>
          </div>
          <div class="field">
            <label for="own-q-within">Counts as right</label>
            <select
              id="own-q-within"
              autocomplete="off"
              value={String(props.draft.within)}
              onChange={(event) => props.change({ within: Number(event.currentTarget.value) })}
            >
              <For each={[0, 0.5, 1, 2, 5, 10, 20, 30]}>
                {(each) => (
                  <option value={String(each)}>
                    {each === 0 ? 'rounded as asked only' : `within ${each} % of the answer`}
                  </option>
                )}
              </For>
            </select>
          </div>
          <div class="field">
            <label for="own-q-whole">Whole things</label>
            <select
              id="own-q-whole"
              autocomplete="off"
              value={props.draft.whole}
              onChange={(event) => props.change({ whole: event.currentTarget.value as Draft['whole'] })}
            >
              <option value="">no: rounded to the nearest</option>
              <option value="up">up: so many are needed</option>
              <option value="down">down: so many can be had</option>
            </select>
          </div>
        </fieldset>
        <fieldset>
          <legend>Known mistakes</legend>
          <Index each={props.draft.slips}>
            {(slip, i) => (
              <div class="own-row">
                <Line
                  id={`own-s-formula-${i}`}
                  label={`Formula of mistake ${i + 1}`}
                  most={LONGEST_FORMULA}
                  value={slip().formula}
                  take={(formula) => props.change({ slips: changed(props.draft.slips, i, { formula }) })}
                />
                <Line
                  id={`own-s-say-${i}`}
                  label="What is said to whoever made it"
                  most={OWN_QUESTION_LIMITS.say}
                  value={slip().say}
                  take={(say) => props.change({ slips: changed(props.draft.slips, i, { say }) })}
                />
              </div>
            )}
          </Index>
          <More
            what="mistake"
            count={props.draft.slips.length}
            most={OWN_QUESTION_LIMITS.slips}
            add={() => props.change({ slips: [...props.draft.slips, { formula: '', say: '' }] })}
            less={() => props.change({ slips: props.draft.slips.slice(0, -1) })}
          />
        </fieldset>
      </Show>
      <Line
        id="own-q-rests"
        label="What it rests on: a book, the site’s own procedure"
        most={OWN_QUESTION_LIMITS.rests}
        value={props.draft.rests}
        take={(rests) => props.change({ rests })}
      />
    </form>
  );
}

function Choices(props: { readonly draft: Draft; readonly change: (part: Partial<Draft>) => void }) {
  const changed = (place: number, part: Partial<Draft['options'][number]>) =>
    props.change({
      options: props.draft.options.map((each, i) => (i === place ? { ...each, ...part } : each)),
    });
  return (
    <fieldset>
      <legend>Choices; mark the one that is right</legend>
      <Index each={props.draft.options}>
        {(option, i) => (
          <div class="own-row">
            <label class="tick">
              <input
                type="radio"
                name="own-right"
                autocomplete="off"
                checked={props.draft.right === i}
                onChange={() => props.change({ right: i })}
              />
              <span>Choice {i + 1} is right</span>
            </label>
            <Line
              id={`own-o-text-${i}`}
              label={`Choice ${i + 1}`}
              most={OWN_QUESTION_LIMITS.say}
              value={option().text}
              take={(text) => changed(i, { text })}
            />
            <Line
              id={`own-o-why-${i}`}
              label="Why it is right, or is not"
              most={OWN_QUESTION_LIMITS.say}
              value={option().why}
              take={(why) => changed(i, { why })}
            />
          </div>
        )}
      </Index>
      <More
        what="choice"
        count={props.draft.options.length}
        most={OWN_QUESTION_LIMITS.options}
        add={() => props.change({ options: [...props.draft.options, { text: '', why: '' }] })}
        less={() => props.change({ options: props.draft.options.slice(0, -1) })}
      />
    </fieldset>
  );
}

function Line(props: {
  readonly id: string;
  readonly label: string;
  readonly most: number;
  readonly value: string;
  readonly take: (text: string) => void;
}) {
  return (
    <div class="field own-line">
      <label for={props.id}>{props.label}</label>
      <input
        id={props.id}
        class="words"
        type="text"
        maxlength={props.most}
        autocomplete="off"
        spellcheck={false}
        value={props.value}
        onInput={(event) => props.take(event.currentTarget.value)}
      />
    </div>
  );
}

function More(props: {
  readonly what: string;
  readonly count: number;
  readonly most: number;
  readonly add: () => void;
  readonly less: () => void;
}) {
  return (
    <p class="actions">
      <button type="button" disabled={props.count >= props.most} onClick={() => props.add()}>
        One {props.what} more
      </button>
      <button type="button" disabled={props.count === 0} onClick={() => props.less()}>
        One {props.what} less
      </button>
    </p>
  );
}
