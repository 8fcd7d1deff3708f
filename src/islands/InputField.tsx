// One input of a calculator, as its declaration says: a number, a choice or a short table.
import { Match, Show, Switch } from 'solid-js';
import { isChoice, isNumber, isRows, type AnyGiven, type Input } from '../calculators/define.ts';
import { keepFigures } from '../browser/change-figure.ts';
import type { NumberName } from '../house/figures.ts';
import { useKnown } from '../browser/known-store.ts';
import { ChoiceField } from './ChoiceField.tsx';
import { NumberField } from './NumberField.tsx';
import { RowsField } from './RowsField.tsx';
import { WhatMoved } from './WhatMoved.tsx';

type Value = AnyGiven[string];

export interface InputFieldProps {
  readonly id: string;
  readonly of: Input;
  readonly value: Value;
  /** Whatever else decides whether a text can be used. */
  readonly among: AnyGiven;
  /** Takes the value; returns the sentence to show when it cannot be used. */
  readonly take: (value: Value) => string | undefined;
  readonly onState: (wrong: boolean) => void;
  /** Takes what a reader types behind ±. */
  readonly takeSpread: (spread: number) => void;
  readonly reset: (() => void) | undefined;
  /** Also draws a slider. */
  readonly slider: boolean;
}

export function InputField(props: InputFieldProps) {
  const { notKnown, doubtAt } = useKnown();
  /** Whose the number is, where it is not the reader’s. */
  const mark = (of: Input): string | undefined => {
    if ('house' in of) return notKnown(of.house as NumberName);
    return 'from' in of && props.reset === undefined ? doubtAt(of.from) : undefined;
  };
  return (
    <Switch>
      <Match when={isRows(props.of) && props.of}>
        {(rows) => (
          <RowsField
            id={props.id}
            of={rows()}
            rows={props.value as readonly Readonly<Record<string, number>>[]}
            take={props.take}
            onState={props.onState}
          />
        )}
      </Match>
      <Match when={isChoice(props.of) && props.of}>
        {(choice) => (
          <ChoiceField
            id={props.id}
            label={choice().label}
            options={choice().options}
            value={props.value as string}
            take={props.take}
          />
        )}
      </Match>
      <Match when={isNumber(props.of) && props.of}>
        {(number) => (
          <>
            <NumberField
              id={props.id}
              label={number().label}
              kind={number().kind}
              range={number().range}
              step={number().step}
              value={props.value as number}
              among={props.among}
              take={props.take}
              keep={'house' in props.of ? keepFigures : undefined}
              onState={props.onState}
              ofHouse={'house' in props.of}
              notKnown={mark(props.of)}
              slider={props.slider}
              reset={props.reset}
              takeSpread={props.takeSpread}
            />
            <Show when={'house' in props.of && props.of.house}>
              {(figure) => <WhatMoved of={figure()} />}
            </Show>
          </>
        )}
      </Match>
    </Switch>
  );
}
