// The house's spirit held against legal definitions, point by point.
import { createMemo, createSignal, For, onMount } from 'solid-js';
import { format, formatCount, formatNumber as n } from '../core/format.ts';
import { countries, judgeClaim, type Claim } from '../core/law/claim.ts';
import { definitions } from '../core/law/definitions.ts';
import { dayInWords, readLongAgo } from '../core/law/reading.ts';
import type { Line } from '../core/line/line.ts';
import { CASK_SIZES } from '../core/maturing/filling.ts';
import type { SourceId } from '../core/sources.ts';
import { useHouseWhenIdle } from './house-when-idle.ts';
import { useAnnouncement } from './announce.ts';
import { today } from './today.ts';

/** What the reader says of the spirit; the rest is computed from the house. */
const questions = {
  madeIn: { label: 'Made in', options: countries },
  maturedIn: { label: 'Matured in', options: countries },
  bottledIn: { label: 'Bottled in', options: countries },
  grain: {
    label: 'From',
    options: ['malted barley only', 'malted barley and other whole grain', 'less than 51 % malted barley'],
  },
  still: { label: 'Distilled in a', options: ['pot still', 'other still'] },
  oneDistillery: { label: 'All at one distillery', options: ['yes', 'no'] },
  wood: { label: 'Casks of', options: ['used or uncharred oak', 'new charred oak', 'other wood'] },
  added: { label: 'Added', options: ['water only', 'water and plain caramel', 'sweetening or flavouring'] },
} as const;
/** Options that say more to a reader than their names do. */
const wordings: Readonly<Record<string, string>> = {
  Ireland: 'Ireland, north or south',
  'malted barley and other whole grain': 'at least 51 % malted barley, the rest other whole grain',
  'less than 51 % malted barley': 'less than 51 % malted barley, the rest other whole grain',
};
type Question = keyof typeof questions;
type Answers = Readonly<Record<Question, string>>;

const START = Object.fromEntries(
  Object.entries(questions).map(([name, { options }]) => [name, options[0]]),
) as Answers;

/** What the figures of the house say of its spirit. */
function computed({ house, heart, filling, bottling }: Line) {
  return {
    distilledAt: heart.strength,
    largestCask:
      house.barrels + house.hogsheads < 100
        ? CASK_SIZES.butt
        : house.hogsheads > 0
          ? CASK_SIZES.hogshead
          : CASK_SIZES.barrel,
    filledAt: filling.strength,
    years: house.yearsInWood,
    bottledAt: bottling.strength,
  };
}

export default function LawCheck(props: {
  /** The names of the definitions’ sources. */
  readonly sources: Readonly<Partial<Record<SourceId, string>>>;
}) {
  let island: HTMLElement | undefined;
  const { line, name } = useHouseWhenIdle(() => island);
  const [answers, setAnswers] = createSignal<Answers>(START);
  /** The reader’s day: a page may be read long after it was built, and a rule may have changed. */
  const [day, setDay] = createSignal('');
  onMount(() => setDay(today()));
  const facts = createMemo(() => computed(line()));
  const claim = createMemo(
    () =>
      ({ ...answers(), ...facts(), oneDistillery: answers().oneDistillery === 'yes' }) as unknown as Claim,
  );

  return (
    <section ref={island} class="calculator law-check" aria-labelledby="law-check-title">
      <h3 id="law-check-title">Would this spirit qualify?</h3>
      <p class="purpose">
        {name()} collects its heart at {format(facts().distilledAt, 'strength', 1)}, fills at{' '}
        {format(facts().filledAt, 'strength', 1)} into casks of up to {n(facts().largestCask, 0)} L, keeps
        them {formatCount(facts().years, 'year')} and bottles at {format(facts().bottledAt, 'strength', 1)}.
        Say the rest:
      </p>
      <form class="inputs" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
        <For each={Object.keys(questions) as Question[]}>
          {(question) => (
            <div class="field">
              <label for={`law-${question}`}>{questions[question].label}</label>
              <select
                id={`law-${question}`}
                autocomplete="off"
                onChange={(event) => setAnswers({ ...answers(), [question]: event.currentTarget.value })}
              >
                <For each={questions[question].options}>
                  {(option) => (
                    <option value={option} selected={answers()[question] === option}>
                      {wordings[option] ?? option}
                    </option>
                  )}
                </For>
              </select>
            </div>
          )}
        </For>
      </form>
      <div>
        <For each={definitions}>
          {(definition) => {
            const verdicts = createMemo(() => judgeClaim(claim(), definition));
            const missed = () => verdicts().filter(({ met }) => !met);
            const found = createMemo(() =>
              missed().length === 0
                ? 'every point is met'
                : missed().length === 1
                  ? '1 point is not met'
                  : `${missed().length} points are not met`,
            );
            useAnnouncement(`law-${definition.name}`, found, () => `${definition.name}: ${found()}.`);
            return (
              <details class="definition" data-qualifies={missed().length === 0 ? 'yes' : 'no'}>
                <summary>
                  {definition.name}: {found()}
                </summary>
                <ul>
                  <For each={verdicts()}>
                    {({ asks, article, met }) => (
                      <li class={met ? 'met' : 'missed'}>
                        <strong>{met ? 'Met' : 'Not met'}</strong>: {asks} ({article})
                      </li>
                    )}
                  </For>
                </ul>
                <For each={definition.minds?.(claim()) ?? []}>{(mind) => <p>{mind}</p>}</For>
                <p class="sources">
                  {definition.sources.map((id) => props.sources[id]).join('; ')}. In force since{' '}
                  {dayInWords(definition.since)}; read on {dayInWords(definition.readOn)}: {definition.readIn}
                  . The text itself: {definition.textAt}.
                </p>
                {day() && readLongAgo([definition], day()).length > 0 && (
                  <p>This was read more than a year ago. Read the law again before you rely on it.</p>
                )}
              </details>
            );
          }}
        </For>
      </div>
      <p class="note">
        Not asked: enzymes, yeast, the store’s permit, where the water comes from, most of what a label must
        say. Numbers marked ~ are from memory. This is no legal advice: the law where you are and the
        authority that licenses you decide.
      </p>
    </section>
  );
}
