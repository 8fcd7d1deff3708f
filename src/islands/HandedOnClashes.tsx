// What the reader and the release both changed, each otherwise: he chooses, one by one, and nothing is chosen for him.
import { For, Show } from 'solid-js';
import { labelOfOffer, type Clash } from '../handing/merge.ts';

/** Whose holds, of each that was chosen. */
export type Choices = Readonly<Record<string, 'yours' | 'theirs'>>;

export function HandedOnClashes(props: {
  readonly clashes: readonly Clash[];
  readonly release: number;
  readonly choices: Choices;
  readonly choose: (what: string, whose: 'yours' | 'theirs') => void;
}) {
  return (
    <Show when={props.clashes.length > 0}>
      <p>You and the release have both changed these. Choose which holds:</p>
      <For each={props.clashes}>
        {({ what, was, yours, theirs }) => (
          <fieldset>
            <legend>
              {labelOfOffer(what)}
              {was && `, was ${was}`}
            </legend>
            <label class="tick">
              <input
                type="radio"
                name={`clash-${what}`}
                checked={props.choices[what] === 'theirs'}
                onChange={() => props.choose(what, 'theirs')}
              />
              <span>
                Release {props.release}: {theirs}
              </span>
            </label>
            <label class="tick">
              <input
                type="radio"
                name={`clash-${what}`}
                checked={props.choices[what] === 'yours'}
                onChange={() => props.choose(what, 'yours')}
              />
              <span>Yours: {yours}</span>
            </label>
          </fieldset>
        )}
      </For>
    </Show>
  );
}
