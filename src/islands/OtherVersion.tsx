// Before a version is opened where another of the same sheet was handed in: whoever goes on says who they are.
import { createSignal } from 'solid-js';
import type { HandedIn } from './handed-in-here.ts';

export function OtherVersion(props: {
  readonly of: HandedIn;
  readonly version: number;
  readonly goOn: (name: string) => void;
}) {
  const [name, setName] = createSignal('');
  return (
    <form
      class="calculator"
      autocomplete="off"
      onSubmit={(event) => {
        event.preventDefault();
        if (name().trim() !== '') props.goOn(name().trim());
      }}
    >
      <h2 id="other-version" tabindex="-1">
        Version {props.of.version} of this sheet was handed in here
      </h2>
      <p>
        {props.of.name === '' ? 'It has no name on it.' : `It is by ${props.of.name}.`} What was handed in
        stays. To begin version {props.version}, say who you are.
      </p>
      <div class="field">
        <label for="other-name">Your name</label>
        <input
          id="other-name"
          class="words"
          type="text"
          maxlength="60"
          autocomplete="off"
          value={name()}
          onInput={(event) => setName(event.currentTarget.value)}
        />
      </div>
      <p class="actions">
        <button type="submit" disabled={name().trim() === ''}>
          Begin version {props.version}
        </button>
      </p>
    </form>
  );
}
