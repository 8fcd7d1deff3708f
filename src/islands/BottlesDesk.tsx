// The bottles of a house beside its own: sizes, strengths and shares, and what they make of a year.
import { Show } from 'solid-js';
import { format } from '../core/format.ts';
import type { Bottle } from '../core/line/bottles.ts';
import { builtInName } from '../house/figures.ts';
import { bottleColumns, bottlesPart, MOST_BOTTLES } from '../house/parts/bottles.ts';
import { usePart } from '../browser/part-store.ts';
import { figureText } from '../house/prose.ts';
import { useHouse } from '../browser/house-store.ts';
import { useAnnouncement } from './announce.ts';
import { focusAfter } from './focus-after.ts';
import { RowsField } from './RowsField.tsx';
import { Troubles } from './Troubles.tsx';
import { useWayBack } from './use-way-back.tsx';

const rowsOf = { label: 'Bottles', columns: bottleColumns, value: [], count: [1, MOST_BOTTLES] } as const;
const HALF = 50; // %, the share that a first bottle begins with

export default function BottlesDesk() {
  let desk: HTMLDivElement | undefined;
  let begin: HTMLButtonElement | undefined;
  const { value: bottles, set } = usePart(bottlesPart);
  const { house, line, name } = useHouse();
  const { say, Said, saying } = useWayBack(true);
  const change = (next: readonly Bottle[]): string | undefined => set(next)[0];
  const own = () =>
    `${format(house().bottleSize, 'bottle')} at ${format(house().bottlingStrength, 'strength', 1)}`;
  const rest = () => 100 - bottles().reduce((sum, { share }) => sum + share, 0);
  const says = () =>
    `${figureText(line(), 'bottling.bottlesPerYear')} bottles a year, ${figureText(line(), 'bottling.bottlesPerCask')} from a mean cask.`;
  useAnnouncement('bottles', says, says, () => desk);
  return (
    <div ref={desk} class="stock-desk bottles-desk">
      <section class="calculator stock" aria-labelledby="bottles-title">
        <h2 id="bottles-title">Bottles</h2>
        <Troubles />
        <Show
          when={bottles().length > 0}
          fallback={
            <>
              <p class="remark">
                All of it goes into {name() === builtInName ? 'one bottle' : 'your house’s own bottle'}, {own()}: {says()}
              </p>
              <p class="actions">
                <button
                  ref={begin}
                  type="button"
                  onClick={(event) => {
                    change([{ size: house().bottleSize, strength: house().bottlingStrength, share: HALF }]);
                    focusAfter(event, () => document.getElementById('bottles-0-size'));
                  }}
                >
                  Add another bottle
                </button>
              </p>
            </>
          }
        >
          <RowsField
            id="bottles"
            of={rowsOf}
            rows={bottles() as unknown as readonly Readonly<Record<string, number>>[]}
            take={(rows) => change(rows as unknown as readonly Bottle[])}
            onState={() => undefined}
          />
          <p class="remark">
            <Show when={rest() > 0}>
              The other {format(rest(), 'percent', 0)} goes into the house’s own bottle, {own()}.{' '}
            </Show>
            {says()} All together are at {figureText(line(), 'bottling.strength', 'mash', 1)}.
          </p>
          <p class="actions">
            <button
              type="button"
              onClick={(event) => {
                const before = bottles();
                change([]);
                say('All of it goes into one bottle.', () => {
                  change(before);
                  return 'The bottles are as they were.';
                });
                focusAfter(event, saying);
              }}
            >
              Only one bottle
            </button>
          </p>
        </Show>
        <Said />
        <p class="purpose">Spirit burns, and its vapour with it: <a href="/maturing/safe/">stay safe</a>.</p>
      </section>
    </div>
  );
} // prettier-ignore
