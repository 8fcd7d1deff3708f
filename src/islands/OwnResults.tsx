// Results of a trainer's own sheet that came back as codes: marks by question, pass or not yet; saved as CSV.
import { createMemo, createSignal, For, onMount, Show } from 'solid-js';
import { formatNumber } from '../core/format.ts';
import { csvOf } from '../exercises/csv.ts';
import { families } from '../exercises/families.ts';
import { resultsJson } from '../exercises/exchange/results-json.ts';
import { resultsOnce, missedIn, missesOf, readResult, type SheetResult } from '../exercises/result.ts';
import { alikeNotes } from '../exercises/results-alike.ts';
import { marksIn, ownScore, type OwnSheet } from '../exercises/own/own-sheet.ts';
import { pointsOf } from '../exercises/verdict.ts';
import { keepText, keptText, storageKey } from '../browser/browser-store.ts';
import { printPart } from './print-part.ts';
import { ResultLines, type Column } from './ResultLines.tsx';
import { ResultPaper } from './ResultPaper.tsx';
import { saveFile } from './save-file.ts';

const KEY = storageKey('result-codes'); // the codes of all sheets stand in one list
const LONGEST = 200_000; // characters of codes that are read

export function OwnResults(props: { readonly sheet: OwnSheet; readonly mark: string }) {
  const [text, setText] = createSignal('');
  const [isKept, setKept] = createSignal(true);
  onMount(() => {
    setText(keptText(KEY) ?? '');
    addEventListener('storage', ({ key, newValue }) => key === KEY && setText(newValue ?? ''));
  });
  const readings = createMemo(() => text().slice(0, LONGEST).split(/\s+/).filter(Boolean).map(readResult));
  const whole = () => readings().filter((each) => typeof each !== 'string');
  const mine = createMemo(() =>
    resultsOnce(
      whole().filter(({ sheet, marks }) => sheet === props.mark && marks.length === props.sheet.items.length),
    ),
  );
  const others = () => whole().length - whole().filter(({ sheet }) => sheet === props.mark).length;
  const damaged = () => readings().filter((each) => typeof each === 'string');
  const scored = (result: SheetResult) =>
    ownScore(props.sheet, props.sheet.items.map(({ marks }) => marks), result.marks.map(({ verdict }) => pointsOf(verdict))); // prettier-ignore
  const outcome = (result: SheetResult) => {
    const { isPass } = scored(result);
    return isPass === undefined ? '' : isPass ? 'pass' : 'not yet';
  };
  const misses = (result: SheetResult) => missesOf(result.marks).map(([family]) => families[family]).join('; '); // prettier-ignore
  const marks: Column = {
    head: 'Marks',
    says: (result) => `${formatNumber(scored(result).got, 1)} of ${scored(result).of}`,
  };
  const outcomes: Column = { head: 'Outcome', says: outcome };
  const save = () =>
    saveFile(
      'results.csv',
      csvOf([
        ['Name', 'Sheet', 'Title', 'Version', 'Day', 'Attempt', 'Marks', 'Of', 'Outcome', 'Questions missed', 'Misses'], // prettier-ignore
        ...mine().results.map((result) => {
          const { got, of } = scored(result);
          return [
            result.name,
            result.sheet,
            props.sheet.title,
            result.version,
            result.day ?? '',
            result.attempt ?? '',
            got,
            of,
            outcome(result),
            missedIn(result).join(' '),
            misses(result),
          ];
        }),
      ]),
      'text/csv;charset=utf-8',
    );
  return (
    <>
      <section class="screen-only results-in" aria-labelledby="own-results-title">
        <h2 id="own-results-title">Results that came back</h2>
        <p>
          Paste the codes that trainees hand in, one below another. A code says what the trainee’s own machine
          marked. It guards against slips of the pen, not against a forger: where it counts, be in the room.
        </p>
        <div class="field codes">
          <label for="own-codes">Result codes</label>
          <textarea
            id="own-codes"
            rows="4"
            autocomplete="off"
            spellcheck={false}
            aria-describedby="own-codes-said"
            value={text()}
            onInput={(event) => {
              setText(event.currentTarget.value);
              setKept(keepText(KEY, text()));
            }}
          />
        </div>
        <div id="own-codes-said" role="status">
          <Show when={!isKept()}>
            <p class="problem">
              This browser does not keep the codes; save the table before you close the page.
            </p>
          </Show>
          <Show when={others() > 0}>
            <p>
              {others() === 1 ? '1 code is' : `${others()} codes are`} of other sheets, and not listed here.
            </p>
          </Show>
          <For each={[...mine().notes, ...alikeNotes(mine().results)]}>{(note) => <p>{note}</p>}</For>
          <For each={damaged().slice(0, 5)}>{(problem) => <p class="problem">{problem}</p>}</For>
        </div>
        <Show when={mine().results.length > 0}>
          <div class="table" tabindex="0" role="group" aria-label="Results">
            <ResultLines
              results={mine().results}
              points={marks}
              more={[outcomes, { head: 'Misses', says: misses }]}
            />
          </div>
          <p class="actions">
            <button type="button" onClick={save}>
              Save the table as CSV
            </button>
            <button
              type="button"
              onClick={() =>
                saveFile('results.json', resultsJson(mine().results, scored), 'application/json')
              }
            >
              Save the results as JSON
            </button>
            <button type="button" onClick={() => printPart('record')}>
              Print the list to sign
            </button>
          </p>
        </Show>
      </section>
      <ResultPaper
        title={props.sheet.title || 'A sheet'}
        rules={`Sheet ${props.mark}, ${marksIn(props.sheet)} marks in all${props.sheet.minutes > 0 ? `, ${props.sheet.minutes} minutes` : ''}${props.sheet.passMark > 0 ? `, ${props.sheet.passMark} % to pass` : ''}.`}
        results={mine().results}
        points={marks}
        outcome={outcomes}
      />
    </>
  );
}
