// A trainer's own sheet, question by question: chosen, ordered, marked, kept by name, sent as a link or a file, printed.
import { createSignal, For, lazy, onMount, Show } from 'solid-js';
import { afterFrame } from '../browser/defer.ts';
import { freshKey, houseOfOwn, type OwnSheet } from '../exercises/own/own-sheet.ts';
import { LONGEST_OWN_SHEET, ownSheetText, readOwnSheet } from '../exercises/own/own-text.ts';
import { useAnnouncement } from './announce.ts';
import { TextFileField } from './TextFileField.tsx';
import { readOwnLink } from './own-address.ts';
import { isDraftKey, keepSheet, keptBank, keptDraft, keptSheets } from './own-kept.ts';
import { blankSheet, useDrawnOwnSheet } from './own-sheet-drawn.ts';
import { useOwnSheetItems } from './own-sheet-items.ts';
import { OwnSheetFind } from './OwnSheetFind.tsx';
import { OwnSheetItems } from './OwnSheetItems.tsx';
import { useOwnSheetOut } from './OwnSheetOut.tsx';
import { OwnSheetRules } from './OwnSheetRules.tsx';
import { Shelf } from './Shelf.tsx';
import { useWayBack } from './use-way-back.tsx';

// What only a sheet with questions needs comes with the first of them.
const OwnResults = lazy(() => import('./OwnResults.tsx').then((part) => ({ default: part.OwnResults })));
const OwnSheetEven = lazy(() =>
  import('./OwnSheetEven.tsx').then((part) => ({ default: part.OwnSheetEven })),
);

const fresh = () => blankSheet(`own-${Date.now().toString(36)}`);

export default function OwnSheetDesk(props: { readonly list: string }) {
  const [shelf, setShelf] = createSignal<readonly OwnSheet[]>([]);
  const { say, said, Said, saying } = useWayBack();
  const taken = useWayBack(); // what was done to its questions
  const [problem, setProblem] = createSignal<string>();

  const desk = useDrawnOwnSheet(props.list, say);
  const { sheet, change, changeItem, shown, settled, isSettled, mark } = desk;
  const { swapping, swapNone, add, move, keep, swap, remove } = useOwnSheetItems(desk, say, taken);
  const { Out, OnPaper } = useOwnSheetOut(desk, said, say);

  useAnnouncement(
    'own sheet',
    () => [mark(), shown()],
    () => (isSettled() ? `${sheet().items.length} questions are drawn for version ${shown()}.` : ''),
  );

  const openSheet = (read: OwnSheet | string, from: string) => {
    if (typeof read === 'string') return void say(read);
    const before = sheet();
    swapNone();
    desk.open(read);
    const isLost = before.items.length > 0 && ownSheetText(before) !== ownSheetText(read);
    const back = () => {
      desk.open(before);
      return `${before.title || 'The sheet without a title'} is back as it stood.`;
    };
    say(`${read.title || 'A sheet without a title'} is open, from ${from}.`, isLost ? back : undefined);
  };
  onMount(async () => {
    const read = await readOwnLink(location.hash);
    if (typeof read === 'string') setProblem(read);
    const kept = keptBank();
    desk.setBank(kept.all);
    setShelf(keptSheets().all);
    desk.take((typeof read === 'object' ? read.sheet : keptDraft()) ?? fresh());
    const problems = [kept.problem, keptSheets().problem].filter(Boolean);
    if (problems.length > 0) say(problems.join(' '));
    addEventListener('storage', ({ key }) => {
      desk.setBank(keptBank().all);
      setShelf(keptSheets().all);
      const theirs = isDraftKey(key) ? keptDraft() : undefined;
      if (theirs) desk.take(theirs);
    });
    afterFrame(desk.begin);
  });
  /** Keeps a sheet as it was kept before. */
  const keepAgain = (was: OwnSheet): string => {
    const isKept = keepSheet(was.title, was);
    setShelf(keptSheets().all);
    return isKept ? `“${was.title}” is kept as it was.` : 'This browser does not keep the sheet: save it to a file.'; // prettier-ignore
  };
  const keepNamed = () => {
    const { title } = sheet();
    if (title === '') return void say('Give the sheet a title first: it is kept under it.');
    const there = keptSheets().all.find((each) => each.title === title);
    const isKept = keepSheet(title, isSettled() ? settled()!.sheet : sheet());
    setShelf(keptSheets().all);
    if (!isKept) return say('This browser does not keep the sheet: save it to a file.');
    if (there)
      say(`“${title}” is kept in this browser, in place of the one of that title.`, () => keepAgain(there)); // prettier-ignore
    else say(`“${title}” is kept in this browser.`);
  };

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
            const gone = keptSheets().all.find((each) => each.title === title);
            keepSheet(title);
            setShelf(keptSheets().all);
            say(`“${title}” is no longer kept in this browser.`, gone && (() => keepAgain(gone)));
          }}
          saying={saying}
        />
        <TextFileField
          id="own-sheet-file"
          label="Open a sheet from a file"
          most={LONGEST_OWN_SHEET}
          what="a sheet"
          saidBy="own-said"
          take={(text) => openSheet(readOwnSheet(text), 'the file')}
          tell={say}
        />
        <Said id="own-said" />
      </section>
      <div class="screen-only">
        <OwnSheetFind
          kinds={desk.choosable()}
          own={desk.own()}
          house={houseOfOwn(sheet())}
          swapping={swapping() === undefined ? undefined : swapping()! + 1}
          add={add}
        />
      </div>
      <section class="screen-only" aria-labelledby="own-asked-title">
        <h2 id="own-asked-title">Its questions</h2>
        <taken.Said />
        <Show when={sheet().items.length > 0} fallback={<p>None yet: find one above and add it.</p>}>
          <form class="choose" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
            <div class="field">
              <label for="own-shown">As version</label>
              <select
                id="own-shown"
                autocomplete="off"
                value={String(shown())}
                onChange={(event) => desk.show(Number(event.currentTarget.value))}
              >
                <For each={desk.numbers()}>{(each) => <option value={String(each)}>{each}</option>}</For>
              </select>
            </div>
          </form>
          <OwnSheetItems
            items={sheet().items}
            kinds={desk.kinds()}
            asked={desk.asked()}
            swapping={swapping()}
            change={changeItem}
            move={move}
            anew={(place) => changeItem(place, { key: freshKey(sheet().items) })}
            keep={keep}
            swap={swap}
            remove={remove}
          />
          <Out />
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
      <OnPaper />
    </>
  );
}
