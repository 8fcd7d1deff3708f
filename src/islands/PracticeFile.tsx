// Practice kept by its reader: saved to a file, or opened from one, on another machine.
import { createSignal, For } from 'solid-js';
import { loadProgress, practiceKeptAside, useProgress } from '../browser/progress-store.ts';
import { quotedGiven } from '../core/quoted-given.ts';
import { FileField } from './FileField.tsx';
import { textOfFile } from './open-file.ts';
import { saveFile } from './save-file.ts';

const BIGGEST_FILE = 1_000_000; // bytes of a file that is still opened

export function PracticeFile(props: {
  /** Practice was opened from a file. */
  readonly opened: () => void;
}) {
  const { mounted, text } = useProgress();
  const [said, setSaid] = createSignal('');
  const load = async (file: File | undefined) => {
    if (!file) return;
    const read = await textOfFile(file, BIGGEST_FILE, 'a file of practice');
    if ('problem' in read) return void setSaid(read.problem);
    const wrong = loadProgress(read.text);
    setSaid(
      wrong.length === 0
        ? `Your practice is read from ${quotedGiven(file.name)}.`
        : `${quotedGiven(file.name)}: ${wrong.join(' ')}`,
    );
    props.opened();
  };
  return (
    <section class="screen-only keep" aria-labelledby="keep-title">
      <h2 id="keep-title">Keep your practice</h2>
      <p>
        It is kept in this browser only, and sent nowhere. Save it to a file to take it to another machine.
      </p>
      <p class="actions">
        <button type="button" onClick={() => saveFile('practice.json', text(), 'application/json')}>
          Save to a file
        </button>{' '}
        <For each={mounted() ? practiceKeptAside() : []}>
          {(kept, i) => (
            <button
              type="button"
              onClick={() => saveFile('practice-kept-aside.json', kept, 'application/json')}
            >
              Save what was set aside{i() === 0 ? '' : `, ${i() + 1}`}
            </button>
          )}
        </For>
      </p>
      <div class="field">
        <FileField
          id="practice-file"
          label="Open practice from a file"
          accept=".json,application/json"
          saidBy="practice-file-said"
          open={load}
        />
      </div>
      <p role="status" id="practice-file-said">
        {said()}
      </p>
    </section>
  );
}
