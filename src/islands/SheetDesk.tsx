// A trainer's desk: choose a sheet, see it at once, print it, share it, save it for a learning system.
import { createEffect, createMemo, createSignal, For, lazy, on, onMount, Show } from 'solid-js';
import { unwrap } from 'solid-js/store';
import { formatCount } from '../core/format.ts';
import { GENERATOR } from '../exercises/draw.ts';
import type { Version } from '../exercises/exchange/questions-csv.ts';
import type { InSteps } from '../exercises/in-steps.ts';
import { kindsOf } from '../exercises/kinds/fetched-kinds.ts';
import { lineReady, partsOfLine } from '../exercises/own-line.ts';
import { linkProblem, readSheetLink, sheetLink } from '../exercises/sheet-link.ts';
import { newsOf } from '../exercises/sheet-news.ts';
import { forms, formTitles, levels, levelTitles, topics, topicTitles } from '../exercises/topics.ts';
import {
  asking,
  fingerprint,
  firstKinds,
  fixing,
  MOST_QUESTIONS,
  MOST_VERSIONS,
  poolOf,
  type Asked,
  type Worksheet,
} from '../exercises/worksheet.ts';
import { keepText, keptText, keyOf } from '../browser/browser-store.ts';
import { afterFrame, whenIdle } from '../browser/defer.ts';
import { turn } from '../house/turn.ts';
import { liveParts, useHouse } from '../browser/house-store.ts';
import { useAnnouncement } from './announce.ts';
import { HandOutFold } from './HandOutFold.tsx';
import { NumberField } from './NumberField.tsx';
import { printPart } from './print-part.ts';
import { ResultTable } from './ResultTable.tsx';
import { SheetHandOn } from './SheetHandOn.tsx';
import type { Part } from './PaperQuestion.tsx';
import { Paper } from './SheetPaper.tsx';
import { today } from './today.ts';
import { Tick } from './Tick.tsx';
import { drawnInSteps } from './use-kinds.ts';
import { footPages } from './version-pages.ts';

const Exchange = lazy(() => import('./Exchange.tsx').then((part) => ({ default: part.Exchange })));

const start: Worksheet = {
  generator: GENERATOR,
  topics,
  forms,
  levels,
  count: 10,
  house: 'built-in',
  seed: 'sheet-4',
  versions: 12,
};
const KEY = keyOf('sheet');
/** The sheet that was last made in this browser, if it can still be read. */
function keptSheet() {
  const reading = readSheetLink(keptText(KEY) ?? '');
  return reading && 'problem' in reading ? undefined : reading;
}
const LONG_LINK = 8000; // characters of an address that programs for messages carry as a rule; common-practice
const partTitles: Readonly<Record<Part, string>> = {
  questions: 'Print the questions',
  answers: 'Print the answers with working',
  key: 'Print the marking key',
};

/** A choice with one more or one less in it; never empty, and in the list's own order. */
function toggled<T>(list: readonly T[], chosen: readonly T[], each: T): readonly T[] {
  const next = list.filter((one) => (one === each ? !chosen.includes(one) : chosen.includes(one)));
  return next.length === 0 ? chosen : next;
}

export default function SheetDesk(props: { readonly list: string }) {
  const kinds = kindsOf(props.list);
  const { mounted, house, name } = useHouse();
  const [sheet, setSheet] = createSignal<Worksheet>(start);
  const [shown, setShown] = createSignal(1);
  const [withAnswers, setWithAnswers] = createSignal(false);
  const [printing, setPrinting] = createSignal<{
    readonly part: Part;
    readonly versions: readonly (readonly Asked[])[];
  }>();
  const [problem, setProblem] = createSignal<string>();
  const [said, setSaid] = createSignal('');

  const change = (part: Partial<Worksheet>) => {
    const { notes: _, ...settings } = sheet();
    setSheet({ ...settings, ...part, generator: GENERATOR });
    setShown(Math.min(shown(), sheet().versions));
  };
  const [ready, setReady] = createSignal(false);
  const [drawn, setDrawn] = createSignal<{ readonly of: Worksheet; readonly asked: readonly Asked[] }>();
  const [laid, setLaid] = createSignal(0); // questions of it that are on the page: one more in each task
  const seen = () => drawn() !== undefined && laid() >= drawn()!.asked.length;
  const pool = createMemo(() => poolOf(sheet(), kinds));
  const [whole, setWhole] = createSignal<Worksheet>(); // the sheet with what all its versions draw: a piece of work of its own
  const [settings, setSettings] = createSignal<Worksheet>(); // of which that was made
  /** Draws from a sheet, once its kinds of question are here. */
  const drawing = async <T,>(of: Worksheet, work: InSteps<T>) => {
    await lineReady(of.house);
    return drawnInSteps(work, firstKinds(of, kinds));
  };
  const settle = async (): Promise<Worksheet | undefined> => {
    const now = sheet();
    if (settings() === now) return whole();
    const made = await drawing(now, fixing(now, kinds));
    if (made && sheet() === now) {
      setSettings(now);
      setWhole(made);
    }
    return made;
  };
  const lay = async (asked: readonly Asked[]) => {
    for (let each = 0; each <= asked.length && drawn()?.asked === asked; each++) {
      setLaid(each);
      await turn();
    }
  };
  /** The version shown, drawn anew when something else is chosen. */
  createEffect(
    on([sheet, shown, ready], async ([now, version, isReady]) => {
      const asked = isReady && (await drawing(now, asking(now, version, kinds)));
      if (!asked || sheet() !== now || shown() !== version) return;
      setDrawn({ of: now, asked });
      await lay(asked);
    }),
  );
  const asked = () => drawn()?.asked ?? [];
  const questions = () => asked().map(({ question }) => question);
  const mark = createMemo(() => (whole() ? fingerprint(sheetLink(whole()!)) : ''));
  const allVersions = () => Array.from({ length: sheet().versions }, (_, i) => i + 1);

  useAnnouncement(
    'sheet',
    () => [mark(), shown(), withAnswers()],
    () =>
      `Sheet ${mark()}, version ${shown()}: ${questions().length} questions${withAnswers() ? ' with answers' : ''}.`,
  );

  createEffect(on([sheet, seen], () => void (seen() && whenIdle(() => void settle()))));
  createEffect(() => {
    const now = whole() && sheetLink(whole()!);
    if (!now || linkProblem(now)) return;
    history.replaceState(null, '', now);
    keepText(KEY, now);
  });
  onMount(() => {
    const reading = readSheetLink(location.hash) ?? (location.hash === '' ? keptSheet() : undefined);
    if (reading && 'problem' in reading) setProblem(reading.problem);
    else if (reading) setSheet(reading.sheet);
    afterFrame(() => setReady(true)); // the page comes alive first
  });

  const [isExchange, setExchange] = createSignal(false); // what it holds comes when it is opened
  const remember = (made: Worksheet) => {
    const link = sheetLink(made);
    if (!linkProblem(link))
      void import('./sheets-set.ts').then(({ rememberSheet }) =>
        rememberSheet({ mark: fingerprint(link), title: made.seed, address: `sheet/${link}`, day: today() }),
      );
  };
  const printOut = async (part: Part) => {
    const made = await settle();
    if (!made) return;
    remember(made);
    const versions: (readonly Asked[])[] = [];
    for (const version of allVersions()) {
      const asked = await drawing(made, asking(made, version, kinds));
      if (!asked) return;
      versions.push(asked);
    }
    setPrinting({ part, versions });
    if (part !== 'key') footPages(`Sheet “${made.seed}” (${mark()})`, versions.length);
    printPart('sheet');
    addEventListener('afterprint', () => setPrinting(undefined), { once: true });
  };
  const versionsOf = async (wanted: readonly number[]) => {
    const made = await settle();
    if (!made) return undefined;
    const versions: Version[] = [];
    for (const version of wanted) {
      const drawn = await drawing(made, asking(made, version, kinds));
      if (!drawn) return undefined;
      versions.push({ version, questions: drawn.map(({ question }) => question) });
    }
    return versions;
  };
  const addressOf = (link: string) =>
    `${location.origin}${location.pathname.replace(/sheets\/$/, 'sheet/')}${link}`;
  const share = async () => {
    const made = await settle();
    if (!made) return;
    const link = sheetLink(made);
    const tooLong = linkProblem(link);
    if (tooLong) return void setSaid(tooLong);
    remember(made);
    const address = addressOf(link);
    const long =
      address.length > LONG_LINK
        ? ` It has ${address.length} characters, and some programs cut long links: fewer versions or questions make it shorter.`
        : '';
    try {
      await navigator.clipboard.writeText(address);
      setSaid(
        `The link is copied. Whoever opens it chooses a version and takes the same sheet; add &version=3 for one version.${long}`,
      );
    } catch {
      setSaid(`Copy this link: ${address}`);
    }
  };

  return (
    <>
      <section class="calculator sheet-desk screen-only" aria-labelledby="sheet-desk-title">
        <h2 id="sheet-desk-title">Make a sheet</h2>
        <Show when={problem()}>
          <p class="problem" role="alert">
            {problem()}
          </p>
        </Show>
        <form class="choices" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
          <Ticks
            legend="Topics"
            list={topics}
            titles={topicTitles}
            chosen={sheet().topics}
            take={(each) => change({ topics: toggled(topics, sheet().topics, each) })}
            only={(each) => change({ topics: [each] })}
          />
          <Ticks
            legend="Kinds of question"
            list={forms}
            titles={formTitles}
            chosen={sheet().forms}
            take={(each) => change({ forms: toggled(forms, sheet().forms, each) })}
          />
          <Ticks
            legend="Levels"
            list={levels}
            titles={levelTitles}
            chosen={sheet().levels}
            take={(each) => change({ levels: toggled(levels, sheet().levels, each) })}
          />
          <NumberField
            id="sheet-count"
            label="Questions"
            kind="count"
            range={[1, MOST_QUESTIONS]}
            step={1}
            value={sheet().count}
            take={(count) => void change({ count: Math.round(count) })}
          />
          <NumberField
            id="sheet-versions"
            label="Versions, one for each trainee"
            kind="count"
            range={[1, MOST_VERSIONS]}
            step={1}
            value={sheet().versions}
            take={(versions) => void change({ versions: Math.round(versions) })}
          />
          <div class="field">
            <label for="sheet-house">Whose figures</label>
            <select
              id="sheet-house"
              autocomplete="off"
              value={typeof sheet().house === 'string' ? (sheet().house as string) : 'own'}
              onChange={(event) => {
                const wanted = event.currentTarget.value;
                change({
                  house:
                    wanted === 'built-in' || wanted === 'random'
                      ? wanted
                      : { name: name(), house: { ...house() }, ...partsOfLine(unwrap(liveParts())) },
                });
              }}
            >
              <option value="built-in">Harrowmere</option>
              <option value="own">{`${mounted() && typeof sheet().house !== 'string' ? (sheet().house as { name: string }).name : name()}, as it stands now`}</option>
              <option value="random">a random house for each version</option>
            </select>
          </div>
          <div class="field">
            <label for="sheet-seed">Sheet name: the same name draws the same sheet</label>
            <input
              id="sheet-seed"
              class="words"
              type="text"
              maxlength="24"
              autocomplete="off"
              value={sheet().seed}
              onChange={(event) => {
                const seed = event.currentTarget.value
                  .toLowerCase()
                  .replace(/[^a-z0-9]+/g, '-')
                  .replace(/^-|-$/g, '')
                  .slice(0, 24);
                if (seed !== '') change({ seed });
                event.currentTarget.value = sheet().seed;
              }}
            />
          </div>
          <p class="actions">
            <button type="button" onClick={() => change({ seed: `sheet-${Date.now().toString(36)}` })}>
              Another sheet
            </button>
          </p>
        </form>
        <p role="status" class="fits">
          {formatCount(pool().length, 'kind')} of question {pool().length === 1 ? 'fits' : 'fit'}.{' '}
          {drawn()?.of === sheet() && questions().length < sheet().count
            ? `They give ${questions().length} different questions; choose more topics or kinds to get ${sheet().count}.`
            : ''}
        </p>
        <p class="actions">
          <For each={Object.entries(partTitles) as [Part, string][]}>
            {([part, title]) => (
              <button type="button" disabled={!drawn()} onClick={() => void printOut(part)}>
                {title}
                {sheet().versions > 1 ? `, all ${sheet().versions} versions` : ''}
              </button>
            )}
          </For>
          <button type="button" disabled={!drawn()} onClick={() => void share()}>
            Copy the link for trainees
          </button>
          <Show when={settings() === sheet() && whole() && sheetLink(whole()!)}>
            {(link) => <a href={`sealed/${link()}`}>Seal this sheet</a>}
          </Show>
        </p>
        <p role="status">{said()}</p>
        <HandOutFold
          isReady={mark() !== ''}
          title={`Sheet “${sheet().seed}”`}
          mark={mark()}
          versions={sheet().versions}
          links={async () => {
            const made = await settle();
            if (!made) return undefined;
            remember(made);
            return (
              linkProblem(sheetLink(made)) ?? allVersions().map((each) => addressOf(sheetLink(made, each)))
            );
          }}
        />
        <details class="exchange" onToggle={() => setExchange(true)}>
          <summary>For another system, or a table</summary>
          <Show when={isExchange() && drawn()}>
            <Exchange
              mark={mark}
              title={`Malt Spirit Handbook, sheet ${sheet().seed}`}
              generator={sheet().generator}
              shown={shown()}
              versions={sheet().versions}
              load={versionsOf}
            />
          </Show>
        </details>
        <SheetHandOn
          mark={mark()}
          isReady={drawn() !== undefined}
          link={async () => {
            const made = await settle();
            return made && sheetLink(made);
          }}
          versions={sheet().versions}
          linkOfFirst={(versions) => {
            const { notes, ...made } = whole()!;
            return sheetLink({ ...made, versions, ...(notes && { notes: notes.slice(0, versions) }) });
          }}
          addressOf={addressOf}
        />
      </section>
      <section class="screen-only preview" aria-labelledby="preview-title">
        <h2 id="preview-title">The sheet</h2>
        <form class="choose" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
          <div class="field">
            <label for="sheet-shown">Version</label>
            <select
              id="sheet-shown"
              autocomplete="off"
              value={String(shown())}
              onChange={(event) => setShown(Number(event.currentTarget.value))}
            >
              <For each={allVersions()}>
                {(version) => <option value={String(version)}>{version}</option>}
              </For>
            </select>
          </div>
          <Tick checked={withAnswers()} take={setWithAnswers}>
            Show the answers
          </Tick>
        </form>
        <For each={drawn() ? newsOf(drawn()!.of, asked()) : []}>{(each) => <p class="remark">{each}</p>}</For>
        <Show when={laid() > 0}>
          <Paper
            part={withAnswers() ? 'answers' : 'questions'}
            questions={questions().slice(0, laid())}
            news={[]}
            version={shown()}
            mark={mark()}
            name={sheet().seed}
          />
        </Show>
      </section>
      <Show when={printing()}>
        {(printed) => (
          <div class="paper sheet">
            <For each={printed().versions}>
              {(drawn, i) => (
                <Paper
                  part={printed().part}
                  questions={drawn.map(({ question }) => question)}
                  news={printed().part === 'questions' ? [] : newsOf(sheet(), drawn)}
                  version={i() + 1}
                  mark={mark()}
                  name={sheet().seed}
                />
              )}
            </For>
          </div>
        )}
      </Show>
      <ResultTable mark={mark()} />
    </>
  );
}

function Ticks<T extends string | number>(props: {
  readonly legend: string;
  readonly list: readonly T[];
  readonly titles: Readonly<Record<T, string>>;
  readonly chosen: readonly T[];
  readonly take: (each: T) => void;
  /** Ticks one alone. */
  readonly only?: (each: T) => void;
}) {
  return (
    <fieldset>
      <legend>{props.legend}</legend>
      <For each={props.list}>
        {(each) => (
          <div class="one-of">
            <Tick checked={props.chosen.includes(each)} take={() => props.take(each)}>
              {typeof each === 'number' ? `${each}: ${props.titles[each]}` : props.titles[each]}
            </Tick>
            <Show when={props.only}>
              <button
                type="button"
                class="reset"
                aria-label={`Only ${props.titles[each]}`}
                onClick={() => props.only!(each)}
              >
                only
              </button>
            </Show>
          </div>
        )}
      </For>
    </fieldset>
  );
}
