// A trainer's desk: choose a sheet, see it at once, print it, share it, save it for a learning system.
import { createEffect, createMemo, createSignal, For, on, onMount, Show } from 'solid-js';
import { GENERATOR } from '../exercises/draw.ts';
import { linkProblem, readSheetLink, sheetLink } from '../exercises/sheet-link.ts';
import { newsOf } from '../exercises/sheet-news.ts';
import { forms, formTitles, levels, levelTitles, topics, topicTitles } from '../exercises/topics.ts';
import {
  askedOf,
  fingerprint,
  fixed,
  MOST_QUESTIONS,
  MOST_VERSIONS,
  poolOf,
  type Worksheet,
} from '../exercises/worksheet.ts';
import { whenIdle } from '../house/idle.ts';
import { useHouse } from '../house/store.ts';
import { useAnnouncement } from './announce.ts';
import { NumberField } from './NumberField.tsx';
import { printPart } from './print-part.ts';
import { ResultTable } from './ResultTable.tsx';
import { saveSheetForLearningSystem } from './save-sheet.ts';
import { SheetHandOn } from './SheetHandOn.tsx';
import { Paper, type Part } from './SheetPaper.tsx';
import { useKinds } from './use-kinds.ts';

const start: Worksheet = {
  generator: GENERATOR,
  topics,
  forms,
  levels,
  count: 10,
  house: 'built-in',
  seed: 'first-sheet',
  versions: 12,
};
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

export default function SheetDesk() {
  const { mounted, house, name } = useHouse();
  const [sheet, setSheet] = createSignal<Worksheet>(start);
  const [shown, setShown] = createSignal(1);
  const [withAnswers, setWithAnswers] = createSignal(false);
  const [printing, setPrinting] = createSignal<Part>();
  const [problem, setProblem] = createSignal<string>();
  const [said, setSaid] = createSignal('');

  const change = (part: Partial<Worksheet>) => {
    const { notes: _, ...settings } = sheet();
    setSheet({ ...settings, ...part, generator: GENERATOR });
    setShown(Math.min(shown(), sheet().versions));
  };
  const [drawn, setDrawn] = createSignal(false);
  const [seen, setSeen] = createSignal(false); // a piece of work after it is drawn
  const kinds = useKinds(() => {
    setDrawn(true);
    whenIdle(() => setSeen(true), true);
  });
  const pool = createMemo(() => poolOf(sheet(), kinds() ?? []));
  const [whole, setWhole] = createSignal<Worksheet>(); // the sheet with what all its versions draw: a piece of work of its own
  let settings: Worksheet | undefined; // of which that was made
  const settle = (): Worksheet => {
    const now = sheet();
    const made = settings === now ? whole()! : fixed(now, kinds() ?? []);
    settings = now;
    return setWhole(made);
  };
  const ofVersion = (version: number) => askedOf(sheet(), version, kinds() ?? []);
  const asked = createMemo(() => (drawn() ? ofVersion(shown()) : []));
  const questions = () => asked().map(({ question }) => question);
  const mark = createMemo(() => (whole() ? fingerprint(sheetLink(whole()!)) : ''));
  const allVersions = () => Array.from({ length: sheet().versions }, (_, i) => i + 1);

  useAnnouncement(
    'sheet',
    () => [mark(), shown(), withAnswers()],
    () =>
      `Sheet ${mark()}, version ${shown()}: ${questions().length} questions${withAnswers() ? ' with answers' : ''}.`,
  );

  createEffect(on([sheet, seen], () => void (seen() && whenIdle(settle))));
  createEffect(() => {
    const now = whole() && sheetLink(whole()!);
    if (now && !linkProblem(now)) history.replaceState(null, '', now);
  });
  onMount(() => {
    const reading = readSheetLink(location.hash);
    if (reading && 'problem' in reading) setProblem(reading.problem);
    else if (reading) setSheet(reading.sheet);
  });

  const printOut = (part: Part) => {
    settle();
    setPrinting(part);
    printPart('sheet');
    addEventListener('afterprint', () => setPrinting(undefined), { once: true });
  };
  const addressOf = (link: string) =>
    `${location.origin}${location.pathname.replace(/sheets\/$/, 'sheet/')}${link}`;
  const share = async () => {
    const link = sheetLink(settle());
    const tooLong = linkProblem(link);
    if (tooLong) return void setSaid(tooLong);
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
            legend="Stages"
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
            <label for="sheet-house">Figures of which house</label>
            <select
              id="sheet-house"
              autocomplete="off"
              value={typeof sheet().house === 'string' ? (sheet().house as string) : 'own'}
              onChange={(event) => {
                const wanted = event.currentTarget.value;
                change({
                  house:
                    wanted === 'built-in' || wanted === 'random' ? wanted : { name: name(), house: house() },
                });
              }}
            >
              <option value="built-in">Harrowmere</option>
              <option value="own">{`${mounted() && typeof sheet().house !== 'string' ? (sheet().house as { name: string }).name : name()}, as it stands now`}</option>
              <option value="random">a house by chance for each version</option>
            </select>
          </div>
          <div class="field">
            <label for="sheet-seed">Seed: the same seed draws the same sheet</label>
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
              Another seed
            </button>
          </p>
        </form>
        <p role="status" class="fits">
          {kinds()
            ? `${pool().length} kinds of question fit.`
            : 'The questions come as soon as the page is ready.'}{' '}
          {drawn() && questions().length < sheet().count
            ? `They give ${questions().length} questions that differ; choose more stages or kinds for ${sheet().count}.`
            : ''}
        </p>
        <p class="actions">
          <For each={Object.entries(partTitles) as [Part, string][]}>
            {([part, title]) => (
              <button type="button" disabled={!drawn()} onClick={() => printOut(part)}>
                {title}
              </button>
            )}
          </For>
          <button type="button" disabled={!drawn()} onClick={() => void share()}>
            Copy the link for trainees
          </button>
          <button
            type="button"
            disabled={!drawn()}
            onClick={() => setSaid(saveSheetForLearningSystem(settle(), shown(), questions()))}
          >
            Save version {shown()} for a learning system (QTI 3.0)
          </button>
        </p>
        <p role="status">{said()}</p>
        <SheetHandOn mark={mark()} isReady={drawn()} link={() => sheetLink(settle())} addressOf={addressOf} />
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
          <label class="tick">
            <input
              type="checkbox"
              autocomplete="off"
              checked={withAnswers()}
              onChange={(event) => setWithAnswers(event.currentTarget.checked)}
            />
            <span>Show the answers</span>
          </label>
        </form>
        <For each={newsOf(sheet(), asked())}>{(each) => <p class="remark">{each}</p>}</For>
        <Show when={seen()}>
          <Paper
            part={withAnswers() ? 'answers' : 'questions'}
            questions={questions()}
            news={[]}
            version={shown()}
            mark={mark()}
          />
        </Show>
      </section>
      <Show when={printing()}>
        {(part) => (
          <div class="paper sheet">
            <For each={allVersions()}>
              {(version) => {
                const drawn = ofVersion(version);
                return (
                  <Paper
                    part={part()}
                    questions={drawn.map(({ question }) => question)}
                    news={part() === 'questions' ? [] : newsOf(sheet(), drawn)}
                    version={version}
                    mark={mark()}
                  />
                );
              }}
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
            <label class="tick">
              <input
                type="checkbox"
                autocomplete="off"
                checked={props.chosen.includes(each)}
                onChange={(event) => {
                  props.take(each);
                  event.currentTarget.checked = props.chosen.includes(each);
                }}
              />
              <span>{typeof each === 'number' ? `${each}: ${props.titles[each]}` : props.titles[each]}</span>
            </label>
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
