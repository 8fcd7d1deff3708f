// The trainer's table of results, from the codes that trainees hand in; saved as CSV.
import { createEffect, createMemo, createSignal, For, onMount, Show } from 'solid-js';
import { csvOf } from '../exercises/csv.ts';
import { resultsJson } from '../exercises/exchange/results-json.ts';
import { families } from '../exercises/families.ts';
import { eachOnce, missedIn, missesOf, readResult, scoreOf, type Result } from '../exercises/result.ts';
import { keepText, keptText, keyOf } from '../house/browser-store.ts';
import { saveFile } from './save-file.ts';
import { inWords as dayInWords } from './today.ts';

const fetchLater = async () => ({
  ...(await import('../exercises/results-alike.ts')),
  ...(await import('./sheets-set.ts')),
});
type Later = Awaited<ReturnType<typeof fetchLater>>;
const KEY = keyOf('result-codes');
const LONGEST = 200_000; // characters of codes that are read: some thousand
const MOST_TOLD = 10; // codes that are named as damaged one by one

const inWords = (result: Result) =>
  missesOf(result.marks)
    .map(([family, times]) => `${families[family]}${times > 1 ? ` (${times})` : ''}`)
    .join('; ');
const blanks = ({ marks }: Result) =>
  marks.filter(({ verdict }) => verdict === 'unanswered' || verdict === 'unreadable').length;

export function ResultTable(props: { readonly mark: string }) {
  const [text, setText] = createSignal('');
  const [isKept, setKept] = createSignal(true);
  onMount(() => {
    setText(keptText(KEY) ?? '');
    addEventListener('storage', ({ key, newValue }) => key === KEY && setText(newValue ?? ''));
  });
  const readings = createMemo(() =>
    text()
      .slice(0, LONGEST)
      .split(/\s+/)
      .filter((line) => line !== '')
      .map(readResult),
  );
  const once = createMemo(() => eachOnce(readings().filter((each) => typeof each !== 'string')));
  const results = () => once().results;
  /** What looks for results that are alike, and for the sheets that were handed out, comes with the first of them. */
  const [later, setLater] = createSignal<Later>();
  createEffect(() => results().length > 0 && !later() && void fetchLater().then(setLater));
  const problems = () => {
    const damaged = readings().filter((each) => typeof each === 'string');
    return [
      ...(isKept()
        ? []
        : ['This browser does not keep the codes; save the table before you close the page.']),
      ...(text().length > LONGEST
        ? [
            `The codes have ${text().length} characters; the first ${LONGEST} are read. Make a second table of the rest.`,
          ]
        : []),
      ...damaged.slice(0, MOST_TOLD),
      ...(damaged.length > MOST_TOLD
        ? [`${damaged.length - MOST_TOLD} more texts are not whole result codes either.`]
        : []),
    ];
  };
  const take = (next: string) => {
    setText(next);
    setKept(keepText(KEY, next));
  };
  /** The way to a sheet that this browser handed out, by the short name in a code. */
  const addressOf = (mark: string) => {
    const address = later()
      ?.sheetsSet()
      .find((each) => each.mark === mark)?.address;
    return address && `../${address}`;
  };
  const save = () =>
    saveFile(
      'results.csv',
      csvOf([
        ['Name', 'Sheet', 'Version', 'Day', 'Attempt', 'Points', 'Questions', 'Not answered', 'Questions missed', 'Misses'], // prettier-ignore
        ...results().map((result) => [
          result.name,
          result.sheet,
          result.version,
          result.day ?? '',
          result.attempt ?? '',
          scoreOf(result),
          result.marks.length,
          blanks(result),
          missedIn(result).join(' '),
          inWords(result),
        ]),
      ]),
      'text/csv;charset=utf-8',
    );

  return (
    <section class="screen-only results-in" aria-labelledby="results-title">
      <h2 id="results-title">Results that came back</h2>
      <p>Paste the codes that trainees hand in, one below another. They are kept in this browser only.</p>
      <div class="field codes">
        <label for="result-codes">Result codes</label>
        <textarea
          id="result-codes"
          rows="5"
          autocomplete="off"
          spellcheck={false}
          aria-invalid={problems().length > 0 ? 'true' : 'false'}
          aria-describedby="result-problems"
          value={text()}
          onInput={(event) => take(event.currentTarget.value)}
        />
      </div>
      <div id="result-problems" role="status">
        <Show when={results().length > 0}>
          <p>{results().length === 1 ? '1 result is read.' : `${results().length} results are read.`}</p>
        </Show>
        <For each={[...once().notes, ...(later()?.alikeNotes(results()) ?? [])]}>
          {(note) => <p>{note}</p>}
        </For>
        <For each={problems()}>{(problem) => <p class="problem">{problem}</p>}</For>
      </div>
      <Show when={results().length > 0}>
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
              <For each={results()}>
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
                    <td class="number">{blanks(result)}</td>
                    <td>{inWords(result)}</td>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </div>
        <p class="actions">
          <button type="button" onClick={save}>
            Save the table as CSV
          </button>
          <button
            type="button"
            onClick={() => saveFile('results.json', resultsJson(results()), 'application/json')}
          >
            Save the results as JSON
          </button>
        </p>
      </Show>
    </section>
  );
}
