// The rows of a trainer's table of results, and the table as a file.
import { Show } from 'solid-js';
import { scoreOfMarks, type SheetResult } from '../exercises/result.ts';
import { ResultLines } from './ResultLines.tsx';
import { blanksOf, missesInWords, saveAsCsv, saveAsJson } from './results-read.ts';
import { sheetsSet } from './sheets-set.ts';

/** The way to a sheet that this browser handed out, by the short name in a code. */
function addressOf(mark: string): string | undefined {
  const address = sheetsSet().find((each) => each.mark === mark)?.address;
  return address && `../${address}`;
}

export function ResultRows(props: { readonly results: readonly SheetResult[]; readonly mark: string }) {
  return (
    <>
      <div class="table" tabindex="0" role="group" aria-label="Results">
        <ResultLines
          results={props.results}
          version={(result) => (
            <>
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
            </>
          )}
          points={{ head: 'Points', says: (result) => `${scoreOfMarks(result)} of ${result.marks.length}` }}
          more={[
            { head: 'Not answered', says: blanksOf, isNumber: true },
            { head: 'Misses', says: missesInWords },
          ]}
        />
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
