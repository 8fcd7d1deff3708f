// A trainer's desk: choose a sheet, see it at once, print it, share it, save it for a learning system.
import { createEffect, createSignal, onMount, Show } from 'solid-js';
import { afterFrame } from '../browser/defer.ts';
import { formatCount } from '../core/format.ts';
import { kindsOf } from '../exercises/kinds/fetched-kinds.ts';
import { linkProblem, sheetLink } from '../exercises/sheet-link.ts';
import { newsOf } from '../exercises/sheet-news.ts';
import { sheetMark, type AskedQuestion, type Worksheet } from '../exercises/worksheet.ts';
import { useAnnouncement } from './announce.ts';
import { ExchangeFold } from './ExchangeFold.tsx';
import { HandOutFold } from './HandOutFold.tsx';
import type { PrintedPart } from './PaperQuestion.tsx';
import { PrintButtons, usePrintedVersions } from './print-versions.tsx';
import { ResultTable } from './ResultTable.tsx';
import { SheetChoices } from './SheetChoices.tsx';
import { useDrawnSheet } from './sheet-drawn.ts';
import { SheetHandOn } from './SheetHandOn.tsx';
import { firstSheet, keepSheetLink, openedSheet } from './sheet-kept.ts';
import { SheetPaper } from './SheetPaper.tsx';
import { SheetPreview } from './SheetPreview.tsx';
import { today } from './today.ts';

const LONG_LINK = 8000; // characters of an address that programs for messages carry as a rule; common-practice

const addressOf = (link: string) =>
  `${location.origin}${location.pathname.replace(/sheets\/$/, 'sheet/')}${link}`;

/** Puts a sheet that goes out among those that this browser knows. */
function remember(made: Worksheet): void {
  const link = sheetLink(made);
  if (!linkProblem(link))
    void import('./sheets-set.ts').then(({ rememberSheet }) =>
      rememberSheet({ mark: sheetMark(link), title: made.seed, address: `sheet/${link}`, day: today() }),
    );
}

export default function SheetDesk(props: { readonly list: string }) {
  const desk = useDrawnSheet(firstSheet, kindsOf(props.list));
  const { sheet, change, shown, drawn, questions, pool, whole, settle, versionsOf, mark, numbers } = desk;
  const { print, Printed } = usePrintedVersions<readonly AskedQuestion[]>();
  const [withAnswers, setWithAnswers] = createSignal(false);
  const [problem, setProblem] = createSignal<string>();
  const [said, setSaid] = createSignal('');

  useAnnouncement(
    'sheet',
    () => [mark(), shown(), withAnswers()],
    () =>
      `Sheet ${mark()}, version ${shown()}: ${questions().length} questions${withAnswers() ? ' with answers' : ''}.`,
  );
  createEffect(() => whole() && keepSheetLink(sheetLink(whole()!)));
  onMount(() => {
    const reading = openedSheet(location.hash);
    if (reading && 'problem' in reading) setProblem(reading.problem);
    else if (reading) desk.open(reading.sheet);
    afterFrame(desk.begin); // the page comes alive first
  });

  /** The sheet as it goes out, which is remembered. */
  const made = async (): Promise<Worksheet | undefined> => {
    const now = await settle();
    if (now) remember(now);
    return now;
  };
  const printOut = async (part: PrintedPart) => {
    const now = await made();
    const versions = now && (await versionsOf(now, numbers()));
    if (versions) await print(part, versions.map(({ asked }) => asked), `Sheet “${now.seed}” (${mark()})`); // prettier-ignore
  };
  const toExchange = async (wanted: readonly number[]) => {
    const now = await settle();
    const versions = now && (await versionsOf(now, wanted));
    return versions?.map(({ version, asked }) => ({
      version,
      questions: asked.map(({ question }) => question),
    }));
  };
  const share = async () => {
    const now = await settle();
    if (!now) return;
    const link = sheetLink(now);
    const tooLong = linkProblem(link);
    if (tooLong) return void setSaid(tooLong);
    remember(now);
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
        <SheetChoices sheet={sheet()} change={change} />
        <p role="status" class="fits">
          {formatCount(pool().length, 'kind')} of question {pool().length === 1 ? 'fits' : 'fit'}.{' '}
          {drawn()?.of === sheet() && questions().length < sheet().count
            ? `They give ${questions().length} different questions; choose more topics or kinds to get ${sheet().count}.`
            : ''}
        </p>
        <p class="actions">
          <PrintButtons
            versions={sheet().versions}
            isReady={drawn() !== undefined}
            print={(part) => void printOut(part)}
          />
          <button type="button" disabled={!drawn()} onClick={() => void share()}>
            Copy the link for trainees
          </button>
          <Show when={desk.isSettled() && whole() && sheetLink(whole()!)}>
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
            const now = await made();
            return (
              now && (linkProblem(sheetLink(now)) ?? numbers().map((each) => addressOf(sheetLink(now, each))))
            );
          }}
        />
        <ExchangeFold
          isReady={drawn() !== undefined}
          mark={mark}
          title={`Malt Spirit Handbook, sheet ${sheet().seed}`}
          generator={sheet().generator}
          shown={shown()}
          versions={sheet().versions}
          load={toExchange}
        />
        <SheetHandOn
          mark={mark()}
          isReady={drawn() !== undefined}
          link={async () => {
            const now = await settle();
            return now && sheetLink(now);
          }}
          versions={sheet().versions}
          linkOfFirst={(versions) => {
            const { notes, ...now } = whole()!;
            return sheetLink({ ...now, versions, ...(notes && { notes: notes.slice(0, versions) }) });
          }}
          addressOf={addressOf}
        />
      </section>
      <SheetPreview of={desk} withAnswers={withAnswers()} showAnswers={setWithAnswers} />
      <Printed>
        {(asked, version, part) => (
          <SheetPaper
            part={part}
            questions={asked.map(({ question }) => question)}
            news={part === 'questions' ? [] : newsOf(sheet(), asked)}
            version={version}
            mark={mark()}
            name={sheet().seed}
          />
        )}
      </Printed>
      <ResultTable mark={mark()} />
    </>
  );
}
