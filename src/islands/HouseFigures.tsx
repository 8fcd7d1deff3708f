// Some figures of the house, to be changed by the reader: a line each, and what each means a touch away.
import { createMemo, createSignal, For, Show } from 'solid-js';
import { foreshotsCount } from '../core/distilling/foreshots.ts';
import { figureTable, type FigureId } from '../core/figures/index.ts';
import { waysKnown, waysToKnow, type WayKnown } from '../core/figures/standing.ts';
import { formatNumber } from '../core/format.ts';
import { kinds } from '../core/kinds.ts';
import { cautions } from '../core/line/cautions.ts';
import type { SourceId } from '../core/sources.ts';
import {
  builtInHouse,
  choiceFigures,
  numberFigures,
  type ChoiceName,
  type FigureName,
  type NumberName,
  type Stage,
} from '../house/figures.ts';
import { followsFrom } from '../house/follows.ts';
import { useKnown } from '../browser/known-store.ts';
import { changeFigure, giveAsItStands, keepFigures, putFigureBack } from '../browser/change-figure.ts';
import { useHouse } from '../browser/house-store.ts';
import { useHouseWhenIdle } from './house-when-idle.ts';
import { ChoiceField } from './ChoiceField.tsx';
import { CountedField } from './CountedField.tsx';
import { NumberField } from './NumberField.tsx';
import { Troubles } from './Troubles.tsx';
import { isUnusual } from '../house/trial.ts';
import { WhatMoved } from './WhatMoved.tsx';

export interface HouseFiguresProps {
  /** The stage whose figures they are; without it, only those of the house that are named. */
  readonly stage?: Stage;
  readonly only?: readonly FigureName[];
  /** Computed figures that may be counted or read, asked for after the others. */
  readonly counted?: readonly FigureId[];
  /** Where the house is entered: also tells of each figure what follows from it, and whether it is known. */
  readonly full?: boolean;
  /** Titles of the calculators that take each figure. */
  readonly uses?: Readonly<Record<string, readonly string[]>>;
  /** The names of the sources that say what is usual. */
  readonly sources: Readonly<Partial<Record<SourceId, string>>>;
}

export default function HouseFigures(props: HouseFiguresProps) {
  let island: HTMLElement | undefined;
  const { house, line, name } = useHouseWhenIdle(() => island);
  const { known, notKnown } = useKnown();
  const warned = createMemo(() => cautions(line()).filter(({ figure }) => figure !== undefined));
  const isAsked = (name: FigureName, stage: Stage) =>
    props.only?.includes(name) ?? (props.stage === undefined || stage === props.stage);
  const numbers = (Object.keys(numberFigures) as NumberName[]).filter((n) =>
    isAsked(n, numberFigures[n].stage),
  );
  const choices = (Object.keys(choiceFigures) as ChoiceName[]).filter((n) =>
    isAsked(n, choiceFigures[n].stage),
  );

  return (
    <section
      ref={island}
      class="house-figures"
      aria-label={`Figures of ${name()}${props.stage ? `, ${props.stage}` : ''}`}
    >
      <Show when={!props.full}>
        <Troubles />
      </Show>
      <form class="inputs" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
        <For each={choices}>
          {(choice) => (
            <div class="figure-of-house">
              <ChoiceField
                id={`house-${choice}`}
                label={choiceFigures[choice].label}
                options={choiceFigures[choice].options}
                value={house()[choice]}
                take={(value) => changeFigure(choice, value)}
              />
              <About label={choiceFigures[choice].label} meaning={choiceFigures[choice].meaning} />
              <WhatMoved of={choice} />
            </div>
          )}
        </For>
        <For each={numbers}>
          {(figure) => {
            const { label, kind, range, step, meaning } = numberFigures[figure];
            const mark = () => notKnown(figure, props.full);
            const isChanged = () =>
              house()[figure] !== builtInHouse[figure] || (props.full && figure in known().given);
            return (
              <Show when={foreshotsCount(figure, house().foreshotsBy)}>
                <div class="figure-of-house">
                  <NumberField
                    id={`house-${figure}`}
                    label={label}
                    kind={kind}
                    range={range}
                    step={step}
                    value={house()[figure]}
                    among={house()}
                    take={(value) => changeFigure(figure, value)}
                    keep={keepFigures}
                    notKnown={mark()}
                    takeOver={props.full && mark() ? () => giveAsItStands(figure) : undefined}
                    reset={isChanged() ? () => putFigureBack(figure) : undefined}
                  />
                  <About
                    label={label}
                    meaning={meaning + usually(figure, props.sources)}
                    from={props.full ? figure : undefined}
                    uses={props.uses?.[figure]}
                  />
                  <WhatMoved of={figure} />
                  <Show when={isUnusual(figure, house()[figure])}>
                    <p class="unusual">Outside the usual range, but right if your house does so.</p>
                  </Show>
                  <For each={warned().filter((caution) => caution.figure === figure)}>
                    {({ says }) => <p class="unusual">{says}</p>}
                  </For>
                </div>
              </Show>
            );
          }}
        </For>
        <For each={props.counted}>{(id) => <CountedField of={id} />}</For>
      </form>
      <Show when={!props.full}>
        <p class="note of-house-note">
          A field marked “house” in a calculator is one of these figures: change it there and it changes in
          the whole book. “Put back” undoes it.
        </p>
        <p class="actions">
          <a href="../../house/">Your house: all its figures, and your other houses</a>
        </p>
      </Show>
    </section>
  );
}

/** What is usual, as the end of a sentence. */
function usually(figure: NumberName, sources: HouseFiguresProps['sources']): string {
  const known = figureTable[figure].usual;
  if (!known) return '';
  const { kind } = numberFigures[figure];
  const digits = (end: number) => (kind === 'gravity' ? 3 : end % 1 === 0 ? 0 : 1);
  const ends = [...new Set(known.range.map((end) => formatNumber(end, digits(end))))].join('–');
  const { unit } = kinds[kind];
  return ` Usual: ${ends}${unit && ` ${unit}`} (${sources[known.source]}).`;
}

interface AboutProps {
  readonly label: string;
  readonly meaning: string;
  /** The figure whose consequences are told too. */
  readonly from?: NumberName | undefined;
  /** Titles of the calculators that take the figure. */
  readonly uses?: readonly string[] | undefined;
}
/** What a figure means, and what moves when it moves one step: worked out when it is opened, and live from then on. */
function About(props: AboutProps) {
  const { house, line } = useHouse();
  const { known } = useKnown();
  /** How it is known, where it can be known in more ways than one. */
  const wayOf = () => {
    const way = props.from && waysToKnow(props.from).length > 1 ? known().given[props.from] : undefined;
    return way === 'follows' ? undefined : way;
  };
  const [open, setOpen] = createSignal(false);
  const found = createMemo(() =>
    open() && props.from ? followsFrom(house(), line(), props.from) : undefined,
  );
  return (
    <details class="about" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary aria-label={`About ${props.label}`}>?</summary>
      <p>{props.meaning}</p>
      <Show when={open() && wayOf()}>
        {(way) => (
          <ChoiceField
            id={`house-${props.from}-way`}
            label="How it is known"
            options={waysKnown}
            value={way()}
            take={(next) => giveAsItStands(props.from!, next as WayKnown)}
          />
        )}
      </Show>
      <Show when={found()}>
        {(consequence) => (
          <Show
            when={consequence().moved.length > 0}
            fallback={
              <p>
                {consequence().refused
                  ? `At ${consequence().step} the house would not run: ${consequence().refused}`
                  : `At ${consequence().step} instead, none of the main figures changes by a thousandth.`}
              </p>
            }
          >
            <p>At {consequence().step} instead:</p>
            <ul>
              <For each={consequence().moved}>
                {({ what, was, now }) => (
                  <li>
                    {what}: {was} → {now}
                  </li>
                )}
              </For>
            </ul>
          </Show>
        )}
      </Show>
      <Show when={props.uses?.length}>
        <p>Calculators that use it: {props.uses!.join('; ')}.</p>
      </Show>
    </details>
  );
}
