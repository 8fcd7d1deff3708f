// The groups of the register as compact rows, a page at a time, each with what one of its casks holds and gives.
import { createSignal, For, Show } from 'solid-js';
import { format, formatNumber } from '../core/format.ts';
import { dayInWords } from '../core/law/reading.ts';
import { isRefusal } from '../core/refusal.ts';
import { bottlesFromOne, type BottlingFigures } from '../core/stock/dump.ts';
import type { CaskGroup } from '../core/stock/group.ts';
import { casksOf } from '../core/stock/sizes.ts';
import type { StockTotals } from '../core/stock/totals.ts';

const ROWS = 12; // on a page: what a telephone shows in two screens
const ordinals = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth'];

/** What a group is called: its name, or what it is. */
export const groupTitle = (group: CaskGroup): string =>
  group.name ?? `${casksOf(group.casks, group.size)}, ${group.filled.slice(0, 4)}`;

const described = ({ casks, size, filled, fill, laid, owner }: CaskGroup): string =>
  [
    casksOf(casks, size),
    `filled ${dayInWords(filled)}`,
    fill === undefined ? '' : `${ordinals[fill - 1]} fill`,
    laid === 'elsewhere' ? 'elsewhere' : '',
    owner === 'sold' ? 'sold' : '',
  ]
    .filter((each) => each !== '')
    .join(', ');

export interface StockGroupsProps {
  readonly groups: readonly CaskGroup[];
  readonly totals: StockTotals | undefined;
  readonly house: BottlingFigures;
  readonly edit: (at: number) => void;
}

export function StockGroups(props: StockGroupsProps) {
  const [page, setPage] = createSignal(0);
  const pages = () => Math.max(1, Math.ceil(props.groups.length / ROWS));
  const at = () => Math.min(page(), pages() - 1) * ROWS;
  const rows = () => props.groups.slice(at(), at() + ROWS);
  const heldAt = (row: number) => props.totals?.held[at() + row];
  const inEach = (row: number) => {
    const held = heldAt(row);
    if (!held) return '…';
    return isRefusal(held) ? '—' : `${format(held.volume, 'volume20')} ${format(held.strength, 'strength')}`;
  };
  const bottles = (row: number) => {
    const held = heldAt(row);
    if (!held) return '…';
    const found = isRefusal(held) ? held : bottlesFromOne(held, props.house);
    return typeof found === 'object' && isRefusal(found) ? '—' : formatNumber(found as number, 0);
  };
  const trouble = (row: number): string | undefined => {
    const held = heldAt(row);
    if (!held) return undefined;
    const found = isRefusal(held) ? held : bottlesFromOne(held, props.house);
    return typeof found === 'object' && isRefusal(found) ? found.refused : undefined;
  };

  return (
    <>
      <div class="table" tabindex="0" role="group" aria-label="Groups of casks">
        <table class="groups">
          <thead>
            <tr>
              <th scope="col">Group</th>
              <th scope="col" class="number">
                In each now
              </th>
              <th scope="col" class="number">
                Bottles from one
              </th>
            </tr>
          </thead>
          <tbody>
            <For each={rows()}>
              {(group, row) => (
                <tr>
                  <th scope="row">
                    <button
                      type="button"
                      id={`group-row-${at() + row()}`}
                      aria-label={`Change ${groupTitle(group)}`}
                      onClick={() => props.edit(at() + row())}
                    >
                      {groupTitle(group)}
                    </button>
                    <span class="meaning">{described(group)}</span>
                    <Show when={trouble(row())}>{(says) => <span class="problem">{says()}</span>}</Show>
                  </th>
                  <td class="number">{inEach(row())}</td>
                  <td class="number">{bottles(row())}</td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </div>
      <Show when={pages() > 1}>
        <p class="actions">
          Groups {at() + 1} to {at() + rows().length} of {props.groups.length}{' '}
          <button type="button" disabled={at() === 0} onClick={() => setPage(at() / ROWS - 1)}>
            Those before
          </button>{' '}
          <button
            type="button"
            disabled={at() + ROWS >= props.groups.length}
            onClick={() => setPage(at() / ROWS + 1)}
          >
            Those after
          </button>
        </p>
      </Show>
    </>
  );
}
