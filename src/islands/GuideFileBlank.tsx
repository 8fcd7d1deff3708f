// The figures of the walk with blanks, for paper, and a key to fold back behind them.
import { createMemo, For } from 'solid-js';
import { figuresByRoom } from '../walk/guide-file.ts';
import type { Walk } from '../walk/walk.ts';
import { useWhy } from './guide-file-why.ts';

export function BlankPart(props: { readonly walk: Walk }) {
  const why = useWhy();
  const rooms = createMemo(() =>
    figuresByRoom(props.walk)
      .map((ids, i) => ({ name: props.walk.rooms[i]!.name, figures: ids.flatMap((id) => why(id) ?? []) }))
      .filter(({ figures }) => figures.length > 0),
  );
  return (
    <>
      <p>Fold the key back along the line, write what you would say, and look.</p>
      <table class="guide-blank">
        <thead>
          <tr>
            <th scope="col">Figure</th>
            <th scope="col">You say</th>
            <th scope="col" class="key">
              The key
            </th>
          </tr>
        </thead>
        <For each={rooms()}>
          {({ name, figures }) => (
            <tbody>
              <tr>
                <th scope="rowgroup" colspan="2">
                  {name}
                </th>
                <td class="key" />
              </tr>
              <For each={figures}>
                {({ label, says }) => (
                  <tr>
                    <th scope="row">{label}</th>
                    <td class="blank" />
                    <td class="key">{says}</td>
                  </tr>
                )}
              </For>
            </tbody>
          )}
        </For>
      </table>
    </>
  );
}
