// The figures of one stage of the house, to be changed by the reader.
import { For, Show } from 'solid-js';
import {
  builtInHouse,
  choiceFigures,
  numberFigures,
  type ChoiceName,
  type NumberName,
  type Stage,
} from '../house/figures.ts';
import { changeFigure, keptAside, resetHouse, useHouse } from '../house/store.ts';
import { NumberField } from './NumberField.tsx';

export default function HouseFigures(props: { readonly stage: Stage }) {
  const { house, name, troubles } = useHouse();
  const numbers = () =>
    (Object.keys(numberFigures) as NumberName[]).filter((n) => numberFigures[n].stage === props.stage);
  const choices = () =>
    (Object.keys(choiceFigures) as ChoiceName[]).filter((n) => choiceFigures[n].stage === props.stage);
  const isChanged = (figure: NumberName | ChoiceName) => house()[figure] !== builtInHouse[figure];
  const changed = () => [...numbers(), ...choices()].some(isChanged);

  return (
    <section class="house-figures" aria-label={`Figures of ${name()}, ${props.stage}`}>
      <Show when={troubles().length > 0}>
        <div class="troubles" role="status">
          <For each={troubles()}>{(trouble) => <p>{trouble}</p>}</For>
          <Show when={keptAside()}>
            {(text) => (
              <a
                download="figures-kept-aside.txt"
                href={URL.createObjectURL(new Blob([text()], { type: 'text/plain' }))}
              >
                Download the text that was kept aside
              </a>
            )}
          </Show>
        </div>
      </Show>
      <form class="inputs" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
        <For each={choices()}>{(choice) => <ChoiceField of={choice} />}</For>
        <For each={numbers()}>
          {(figure) => {
            const { label, kind, range, step, meaning } = numberFigures[figure];
            return (
              <NumberField
                id={`house-${figure}`}
                label={label}
                kind={kind}
                range={range}
                step={step}
                meaning={meaning}
                value={house()[figure]}
                take={(value) => changeFigure(figure, value)}
                reset={isChanged(figure) ? () => changeFigure(figure, builtInHouse[figure]) : undefined}
              />
            );
          }}
        </For>
      </form>
      <Show when={changed()}>
        <p class="actions">
          <button type="button" onClick={resetHouse}>
            Put every figure of the house back to Harrowmere’s
          </button>
        </p>
      </Show>
    </section>
  );
}

function ChoiceField(props: { readonly of: ChoiceName }) {
  const { house } = useHouse();
  const about = () => choiceFigures[props.of];
  return (
    <div class="field">
      <label for={`house-${props.of}`}>{about().label}</label>
      <select
        id={`house-${props.of}`}
        autocomplete="off"
        onChange={(event) => changeFigure(props.of, event.currentTarget.value)}
      >
        <For each={Object.entries(about().options)}>
          {([value, wording]) => (
            <option value={value} selected={house()[props.of] === value}>
              {wording}
            </option>
          )}
        </For>
      </select>
      <p class="meaning">{about().meaning}</p>
    </div>
  );
}
