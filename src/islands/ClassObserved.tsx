// Tasks that were seen done, by person and stage, as records of observed tasks have put them into the class book.
import { createMemo, For, Show } from 'solid-js';
import type { ClassBook } from '../exercises/class/book.ts';
import { observedOf } from '../exercises/class/observed.ts';
import { dateInWords } from './today.ts';

export function ClassObserved(props: { readonly book: ClassBook }) {
  const rows = createMemo(() => observedOf(props.book));
  return (
    <Show when={rows().length > 0}>
      <section class="calculator class-part" aria-labelledby="class-seen">
        <h2 id="class-seen">Tasks seen</h2>
        <div class="table" tabindex="0" role="group" aria-label="Tasks seen">
          <table>
            <thead>
              <tr>
                <th scope="col">Name</th>
                <th scope="col">Stage</th>
                <th scope="col">Alone</th>
                <th scope="col">Prompted</th>
                <th scope="col">Not yet</th>
                <th scope="col">Last on</th>
                <th scope="col">Assessor</th>
              </tr>
            </thead>
            <tbody>
              <For each={rows()}>
                {(row) => (
                  <tr>
                    <th scope="row">{row.name}</th>
                    <td>
                      <a href={`../tasks/${row.stage}/`}>{row.stage}</a>
                    </td>
                    <td class="number">{row.counts.alone}</td>
                    <td class="number">{row.counts.prompted}</td>
                    <td class="number">{row.counts['not yet']}</td>
                    <td>{dateInWords(row.lastDay)}</td>
                    <td>{row.assessors.join('; ') || 'not named'}</td>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </div>
        <p class="small">
          Tasks and questions together, each as it was seen last. The printed record names each of them.
        </p>
      </section>
    </Show>
  );
}
