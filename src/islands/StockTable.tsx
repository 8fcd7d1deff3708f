// The register from a table and into one: what cannot be taken is named, and nothing is taken before the reader says so.
import { createSignal, For, Show } from 'solid-js';
import { formatCount, formatNumber } from '../core/format.ts';
import { groupFieldNames, groupFields } from '../core/stock/group.ts';
import { mergeAlike } from '../core/stock/merge.ts';
import { csvOf } from '../exercises/csv.ts';
import { LONGEST_TABLE, readStockTable, stockTable, type TableRead } from '../house/parts/stock-csv.ts';
import { MOST_CASK_GROUPS, type Stock } from '../house/parts/stock.ts';
import { FileField } from './FileField.tsx';
import { useAnnouncement } from './announce.ts';
import { textOfFile } from './open-file.ts';
import { saveFile } from './save-file.ts';

export interface StockTableProps {
  readonly register: Stock;
  readonly name: string;
  readonly day: string;
  /** Takes groups in the place of the register’s, or behind them; returns what was wrong. */
  readonly take: (groups: Stock['groups'], said: string) => string | undefined;
}
const TOO_LONG = `That is more than ${formatNumber(LONGEST_TABLE, 0)} characters; a table can have up to that. Nothing was changed.`;

export function StockTable(props: StockTableProps) {
  const [text, setText] = createSignal('');
  const [read, setRead] = createSignal<TableRead>();
  const [problem, setProblem] = createSignal<string>();
  let part: HTMLElement | undefined;
  const casks = () => read()!.groups.reduce((sum, group) => sum + group.casks, 0);
  const found = () =>
    `${formatCount(read()!.groups.length, 'group')} can be taken, ${formatCount(casks(), 'cask')}.`;
  useAnnouncement(
    'stock-table',
    () => [read(), problem()],
    () => problem() ?? (read() ? `${found()} ${read()!.problems.join(' ')}` : ''),
    () => part,
  );
  const look = (next: string) => {
    setProblem(next.length > LONGEST_TABLE ? TOO_LONG : undefined);
    setRead(next.trim() === '' || next.length > LONGEST_TABLE ? undefined : readStockTable(next, props.register.opened, props.day)); // prettier-ignore
  };
  const open = async (file: File | undefined) => {
    if (!file) return;
    const got = await textOfFile(file, LONGEST_TABLE, 'a table');
    setText('');
    if ('problem' in got) {
      setRead(undefined);
      return void setProblem(got.problem);
    }
    look(got.text);
  };
  const take = (before: Stock['groups'], said: string) => {
    const all = [...before, ...read()!.groups];
    const wrong = props.take(all.length > MOST_CASK_GROUPS ? mergeAlike(all) : all, said);
    setProblem(wrong);
    if (wrong !== undefined) return;
    setRead(undefined);
    setText('');
  };
  const save = () => {
    const house = props.name.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-');
    saveFile(`${house}-casks.csv`, csvOf(stockTable(props.register.groups)), 'text/csv;charset=utf-8');
  };

  return (
    <section ref={part} class="calculator stock" aria-labelledby="stock-table-title">
      <h2 id="stock-table-title">From and to a spreadsheet</h2>
      <p class="actions">
        <button type="button" onClick={save} disabled={props.register.groups.length === 0}>
          Save the register as CSV
        </button>
      </p>
      <div class="field codes">
        <label for="stock-text">Paste a table with its headings</label>
        <textarea
          id="stock-text"
          rows="4"
          autocomplete="off"
          spellcheck={false}
          aria-describedby="stock-text-meaning"
          value={text()}
          onPaste={(event) => {
            if ((event.clipboardData?.getData('text/plain').length ?? 0) <= LONGEST_TABLE) return;
            event.preventDefault();
            setRead(undefined);
            setProblem(TOO_LONG);
          }}
          onInput={(event) => {
            setText(event.currentTarget.value);
            look(text());
          }}
        />
        <p class="meaning" id="stock-text-meaning">
          Commas, semicolons or tabs between the cells. Days as 2016-03-14 or 14/03/2016, never month first.
        </p>
      </div>
      <div class="field codes">
        <FileField
          id="stock-file"
          label="Or open a CSV file, up to 1 MB"
          accept=".csv,.tsv,.txt,text/csv,text/plain"
          open={open}
        />
      </div>
      <details>
        <summary>The headings</summary>
        <p>
          {groupFieldNames.map((name) => groupFields[name].label).join(', ')}. The columns may stand in any
          order; those for{' '}
          {groupFieldNames
            .filter((name) => groupFields[name].needed)
            .map((name) => groupFields[name].label)
            .join(', ')}{' '}
          must be there.
        </p>
      </details>
      <Show when={problem()}>
        <p class="problem">{problem()}</p>
      </Show>
      <Show when={read()}>
        {(now) => (
          <div class="table-read">
            <p>
              <strong>{found()}</strong> {now().how}
            </p>
            <ul class="problems">
              <For each={now().problems}>{(says) => <li class="problem">{says}</li>}</For>
            </ul>
            <Show when={now().groups.length > 0}>
              <p class="actions">
                <button type="button" onClick={() => take([], `The register is now the table: ${found()}`)}>
                  Put them in place of the register
                </button>{' '}
                <button
                  type="button"
                  onClick={() => take(props.register.groups, `Added to the register: ${found()}`)}
                >
                  Add them to the register
                </button>{' '}
                <button
                  type="button"
                  onClick={() => {
                    setRead(undefined);
                    setText('');
                  }}
                >
                  Leave it
                </button>
              </p>
            </Show>
          </div>
        )}
      </Show>
    </section>
  );
}
