// Practice kept by its reader: saved to a file, or opened from one, on another machine.
import { createSignal, For } from 'solid-js';
import { loadProgress, practiceKeptAside, useProgress } from '../browser/progress-store.ts';
import { TextFileField } from './TextFileField.tsx';
import { saveFile } from './save-file.ts';

const BIGGEST_FILE = 1_000_000; // bytes of a file that is still opened

export function PracticeFile(props: {
  /** Practice was opened from a file. */
  readonly opened: () => void;
}) {
  const { mounted, text } = useProgress();
  const [said, setSaid] = createSignal('');
  const load = (given: string, name: string) => {
    const wrong = loadProgress(given);
    setSaid(wrong.length === 0 ? `Your practice is read from ${name}.` : `${name}: ${wrong.join(' ')}`);
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
      <TextFileField
        id="practice-file"
        label="Open practice from a file"
        most={BIGGEST_FILE}
        what="a file of practice"
        said={said()}
        take={load}
        tell={setSaid}
      />
    </section>
  );
}
