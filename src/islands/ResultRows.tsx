// The rows of a trainer's table of results, and the table as a file.
import { For, Show } from 'solid-js';
import { missedIn, scoreOf, type Result } from '../exercises/result.ts';
import { blanksOf, missesInWords, saveAsCsv, saveAsJson } from './results-read.ts';
import { sheetsSet } from './sheets-set.ts';
import { inWords as dayInWords } from './today.ts';

/** The way to a sheet that this browser handed out, by the short name in a code. */
function addressOf(mark: string): string | undefined {
  const address = sheetsSet().find((each) => each.mark === mark)?.address;
  return address && `../${address}`;
}

export function ResultRows(props: { readonly results: readonly Result[]; readonly mark: string }) {
  return (
    <>
      <div class="table" tabindex="0" role="group" aria-label="Results">
        <table>
          <thead>
            <tr>
              <th scope="col">Name</th>
              <th scope="col">Version</th>
              <th scope="col">Day and attempt</th>
              <th scope="col">Points</th>
              <th scope="col">Missed</th>
              <th scope="col">Not answered</th>
              <th scope="col">Misses</th>
            </tr>
          </thead>
          <tbody>
            <For each={props.results}>
              {(result) => (
                <tr>
                  <th scope="row">{result.name || 'no name'}</th>
                  <td class="number">
                    {result.version}
                    {result.sheet === props.mark ? '' : `, of another sheet (${result.sheet})`}
                    <Show when={result.sheet !== props.mark && addressOf(result.sheet)}>
                      {(address) => (
                        <>
                          {' '}
                          <a href={address()}>open it</a>
                        </>
                      )}
                    </Show>
                  </td>
                  <td>
                    {result.day === undefined
                      ? 'not said'
                      : `${dayInWords(result.day)}, attempt ${result.attempt}`}
                  </td>
                  <td class="number">
                    {scoreOf(result)} of {result.marks.length}
                  </td>
                  <td class="number">{missedIn(result).join(', ')}</td>
                  <td class="number">{blanksOf(result)}</td>
                  <td>{missesInWords(result)}</td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </div>
      <p class="actions">
        <button type="button" onClick={() => saveAsCsv(props.results)}>
          Save the table as CSV
        </button>
        <button type="button" onClick={() => saveAsJson(props.results)}>
          Save the results as JSON
        </button>
      </p>
    </>
  );
}
