// A trainer's own sheet, question by question: chosen, ordered, marked, kept by name, sent as a link or a file, printed.
import { createEffect, createMemo, createSignal, For, lazy, on, onMount, Show } from 'solid-js';
import { GENERATOR } from '../exercises/draw.ts';
import { kindsOf } from '../exercises/kinds/fetched-kinds.ts';
import type { Version } from '../exercises/exchange/questions-csv.ts';
import { lineReady } from '../exercises/own-line.ts';
import type { OwnQuestion } from '../exercises/own/own-question.ts';
import { askingOwn, freshKey, houseOfOwn, noteOf, OWN_LIMITS, settling, type Drawings, type Evenness, type Item, type OwnAsked, type OwnSheet } from '../exercises/own/own-sheet.ts'; // prettier-ignore
import { LONGEST_TEXT, ownMark, ownSheetText, readOwnSheet } from '../exercises/own/own-text.ts';
import type { QuestionKind } from '../exercises/question.ts';
import { newsOf } from '../exercises/sheet-news.ts';
import { afterFrame } from '../browser/defer.ts';
import { useAnnouncement } from './announce.ts';
import { copyAddress } from './copy-address.ts';
import { ExchangeFold } from './ExchangeFold.tsx';
import { FileField } from './FileField.tsx';
import { fileNameOf } from './file-name.ts';
import { focusAfter } from './focus-after.ts';
import { textOfFile } from './open-file.ts';
import { HandOutFold } from './HandOutFold.tsx';
import { isTooLong, ownLink, readOwnLink } from './own-address.ts';
import { isDraftKey, keepDraft, keepSheet, keptBank, keptDraft, keptSheets } from './own-kept.ts';
import { kindsById, type KindsById } from './own-kinds.ts';
import { OwnSheetFind } from './OwnSheetFind.tsx';
import { OwnSheetItems } from './OwnSheetItems.tsx';
import { OwnSheetRules } from './OwnSheetRules.tsx';
import { printPart } from './print-part.ts';
import { saveFile } from './save-file.ts';
import { rememberSheet } from './sheets-set.ts';
import { today } from './today.ts';
import { Shelf } from './Shelf.tsx';
import type { Part } from './PaperQuestion.tsx';
import { drawnInSteps } from './use-kinds.ts';

// What only a sheet with questions needs comes with the first of them.
const OwnPaper = lazy(() => import('./OwnPaper.tsx').then((part) => ({ default: part.OwnPaper })));
const OwnResults = lazy(() => import('./OwnResults.tsx').then((part) => ({ default: part.OwnResults })));
const OwnSheetEven = lazy(() =>
  import('./OwnSheetEven.tsx').then((part) => ({ default: part.OwnSheetEven })),
);

const fresh = (): OwnSheet => ({
  generator: GENERATOR,
  title: '',
  minutes: 0,
  passMark: 0,
  shows: 'at the end',
  seed: `own-${Date.now().toString(36)}`,
  versions: 6,
  house: 'built-in',
  items: [],
  own: [],
});
const partTitles: Readonly<Record<Part, string>> = {
  questions: 'Print the questions',
  answers: 'Print the answers with working',
  key: 'Print the marking key',
};
interface Settled {
  readonly of: OwnSheet;
  readonly sheet: OwnSheet;
  readonly evenness: Evenness | undefined;
}

export default function OwnSheetDesk(props: { readonly list: string }) {
  const [sheet, setSheet] = createSignal<OwnSheet>({ ...fresh(), seed: 'own' });
  const [bank, setBank] = createSignal<readonly OwnQuestion[]>([]);
  const [shelf, setShelf] = createSignal<readonly OwnSheet[]>([]);
  const [shown, setShown] = createSignal(1);
  const [toSeal, setToSeal] = createSignal(''); // the end of the address under which the sheet is sealed
  const [settled, setSettled] = createSignal<Settled>();
  const [asked, setAsked] = createSignal<readonly OwnAsked[]>();
  const [swapping, setSwapping] = createSignal<number>();
  const [said, setSaid] = createSignal('');
  const [problem, setProblem] = createSignal<string>();
  const [ready, setReady] = createSignal(false);
  const [printing, setPrinting] = createSignal<{ readonly part: Part; readonly versions: readonly (readonly OwnAsked[])[] }>(); // prettier-ignore
  let saying: HTMLParagraphElement | undefined;
  let drawings: Drawings = new Map();

  /** Those that the sheet carries count before those of the bank: a sheet asks what it was made with. */
  const own = createMemo(
    () =>
      [...sheet().own, ...bank().filter(({ id }) => !sheet().own.some((each) => each.id === id))].sort(
        (a, b) => (a.id < b.id ? -1 : 1),
      ),
    undefined,
    { equals: (a, b) => a.length === b.length && a.every((each, i) => each === b[i]) }, // or every change would draw the list of kinds anew
  );
  const [kinds, setKinds] = createSignal<KindsById>(
    new Map(kindsOf(props.list).map((kind) => [kind.id, kind])),
  );
  createEffect(
    on(own, (now) => {
      kindsById(props.list, now).then(
        (made) => own() === now && setKinds(made),
        () =>
          setSaid(
            'A part of the book did not come, and questions of your own cannot be drawn; load the page again.',
          ),
      );
    }),
  );
  const choosable = createMemo(() =>
    [...kinds().values()].filter(({ since, until }) => since <= GENERATOR && until === undefined),
  );
  const isSettled = () => settled()?.of === sheet();
  const mark = createMemo(() => (isSettled() ? ownMark(settled()!.sheet) : ''));

  const change = (part: Partial<OwnSheet>) => {
    const { notes: _, ...now } = sheet();
    const items = part.items ?? now.items;
    if (part.house !== undefined) drawings = new Map();
    setSheet({ ...now, ...part, generator: GENERATOR, own: own().filter(({ id }) => items.some(({ kind }) => kind === id)) }); // prettier-ignore
    setShown(Math.min(shown(), sheet().versions));
    if (!keepDraft(sheet())) setSaid('This browser does not keep the sheet: save it to a file.');
  };
  const changeItem = (place: number, part: Partial<Item>) =>
    change({ items: sheet().items.map((item, i) => (i === place ? { ...item, ...part } : item)) });

  /** Draws every version anew when something else is chosen; a sheet that was opened keeps its draws. */
  createEffect(
    on([sheet, ready, kinds], async ([now, isReady]) => {
      if (!isReady) return;
      if (now.own.some(({ id }) => !kinds().has(id))) return; // they are on their way
      if (now.items.length === 0) return void setSettled(undefined);
      await lineReady(now.house);
      const begins = now.items.flatMap(({ kind }) => (kind.startsWith('own-') || !kinds().has(kind) ? [] : [{ id: kind }])); // prettier-ignore
      const made = now.notes
        ? { sheet: now, evenness: undefined }
        : await drawnInSteps(settling(now, kinds(), drawings), begins);
      if (made && sheet() === now) setSettled({ of: now, ...made });
    }),
  );
  createEffect(
    on([settled, shown], async ([now, version]) => {
      const drawn = now && (await drawnInSteps(askingOwn(now.sheet, version, kinds()), []));
      if (settled() === now && shown() === version) setAsked(drawn);
    }),
  );
  createEffect(
    on(settled, (now) => {
      setToSeal('');
      const link = now && (now.evenness?.missing.length ?? 0) === 0 ? ownLink(now.sheet) : undefined;
      void link?.then((made) => settled() === now && !isTooLong(made) && setToSeal(made));
    }),
  );
  useAnnouncement(
    'own sheet',
    () => [mark(), shown()],
    () => (isSettled() ? `${sheet().items.length} questions are drawn for version ${shown()}.` : ''),
  );

  const openSheet = (read: OwnSheet | string, from: string) => {
    if (typeof read === 'string') return void setSaid(read);
    drawings = new Map();
    setSwapping(undefined);
    setShown(1);
    setSheet(read);
    keepDraft(read);
    setSaid(`${read.title || 'A sheet without a title'} is open, from ${from}.`);
  };
  onMount(async () => {
    const read = await readOwnLink(location.hash);
    if (typeof read === 'string') setProblem(read);
    const kept = keptBank();
    setBank(kept.all);
    setShelf(keptSheets().all);
    setSheet((typeof read === 'object' ? read.sheet : keptDraft()) ?? fresh());
    const problems = [kept.problem, keptSheets().problem].filter(Boolean);
    if (problems.length > 0) setSaid(problems.join(' '));
    addEventListener('storage', ({ key }) => {
      setBank(keptBank().all);
      setShelf(keptSheets().all);
      const theirs = isDraftKey(key) ? keptDraft() : undefined;
      if (theirs) setSheet(theirs);
    });
    afterFrame(() => setReady(true));
  });

  const add = (kind: QuestionKind) => {
    const place = swapping();
    const { items } = sheet();
    if (place !== undefined) {
      change({ items: items.map((item, i) => (i === place ? { kind: kind.id, key: freshKey(items), marks: item.marks } : item)) }); // prettier-ignore
      setSaid(`“${kind.title}” stands in place of question ${place + 1}.`);
      return void setSwapping(undefined);
    }
    if (items.length === OWN_LIMITS.items)
      return void setSaid(`A sheet has at most ${OWN_LIMITS.items} questions.`);
    change({ items: [...items, { kind: kind.id, key: freshKey(items), marks: 1 }] });
    setSaid(`“${kind.title}” is question ${sheet().items.length}.`);
  };
  const move = (place: number, by: -1 | 1, event: Event) => {
    const items = [...sheet().items];
    const [item] = items.splice(place, 1);
    items.splice(place + by, 0, item!);
    change({ items });
    focusAfter(event, () => document.getElementById(`own-item-${item!.key}`));
  };
  const keep = (place: number) => {
    const item = sheet().items[place]!;
    if (item.kept !== undefined) {
      const { kept: _, ...free } = item;
      return change({ items: sheet().items.map((each, i) => (i === place ? free : each)) });
    }
    const kept = isSettled() ? noteOf(settled()!.sheet, shown(), place) : undefined;
    if (kept !== undefined) changeItem(place, { kept });
  };
  /** The sheet as it goes out; nothing, and a sentence, while a question of it cannot be drawn. */
  const whole = (): OwnSheet | undefined => {
    if (!isSettled()) return void setSaid('The sheet is still being drawn; try again in a moment.');
    if ((settled()!.evenness?.missing.length ?? 0) > 0) return void setSaid('One of the questions cannot be drawn for this house: swap it or take it out first.'); // prettier-ignore
    return settled()!.sheet;
  };
  /** The address of the sheet for trainees, which is remembered; nothing, and a sentence, where there is none. */
  const addressOut = async (): Promise<string | undefined> => {
    const made = whole();
    if (!made) return undefined;
    const link = await ownLink(made);
    if (isTooLong(link)) return void setSaid('This sheet is too long for a link: save it to a file, which the trainee opens.'); // prettier-ignore
    rememberSheet({
      mark: mark(),
      title: made.title || 'A sheet',
      address: `sheet/own/${link}`,
      day: today(),
    });
    return `${location.origin}${location.pathname.replace(/sheets\/own\/$/, 'sheet/own/')}${link}`;
  };
  const share = async () => {
    const address = await addressOut();
    if (address !== undefined) setSaid(await copyAddress(address, `The link to sheet ${mark()} is copied, ${address.length} characters. It draws the same ever after; add &version=3 for one version.`)); // prettier-ignore
  };
  const save = () => {
    const made = whole();
    if (!made) return;
    const file = fileNameOf(made.title || 'sheet', 'own');
    saveFile(file, ownSheetText(made), 'application/json');
    setSaid(`Sheet ${mark()} is saved as ${file}.`);
  };
  const keepNamed = () => {
    const { title } = sheet();
    if (title === '') return void setSaid('Give the sheet a title first: it is kept under it.');
    const isThere = shelf().some((each) => each.title === title);
    const isKept = keepSheet(title, isSettled() ? settled()!.sheet : sheet());
    setShelf(keptSheets().all);
    setSaid(isKept ? `“${title}” is kept in this browser${isThere ? ', in place of the one of that title' : ''}.` : 'This browser does not keep the sheet: save it to a file.'); // prettier-ignore
  };
  const versionsOf = async (wanted: readonly number[]) => {
    const made = whole();
    if (!made) return undefined;
    const versions: Version[] = [];
    for (const version of wanted) {
      const drawn = await drawnInSteps(askingOwn(made, version, kinds()), []);
      if (!drawn) return undefined;
      versions.push({
        version,
        questions: drawn.map(({ question }) => question),
        marks: made.items.map(({ marks }) => marks),
      });
    }
    return versions;
  };
  const printOut = async (part: Part) => {
    const made = whole();
    if (!made) return;
    if (!(await OwnPaper.preload().catch(() => undefined)))
      return void setSaid('A part of the book did not come; load the page again, and print then.');
    const versions: (readonly OwnAsked[])[] = [];
    for (let version = 1; version <= made.versions; version++) {
      const drawn = await drawnInSteps(askingOwn(made, version, kinds()), []);
      if (!drawn) return;
      versions.push(drawn);
    }
    setPrinting({ part, versions });
    if (part !== 'key')
      (await import('./version-pages.ts')).footPages(`${made.title || 'Sheet'} (${mark()})`, versions.length);
    printPart('sheet');
    addEventListener('afterprint', () => setPrinting(undefined), { once: true });
  };
  const numbers = () => Array.from({ length: sheet().versions }, (_, i) => i + 1);

  return (
    <>
      <section class="calculator sheet-desk screen-only" aria-labelledby="own-sheet-title">
        <h2 id="own-sheet-title">The sheet</h2>
        <Show when={problem()}>
          <p class="problem" role="alert">
            {problem()}
          </p>
        </Show>
        <OwnSheetRules sheet={sheet()} change={change} />
        <p class="actions">
          <button type="button" disabled={sheet().items.length === 0} onClick={keepNamed}>
            Keep it in this browser
          </button>
          <button
            type="button"
            onClick={() => {
              setProblem(undefined);
              openSheet(fresh(), 'a blank page');
            }}
          >
            A new sheet
          </button>
        </p>
        <Shelf
          names={shelf().map(({ title }) => title)}
          open={(title) =>
            openSheet(shelf().find((each) => each.title === title) ?? 'It is no longer kept.', 'this browser')
          }
          remove={(title) => {
            keepSheet(title);
            setShelf(keptSheets().all);
            setSaid(`“${title}” is no longer kept in this browser.`);
          }}
          saying={() => saying}
        />
        <div class="field">
          <FileField
            id="own-sheet-file"
            label="Open a sheet from a file"
            accept=".json,application/json"
            saidBy="own-said"
            open={async (file) => {
              if (!file) return;
              const read = await textOfFile(file, LONGEST_TEXT, 'a sheet');
              openSheet('problem' in read ? read.problem : readOwnSheet(read.text), 'the file');
            }}
          />
        </div>
        <p id="own-said" role="status" tabindex="-1" ref={saying}>
          {said()}
        </p>
      </section>
      <div class="screen-only">
        <OwnSheetFind
          kinds={choosable()}
          own={own()}
          house={houseOfOwn(sheet())}
          swapping={swapping() === undefined ? undefined : swapping()! + 1}
          add={add}
        />
      </div>
      <section class="screen-only" aria-labelledby="own-asked-title">
        <h2 id="own-asked-title">Its questions</h2>
        <Show when={sheet().items.length > 0} fallback={<p>None yet: find one above and add it.</p>}>
          <form class="choose" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
            <div class="field">
              <label for="own-shown">As version</label>
              <select
                id="own-shown"
                autocomplete="off"
                value={String(shown())}
                onChange={(event) => setShown(Number(event.currentTarget.value))}
              >
                <For each={numbers()}>{(each) => <option value={String(each)}>{each}</option>}</For>
              </select>
            </div>
          </form>
          <OwnSheetItems
            items={sheet().items}
            kinds={kinds()}
            asked={asked()}
            swapping={swapping()}
            change={changeItem}
            move={move}
            anew={(place) => changeItem(place, { key: freshKey(sheet().items) })}
            keep={keep}
            swap={(place) => {
              setSwapping(place);
              if (place !== undefined) document.getElementById('own-words')?.focus();
            }}
            remove={(place, event) => {
              setSwapping(undefined);
              change({ items: sheet().items.filter((_, i) => i !== place) });
              setSaid(`Question ${place + 1} is taken out.`);
              focusAfter(event, () => document.getElementById('own-asked-title'));
            }}
          />
          <p class="actions">
            <button type="button" disabled={!isSettled()} onClick={() => void share()}>
              Copy the link for trainees
            </button>
            <button type="button" disabled={!isSettled()} onClick={save}>
              Save it to a file
            </button>
            <Show when={toSeal()}>{(link) => <a href={`../sealed/${link()}`}>Seal this sheet</a>}</Show>
            <For each={Object.entries(partTitles) as [Part, string][]}>
              {([part, title]) => (
                <button type="button" disabled={!isSettled()} onClick={() => void printOut(part)}>
                  {title}
                  {sheet().versions > 1 ? `, all ${sheet().versions} versions` : ''}
                </button>
              )}
            </For>
          </p>
          <HandOutFold
            isReady={isSettled()}
            title={sheet().title || 'A sheet'}
            mark={mark()}
            versions={sheet().versions}
            links={async () => {
              const address = await addressOut();
              return address === undefined ? said() : numbers().map((each) => `${address}&version=${each}`);
            }}
          />
          <ExchangeFold
            isReady={isSettled()}
            mark={mark}
            title={sheet().title || 'A sheet of the Malt Spirit Handbook'}
            generator={sheet().generator}
            shown={shown()}
            versions={sheet().versions}
            load={versionsOf}
          />
          <p class="small">
            {said()} <Show when={mark()}>Sheet {mark()}.</Show>
          </p>
        </Show>
      </section>
      <Show when={isSettled() && settled()!.evenness}>
        {(evenness) => (
          <div class="screen-only">
            <OwnSheetEven of={evenness()} />
          </div>
        )}
      </Show>
      <Show when={isSettled()}>
        <OwnResults sheet={settled()!.sheet} mark={mark()} />
      </Show>
      <Show when={printing()}>
        {(printed) => (
          <div class="paper sheet">
            <For each={printed().versions}>
              {(drawn, i) => (
                <OwnPaper
                  part={printed().part}
                  sheet={settled()!.sheet}
                  asked={drawn}
                  news={printed().part === 'questions' ? [] : newsOf(sheet(), drawn)}
                  version={i() + 1}
                  mark={mark()}
                />
              )}
            </For>
          </div>
        )}
      </Show>
    </>
  );
}
