// Sealed answers that came back: opened with the key, marked here, and put into the class book.
import { createSignal, For, lazy, Show, Suspense } from 'solid-js';
import { formatNumber } from '../core/format.ts';
import type { ClassBook, Thing } from '../exercises/class/book.ts';
import type { Doubtful } from '../exercises/class/whose.ts';
import { csvOf } from '../exercises/csv.ts';
import { answersCode, missedIn, type SheetResult } from '../exercises/result.ts';
import { alikeNotes } from '../exercises/results-alike.ts';
import { handInInside, readHandIn, readHandInText, type HandIn } from '../exercises/sealed/hand-in.ts';
import { aboutHandIn, LONGEST_SEALED, readSealed, sealedText, type SealedSheet } from '../exercises/sealed/sealed-sheet.ts'; // prettier-ignore
import { pointsOf } from '../exercises/verdict.ts';
import { unsealed } from '../handing/sealing.ts';
import type { SecretKey } from '../handing/signing.ts';
import { fromBase64url } from '../house/base64url.ts';
import { keptNameList } from './handed-list.ts';
import { fetchMarker } from './fetched-marker.ts';
import { TextFileField } from './TextFileField.tsx';
import { timeText } from './own-taken.ts';
import { saveFile } from './save-file.ts';
import { readSealedLink } from './sealed-address.ts';
import type { OpenedSeal } from './sealed-draw.ts';
import { keepSeal, keptSeals } from './seal-kept.ts';
import { dateInWords, today } from './today.ts';

const ClassDoubtful = lazy(() => import('./ClassDoubtful.tsx').then((part) => ({ default: part.ClassDoubtful }))); // prettier-ignore

const LONGEST_PASTED = 600_000; // characters of hand-ins that are read: about a thousand
const MOST_TOLD = 8;
const MINUTE = 60_000; // ms
const LONGEST = 1440; // min that a class book counts: a day

interface Marked {
  readonly handIn: HandIn;
  readonly result: SheetResult;
  /** By person and sheet; the result has what the hand-in says. */
  readonly attempt: number;
  readonly of: OpenedSeal;
  readonly got: number;
  readonly from: number;
  readonly isPass?: boolean;
  /** The questions on the trainee's machine were others than those that were sealed. */
  readonly isChanged: boolean;
}

export function SealedBack(props: { readonly key: SecretKey; readonly list: string }) {
  const [said, setSaid] = createSignal('');
  const [pasted, setPasted] = createSignal('');
  const [marked, setMarked] = createSignal<readonly Marked[]>([]);
  const [doubtful, setDoubtful] = createSignal<{ readonly of: readonly Doubtful[]; readonly book: ClassBook }>(); // prettier-ignore
  const [notes, setNotes] = createSignal<readonly string[]>([]);

  /** The seals by which hand-ins can be opened: those kept here, and one that was opened from a file or link. */
  let beside: readonly Pick<SealedSheet, 'id' | 'title' | 'seal'>[] = [];
  const takeSheet = async (found: SealedSheet | string | undefined) => {
    if (typeof found !== 'object') return void setSaid(found ?? 'This is no sealed sheet.');
    beside = [found, ...beside];
    keepSeal({ id: found.id, title: found.title, day: today(), seal: found.seal, text: sealedText(found) });
    setNotes([]);
    if (pasted().trim() !== '') await openAll();
    setSaid(`Answers to “${found.title}” can be opened now.`);
  };
  const openAll = async () => {
    const sheets = new Map<string, OpenedSeal | string>();
    const [mark, { openSheet }, { ownScore }, { attemptsOf, handInsIn, pastedNotes }] = await Promise.all([fetchMarker(), import('./sealed-draw.ts'), import('../exercises/own/own-sheet.ts'), import('../exercises/sealed/pasted.ts')]); // prettier-ignore
    if (!mark) return;
    const open = async (text: string): Promise<Omit<Marked, 'attempt'> | string> => {
      const outer = readHandInText(text);
      if (typeof outer === 'string') return outer;
      const { sheet, seal } = outer;
      const known = [...beside, ...keptSeals()].find(({ id }) => id === sheet);
      if (!known) return `A hand-in is of the sealed sheet ${sheet}, which is not kept here: open that sheet from its file or link below.`; // prettier-ignore
      if (!sheets.has(sheet)) sheets.set(sheet, await openSheet(sheet, known.seal, props.key, props.list));
      const opened = sheets.get(sheet)!;
      if (typeof opened === 'string') return opened;
      const of = { ...opened, title: known.title };
      const bytes = await unsealed(props.key, aboutHandIn(sheet), fromBase64url(seal) ?? new Uint8Array());
      if (!bytes) return 'A hand-in does not open: it was sealed to another key, or a sign of it was lost.';
      const handIn = readHandIn(new TextDecoder().decode(bytes), sheet);
      if (typeof handIn === 'string') return handIn;
      const asked = of.versions[handIn.version - 1];
      if (asked?.length !== handIn.answers.length) return `${handIn.name || 'Somebody'} handed in answers to a version that this sheet has not got.`; // prettier-ignore
      const marks = asked.map(({ question }, i) => mark(question, handIn.answers[i]!));
      const score = ownScore(of, asked.map(({ marks }) => marks), marks.map(({ verdict }) => pointsOf(verdict))); // prettier-ignore
      const result: SheetResult = { sheet: of.mark, version: handIn.version, name: handIn.name, marks, day: handIn.day, attempt: handIn.attempt, answers: answersCode(handIn.answers) }; // prettier-ignore
      return { handIn, result, of, got: score.got, from: score.of, ...(score.isPass === undefined ? {} : { isPass: score.isPass }), isChanged: of.seen[handIn.version] !== handIn.seen }; // prettier-ignore
    };
    const read = await handInsIn(pasted().slice(0, LONGEST_PASTED), open, ({ handIn }) => handInInside(handIn)); // prettier-ignore
    const attempts = attemptsOf(read.found.map(({ handIn }) => handIn));
    const found = read.found.map((each, i): Marked => ({ ...each, attempt: attempts[i]! }));
    const told = pastedNotes(read);
    setMarked(found);
    setSaid('');
    setDoubtful(undefined);
    setNotes([
      `${found.length} ${found.length === 1 ? 'hand-in was' : 'hand-ins were'} opened and marked.`,
      ...found.filter(({ isChanged }) => isChanged).map(({ handIn }) => `The questions that ${handIn.name} saw were not those that were sealed. The answers are marked by the sealed ones; look at the link.`), // prettier-ignore
      ...alikeNotes(found.map(({ result, attempt }) => ({ ...result, attempt }))),
      ...told.slice(0, MOST_TOLD),
      ...(told.length > MOST_TOLD ? [`${told.length - MOST_TOLD} more could not be opened.`] : []),
    ]);
  };
  const keepIt = async (book: ClassBook, says: string) => {
    const { keepBook } = await import('./class-kept.ts');
    const { book: kept, isKept } = keepBook(book);
    setSaid(isKept ? says : 'This browser does not keep the class book; save the table instead.');
    return kept;
  };
  const intoBook = async () => {
    const [{ entryId, withThings, worksOf }, { entryOfResult, putResults, takenWords }, { doubtsIn }, { keptBook }] = await Promise.all([import('../exercises/class/book.ts'), import('../exercises/class/put-results.ts'), import('../exercises/class/whose.ts'), import('./class-kept.ts')]); // prettier-ignore
    const { book } = keptBook();
    const sheetThings = Object.fromEntries(
      marked().map(({ of }): [string, Thing] => {
        const there = worksOf(book).find(({ mark }) => mark === of.mark);
        return [there?.id ?? entryId('work', of.mark, ''), { is: 'work', kind: 'sheet', title: `${of.title} (sealed)`, day: there?.day ?? today(), mark: of.mark, address: '', passMark: of.passMark, marks: of.versions[0]!.map(({ marks }) => marks), kinds: of.versions.map((asked) => asked.map(({ question }) => question.kind)) }]; // prettier-ignore
      }),
    );
    const idOfSheet = new Map(marked().map(({ of, handIn }) => [of.mark, handIn.sheet]));
    const found = marked().filter(({ handIn }) => handIn.name !== '').sort((a, b) => a.handIn.handedIn - b.handIn.handedIn).map((each) => ({
      name: each.handIn.name,
      way: 'sealed' as const,
      work: { kind: 'sheet' as const, title: each.of.title, mark: each.of.mark, address: '', day: each.handIn.day },
      got: { ...entryOfResult(each.result), minutes: Math.min(LONGEST, minutesOf(each)) },
    })); // prettier-ignore
    const withSheets = withThings(book, sheetThings);
    const { sure, doubtful } = doubtsIn(withSheets, found, ({ work }) => keptNameList(idOfSheet.get(work.mark) ?? '') ?? ''); // prettier-ignore
    const taken = putResults(withSheets, sure);
    const kept = await keepIt(taken.book, sure.length === 0 && doubtful.length > 0 ? '' : takenWords(taken.added, taken.known)); // prettier-ignore
    setDoubtful(doubtful.length > 0 ? { of: doubtful, book: kept } : undefined);
  };
  const outcome = ({ isPass }: Marked) => (isPass === undefined ? '' : isPass ? 'pass' : 'not yet');
  const minutesOf = ({ handIn }: Marked) =>
    Math.max(0, Math.round((handIn.handedIn - handIn.begun) / MINUTE));
  const save = () =>
    saveFile(
      'sealed-results.csv',
      csvOf([
        ['Name', 'Sheet', 'Version', 'Day', 'Attempt', 'Minutes', 'Marks', 'Of', 'Outcome', 'Questions missed', 'Answers'],
        ...marked().map((each) => [each.handIn.name, each.of.title, each.handIn.version, each.handIn.day, each.attempt, minutesOf(each), each.got, each.from, outcome(each), missedIn(each.result).join(' '), each.handIn.answers.join(' | ')]),
      ]),
      'text/csv;charset=utf-8',
    ); // prettier-ignore

  return (
    <section class="calculator sealed-desk" aria-labelledby="sealed-in-title">
      <h2 id="sealed-in-title">Answers that came back</h2>
      <div class="field codes">
        <label for="sealed-in">Sealed hand-ins, one below another</label>
        <textarea
          id="sealed-in"
          rows="4"
          autocomplete="off"
          spellcheck={false}
          aria-describedby="sealed-notes"
          value={pasted()}
          onInput={(event) => setPasted(event.currentTarget.value)}
        />
      </div>
      <p class="actions">
        <button type="button" disabled={pasted().trim() === ''} onClick={() => void openAll()}>
          Open and mark them
        </button>
      </p>
      <TextFileField
        id="sealed-sheet-file"
        label="A sealed sheet that is not kept here"
        most={LONGEST_SEALED}
        what="a sealed sheet"
        saidBy="sealed-back-said"
        take={async (text) => takeSheet((await readSealedLink(text)) ?? readSealed(text))}
        tell={setSaid}
      />
      <div id="sealed-notes" role="status">
        <For each={notes()}>{(note) => <p>{note}</p>}</For>
      </div>
      <Show when={marked().length > 0}>
        <div class="table" tabindex="0" role="group" aria-label="Sealed results">
          <table>
            <thead>
              <tr>
                <th scope="col">Name</th>
                <th scope="col">Version</th>
                <th scope="col">Day and attempt</th>
                <th scope="col">Time, by the trainee’s clock</th>
                <th scope="col">Marks</th>
                <th scope="col">Missed</th>
              </tr>
            </thead>
            <tbody>
              <For each={marked()}>
                {(each) => (
                  <tr>
                    <th scope="row">{each.handIn.name || 'no name'}</th>
                    <td class="number">{each.handIn.version}</td>
                    <td>
                      {dateInWords(each.handIn.day)}, attempt {each.attempt}
                    </td>
                    <td>
                      {timeText(each.handIn.begun)} to {timeText(each.handIn.handedIn)}, {minutesOf(each)} min
                      {each.of.minutes > 0 && minutesOf(each) > each.of.minutes ? ', late' : ''}
                    </td>
                    <td class="number">
                      {formatNumber(each.got, each.got % 1 === 0 ? 0 : 1)} of {each.from}
                      {each.isPass === undefined ? '' : `, ${outcome(each)}`}
                    </td>
                    <td class="number">{missedIn(each.result).join(', ')}</td>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </div>
        <p class="actions">
          <button type="button" onClick={() => void intoBook()}>
            Put them into the class book
          </button>
          <button type="button" onClick={save}>
            Save the table as CSV
          </button>
        </p>
      </Show>
      <p id="sealed-back-said" role="status">
        {said()}
      </p>
      <Suspense>
        <Show when={doubtful()}>
          {(now) => (
            <ClassDoubtful
              doubtful={now().of}
              book={() => now().book}
              answer={async (rest, says, book) => {
                setDoubtful({ of: rest, book: book ? await keepIt(book, says) : now().book });
                if (!book) setSaid(says);
              }}
            />
          )}
        </Show>
      </Suspense>
    </section>
  );
}
