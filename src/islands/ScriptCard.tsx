// The card of a talk: what is said and not contradicted, as it is said, or as the house has it where that is known; what is contradicted is left out by name.
import { createMemo, For, Show } from 'solid-js';
import { plain, quotableFigures, type SaidValue } from '../core/cross-check/quoted.ts';
import type { JudgedFigure, Reconciliation } from '../core/cross-check/reconcile.ts';
import { spokenFigure } from '../core/line/spoken.ts';
import { rangeInWords } from '../core/cross-check/verdict.ts';
import { setByTheHouse } from '../core/cross-check/set-by-the-house.ts';
import { useKnown } from '../browser/known-store.ts';
import { useHouse } from '../browser/house-store.ts';
import type { HeldFigure } from '../talk/own-house.ts';
import { heldByKnown } from './script-held.ts';

const inDoubt = ({ finding }: JudgedFigure) => finding !== 'agrees' && finding !== 'not checkable';

/** A figure as it was said, in the words of a guide. */
function asSaid({ figure, said }: { figure: JudgedFigure['figure']; said: SaidValue }): string {
  if (said.as === 'range') return `${plain(figure, said.low)} to ${plain(figure, said.high)}`;
  const text = spokenFigure(figure, said.value);
  return said.as === 'about' && !/^(?:about|just|some|hardly)/.test(text) ? `about ${text}` : text;
}

export function ScriptCard(props: { readonly of: Reconciliation; readonly held: boolean }) {
  const { line, name } = useHouse();
  const known = useKnown();
  const rows = createMemo(() =>
    props.of.figures.map((judged) => ({
      judged,
      own: props.held ? heldByKnown(judged, line(), known) : undefined,
    })),
  );
  const carried = () => rows().filter(({ judged, own }) => own !== undefined || !inDoubt(judged));
  const left = () => rows().filter(({ judged, own }) => own === undefined && inDoubt(judged));
  const words = (judged: JudgedFigure, own: HeldFigure | undefined) =>
    own && !own.agrees ? spokenFigure(judged.figure, own.house) : asSaid(judged);
  return (
    <section class="script-card" aria-label="Card of the talk">
      <h3>
        {props.held
          ? `A card of your talk, as ${name()} has it`
          : left().length > 0
            ? 'A card of the figures that are in no doubt'
            : 'A card of your figures'}
      </h3>
      <article class="card">
        <div class="side">
          <dl>
            <For each={carried()}>
              {({ judged, own }) => (
                <div>
                  <dt>{quotableFigures[judged.figure].label}</dt>
                  <dd>{words(judged, own)}</dd>
                </div>
              )}
            </For>
          </dl>
          <Show when={carried().length === 0}>
            <p>Every figure is in doubt.</p>
          </Show>
          <p class="foot">
            {props.held
              ? `From your talk; where ${name()} is known to have another figure, it is ${name()}’s.`
              : 'From your talk, as you say it.'}
          </p>
        </div>
      </article>
      <Show when={left().length > 0}>
        <p>Left out, because they do not agree with each other or with the rest:</p>
        <ul class="sentences">
          <For each={left()}>{({ judged }) => <li>{leftOut(judged)}</li>}</For>
        </ul>
      </Show>
    </section>
  );
}

/** A figure that is left out, with what would fit if it alone were wrong; what the house sets has to be looked up. */
function leftOut({ figure, fits, adjusted, reason }: JudgedFigure): string {
  const { label } = quotableFigures[figure];
  if (reason !== undefined) return `${label} cannot be: ${reason}`;
  if (setByTheHouse.includes(figure)) return `${label}: check it: the house decides it`;
  const { low, high } = fits ?? adjusted;
  return `${label}: if this one alone is wrong, ${rangeInWords(figure, low, high)} would fit`;
}
