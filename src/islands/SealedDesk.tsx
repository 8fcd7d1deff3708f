// A trainer's desk of sealed sheets: the key, the sheet that is sealed to it, and the answers that come back and are opened and marked here.
import { createSignal, For, onMount, Show } from 'solid-js';
import { formatNumber } from '../core/format.ts';
import type { Thing } from '../exercises/class/book.ts';
import { csvOf } from '../exercises/csv.ts';
import { answersCode, missedIn, type Result } from '../exercises/result.ts';
import { alikeNotes } from '../exercises/results-alike.ts';
import { readHandIn, readHandInText, type HandIn } from '../exercises/sealed/hand-in.ts';
import { aboutHandIn, LONGEST_SEALED, onlyVersion, readSealed, sealedText, type SealedSheet } from '../exercises/sealed/sealed-sheet.ts'; // prettier-ignore
import { pointsOf } from '../exercises/verdict.ts';
import { isSealKeySound, makeSealKey, readSealKey, sealKeyText, unsealed } from '../handing/sealing.ts';
import { canSign, fingerprint, publicOf, type SecretKey } from '../handing/signing.ts';
import { fromBase64url } from '../house/base64url.ts';
import { copyAddress } from './copy-address.ts';
import { FileField } from './FileField.tsx';
import { fileNameOf } from './file-name.ts';
import { fetchMarker } from './marker.ts';
import { textOfFile } from './open-file.ts';
import { timeText } from './own-taken.ts';
import { saveFile } from './save-file.ts';
import { isTooLong, LONG_LINK, readSealedLink, sealedLink } from './sealed-address.ts';
import type { Opened, Sealable } from './sealed-draw.ts';
import { keepSeal, keepSealKey, keptSealKey, keptSeals } from './seal-kept.ts';
import { inWords, today } from './today.ts';

const LONGEST_OWN = 400_000; // bytes of a sheet's file that are read, as own-text.ts has it
const LONGEST_PASTED = 600_000; // characters of hand-ins that are read: about a thousand
const MOST_TOLD = 8;
const MINUTE = 60_000; // ms

interface Marked {
  readonly handIn: HandIn;
  readonly result: Result;
  readonly of: Opened;
  readonly got: number;
  readonly from: number;
  readonly isPass?: boolean;
  /** The questions on the trainee's machine were others than those that were sealed. */
  readonly isChanged: boolean;
}

export default function SealedDesk(props: { readonly list: string }) {
  const [key, setKey] = createSignal<SecretKey>();
  const [print, setPrint] = createSignal('');
  const [said, setSaid] = createSignal('');
  const [put, setPut] = createSignal(''); // what came of the class book
  const [address, setAddress] = createSignal('');
  const [chosen, setChosen] = createSignal('');
  const [titles, setTitles] = createSignal<readonly string[]>([]);
  const [made, setMade] = createSignal<{ readonly sealed: SealedSheet; readonly mark: string; readonly all: string; readonly ones: readonly string[]; readonly desk: string }>(); // prettier-ignore
  const [pasted, setPasted] = createSignal('');
  const [marked, setMarked] = createSignal<readonly Marked[]>([]);
  const [notes, setNotes] = createSignal<readonly string[]>([]);

  const takeKey = async (next: SecretKey, says: string) => {
    if (!(await isSealKeySound(next))) return void setSaid('This key is damaged: it does not open what is sealed to it.'); // prettier-ignore
    setKey(next);
    const { keptSheets } = await import('./own-kept.ts');
    setTitles(keptSheets().all.flatMap(({ title, notes }) => (notes ? [title] : [])));
    setPrint(await fingerprint(publicOf(next)));
    setSaid(keepSealKey(next) ? says : `${says} This browser does not keep it: save it to a file now.`);
  };
  onMount(() => {
    if (!canSign()) return void setSaid('This page came by an address that browsers do not trust with keys (plain http), so nothing can be sealed here. Open it by https.'); // prettier-ignore
    const kept = keptSealKey();
    if (typeof kept === 'string') setSaid(kept);
    else if (kept) void takeKey(kept, '');
  });

  const wanted = async (): Promise<Sealable | string> => {
    if (chosen() !== '') {
      const { keptSheets } = await import('./own-kept.ts');
      const own = keptSheets().all.find(({ title }) => title === chosen());
      return own ? { own } : 'This sheet is no longer kept in this browser.';
    }
    const hash = address()
      .slice(Math.max(0, address().indexOf('#')))
      .trim();
    const [{ readOwnLink }, { readSheetLink }] = await Promise.all([import('./own-address.ts'), import('../exercises/sheet-link.ts')]); // prettier-ignore
    const own = await readOwnLink(hash);
    if (own) return typeof own === 'string' ? own : { own: own.sheet };
    const read = readSheetLink(hash);
    if (!read) return 'Choose a sheet, or paste the whole link to one.';
    return 'problem' in read ? read.problem : { sheet: read.sheet };
  };
  const sealIt = async (from: Sealable | string) => {
    if (typeof from === 'string') return void setSaid(from);
    setSaid('The sheet is being drawn and sealed …');
    const { sealSheet } = await import('./sealed-draw.ts');
    const found = await sealSheet(from, key()!, 'own' in from ? from.own.title : '', props.list);
    if (typeof found === 'string') return void setSaid(found);
    const { sealed, drawn } = found;
    const all = await sealedLink(sealed);
    const ones = await Promise.all(
      sealed.versions.map(({ version }) => sealedLink(onlyVersion(sealed, version))),
    );
    setMade({ sealed, mark: drawn.mark, all, ones, desk: drawn.address });
    const isKept = keepSeal({ id: sealed.id, title: sealed.title, day: today(), seal: sealed.seal });
    setSaid(`Sealed as ${sealed.id}.${isKept ? '' : ' This browser does not keep the seal: save the sheet to a file, with which answers are opened.'}`); // prettier-ignore
  };
  const addressOf = (link: string) => `${location.origin}${location.pathname.replace(/sheets\/sealed\/$/, 'sheet/sealed/')}${link}`; // prettier-ignore
  const copy = async (link: string, what: string) => {
    if (isTooLong(link)) return void setSaid(`${what} would have ${link.length} characters, too many for a link: save the sheet to a file, which the trainee opens.`); // prettier-ignore
    const address = addressOf(link);
    const long = address.length > LONG_LINK ? ' Some programs cut links as long as this: send one version each, or the file.' : ''; // prettier-ignore
    setSaid(await copyAddress(address, `${what} is copied, ${address.length} characters.${long}`));
  };

  /** The seals by which hand-ins can be opened: those kept here, and one that was opened from a file or link. */
  let beside: readonly { readonly id: string; readonly seal: string }[] = [];
  const takeSheet = (found: SealedSheet | string | undefined) => {
    if (typeof found !== 'object') return void setSaid(found ?? 'This is no sealed sheet.');
    beside = [found, ...beside];
    keepSeal({ id: found.id, title: found.title, day: today(), seal: found.seal });
    setSaid(`Answers to “${found.title}” can be opened now.`);
  };
  const openAll = async () => {
    const told: string[] = [];
    const found: Marked[] = [];
    const sheets = new Map<string, Opened | string>();
    const [mark, { openSheet }, { ownScore }] = await Promise.all([fetchMarker(), import('./sealed-draw.ts'), import('../exercises/own/own-sheet.ts')]); // prettier-ignore
    if (!mark) return;
    for (const text of pasted().slice(0, LONGEST_PASTED).split(/\s+/).filter(Boolean)) {
      const outer = readHandInText(text);
      if (typeof outer === 'string') {
        told.push(outer);
        continue;
      }
      const { sheet, seal } = outer;
      const known = [...beside, ...keptSeals()].find(({ id }) => id === sheet);
      if (!known) {
        told.push(`A hand-in is of the sealed sheet ${sheet}, which is not kept here: open that sheet from its file or link below.`); // prettier-ignore
        continue;
      }
      if (!sheets.has(sheet)) sheets.set(sheet, await openSheet(sheet, known.seal, key()!, props.list));
      const of = sheets.get(sheet)!;
      const bytes = await unsealed(key()!, aboutHandIn(sheet), fromBase64url(seal) ?? new Uint8Array());
      if (typeof of === 'string' || !bytes) {
        told.push(typeof of === 'string' ? of : 'A hand-in does not open: it was sealed to another key, or a sign of it was lost.'); // prettier-ignore
        continue;
      }
      const handIn = readHandIn(new TextDecoder().decode(bytes), sheet);
      const asked = typeof handIn === 'string' ? undefined : of.versions[handIn.version - 1];
      if (typeof handIn === 'string' || asked?.length !== handIn.answers.length) {
        told.push(typeof handIn === 'string' ? handIn : `${handIn.name || 'Somebody'} handed in answers to a version that this sheet has not got.`); // prettier-ignore
        continue;
      }
      const marks = asked.map(({ question }, i) => mark(question, handIn.answers[i]!));
      const score = ownScore(of, asked.map(({ marks }) => marks), marks.map(({ verdict }) => pointsOf(verdict))); // prettier-ignore
      const result: Result = { sheet: of.mark, version: handIn.version, name: handIn.name, marks, day: handIn.day, attempt: handIn.attempt, answers: answersCode(handIn.answers) }; // prettier-ignore
      found.push({ handIn, result, of, got: score.got, from: score.of, ...(score.isPass === undefined ? {} : { isPass: score.isPass }), isChanged: of.seen[handIn.version] !== handIn.seen }); // prettier-ignore
    }
    setMarked(found);
    setNotes([
      `${found.length} ${found.length === 1 ? 'hand-in was' : 'hand-ins were'} opened and marked.`,
      ...found.filter(({ isChanged }) => isChanged).map(({ handIn }) => `The questions that ${handIn.name} saw were not those that were sealed. The answers are marked by the sealed ones; look at the link.`), // prettier-ignore
      ...alikeNotes(found.map(({ result }) => result)),
      ...told.slice(0, MOST_TOLD),
      ...(told.length > MOST_TOLD ? [`${told.length - MOST_TOLD} more could not be opened.`] : []),
    ]);
  };
  const intoBook = async () => {
    const [{ idOf, withThings, worksOf }, { gotOf, put: putIn, takenWords }, { keepBook, keptBook }] = await Promise.all([import('../exercises/class/book.ts'), import('../exercises/class/taken.ts'), import('./class-kept.ts')]); // prettier-ignore
    const { book } = keptBook();
    const sheetThings = Object.fromEntries(
      marked().map(({ of }): [string, Thing] => {
        const there = worksOf(book).find(({ mark }) => mark === of.mark);
        return [there?.id ?? idOf('work', of.mark, ''), { is: 'work', kind: 'sheet', title: `${of.title} (sealed)`, day: there?.day ?? today(), mark: of.mark, address: '', passMark: of.passMark, marks: of.versions[0]!.map(({ marks }) => marks), kinds: of.versions.map((asked) => asked.map(({ question }) => question.kind)) }]; // prettier-ignore
      }),
    );
    const taken = putIn(
      withThings(book, sheetThings),
      marked().filter(({ handIn }) => handIn.name !== '').map(({ result, handIn, of }) => ({
        name: handIn.name,
        way: 'sealed' as const,
        work: { kind: 'sheet' as const, title: of.title, mark: of.mark, address: '', day: handIn.day },
        got: gotOf(result),
      })),
    ); // prettier-ignore
    const { isKept } = keepBook(taken.book);
    setPut(isKept ? takenWords(taken.added, taken.known) : 'This browser does not keep the class book; save the table instead.'); // prettier-ignore
  };
  const outcome = ({ isPass }: Marked) => (isPass === undefined ? '' : isPass ? 'pass' : 'not yet');
  const minutesOf = ({ handIn }: Marked) =>
    Math.max(0, Math.round((handIn.handedIn - handIn.begun) / MINUTE));
  const save = () =>
    saveFile(
      'sealed-results.csv',
      csvOf([
        ['Name', 'Sheet', 'Version', 'Day', 'Attempt', 'Minutes', 'Marks', 'Of', 'Outcome', 'Questions missed', 'Answers'],
        ...marked().map((each) => [each.handIn.name, each.of.title, each.handIn.version, each.handIn.day, each.handIn.attempt, minutesOf(each), each.got, each.from, outcome(each), missedIn(each.result).join(' '), each.handIn.answers.join(' | ')]),
      ]),
      'text/csv;charset=utf-8',
    ); // prettier-ignore

  return (
    <>
      <section class="calculator sealed-desk" aria-labelledby="sealed-key-title">
        <h2 id="sealed-key-title">Your key</h2>
        <Show
          when={key()}
          fallback={
            <p>
              A key is made once. Whoever has its file can open the sheets and the answers; who has lost it
              can open neither.
            </p>
          }
        >
          <p>
            The key <span class="number">{print()}</span> is in this browser. Save it to a file, and keep that
            where no trainee comes.
          </p>
        </Show>
        <div class="field">
          <FileField
            id="sealed-key-file"
            label="Open a key from a file"
            accept=".json,application/json"
            saidBy="sealed-said"
            open={async (file) => {
              if (!file) return;
              const text = await textOfFile(file, 10_000, 'a key');
              const read = 'problem' in text ? text.problem : readSealKey(text.text);
              if (typeof read === 'string') setSaid(read);
              else
                await takeKey(
                  read,
                  'The key is open. One that was here before is set aside in this browser.',
                );
            }}
          />
        </div>
        <p class="actions">
          <Show
            when={key()}
            fallback={
              <button
                type="button"
                onClick={() =>
                  void makeSealKey().then(
                    (next) => takeKey(next, 'The key is made. Save it to a file before you seal with it.'),
                    () => setSaid('This browser cannot make a key here.'),
                  )
                }
              >
                {' '}
                Make a key
              </button>
            }
          >
            <button
              type="button"
              onClick={() => saveFile('sealed-sheets.key.json', sealKeyText(key()!), 'application/json')}
            >
              {' '}
              Save the key to a file
            </button>
          </Show>
        </p>
        <p id="sealed-said" role="status">
          {said()}
        </p>
      </section>
      <Show when={key()}>
        <section class="calculator sealed-desk" aria-labelledby="sealed-make-title">
          <h2 id="sealed-make-title">Seal a sheet</h2>
          <form autocomplete="off" onSubmit={(event) => event.preventDefault()}>
            <Show when={titles().length > 0}>
              <div class="field">
                <label for="sealed-kept">A sheet of your own</label>
                <select
                  id="sealed-kept"
                  autocomplete="off"
                  value={chosen()}
                  onChange={(event) => setChosen(event.currentTarget.value)}
                >
                  {' '}
                  <option value="">by its link or file</option>
                  <For each={titles()}>{(title) => <option value={title}>{title}</option>}</For>
                </select>
              </div>
            </Show>
            <div class="field own-line">
              <label for="sealed-address">Or the link of a sheet</label>
              <input
                id="sealed-address"
                class="words"
                type="text"
                autocomplete="off"
                value={address()}
                onInput={(event) => setAddress(event.currentTarget.value)}
              />
            </div>
            <div class="field">
              <FileField
                id="sealed-own-file"
                label="Or a sheet of your own from a file"
                accept=".json,application/json"
                saidBy="sealed-said"
                open={async (file) => {
                  if (!file) return;
                  const text = await textOfFile(file, LONGEST_OWN, 'a sheet');
                  const { readOwnSheet } = await import('../exercises/own/own-text.ts');
                  const read = 'problem' in text ? text.problem : readOwnSheet(text.text);
                  await sealIt(typeof read === 'string' ? read : { own: read });
                }}
              />
            </div>
            <p class="actions">
              <button
                type="button"
                disabled={chosen() === '' && address().trim() === ''}
                onClick={() => void wanted().then(sealIt)}
              >
                {' '}
                Draw it anew and seal it
              </button>
            </p>
          </form>
          <p class="small">
            It is drawn anew under a name made by chance, so that nobody can draw it again by guessing the
            name. A sheet with numbers that you kept stays as it is.
          </p>
          <Show when={made()}>
            {(now) => (
              <>
                <p>
                  “{now().sealed.title}”: {now().sealed.versions.length}{' '}
                  {now().sealed.versions.length === 1 ? 'version' : 'versions'}. A link to all has{' '}
                  {addressOf(now().all).length} characters, a link to one at most{' '}
                  {addressOf(now().ones.reduce((a, b) => (a.length > b.length ? a : b))).length}.{' '}
                  <a href={`../../${now().desk}`}>See it with its answers</a>: that address is not sealed, so
                  give it to nobody.
                </p>
                <p class="actions">
                  <button type="button" onClick={() => void copy(now().all, 'The link to all versions')}>
                    Copy the link to all versions
                  </button>
                  <button
                    type="button"
                    onClick={() => {
                      const file = fileNameOf(now().sealed.title, 'sealed');
                      saveFile(file, sealedText(now().sealed), 'application/json');
                      setSaid(`The sealed sheet is saved as ${file}.`);
                    }}
                  >
                    Save the sealed sheet to a file
                  </button>
                  <For each={now().ones}>
                    {(link, i) => (
                      <button type="button" onClick={() => void copy(link, `The link to version ${i() + 1}`)}>
                        Version {i() + 1}
                      </button>
                    )}
                  </For>
                </p>
              </>
            )}
          </Show>
        </section>
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
          <div class="field">
            <FileField
              id="sealed-sheet-file"
              label="A sealed sheet that is not kept here"
              accept=".json,application/json"
              saidBy="sealed-said"
              open={async (file) => {
                if (!file) return;
                const text = await textOfFile(file, LONGEST_SEALED, 'a sealed sheet');
                if ('problem' in text) setSaid(text.problem);
                else takeSheet((await readSealedLink(text.text)) ?? readSealed(text.text));
              }}
            />
          </div>
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
                          {inWords(each.handIn.day)}, attempt {each.handIn.attempt}
                        </td>
                        <td>
                          {timeText(each.handIn.begun)} to {timeText(each.handIn.handedIn)}, {minutesOf(each)}{' '}
                          min
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
            <p id="sealed-put" role="status">
              {put()}
            </p>
          </Show>
        </section>
      </Show>
    </>
  );
}
