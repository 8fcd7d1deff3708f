// A practice of telling: the figures of the walk one by one, hidden; what a new guide says of each is judged, and what was missed comes again.
import { createMemo, createSignal, onMount, Show } from 'solid-js';
import { figureTable, pathsOf, type FigureId } from '../core/figures/index.ts';
import { isRefusal } from '../core/refusal.ts';
import { keepText, keptText, storageKey } from '../browser/browser-store.ts';
import { useKnown } from '../browser/known-store.ts';
import { figureValue, wholeCountOf } from '../house/prose.ts';
import { useHouse } from '../browser/house-store.ts';
import { useUnits } from '../browser/units-store.ts';
import { figuresByRoom } from '../walk/guide-file.ts';
import type { figureHeard } from '../walk/guide-file-heard.ts';
import { judgeTold, JUDGING_RULE, type SaidAnswer, type SaidVerdict } from '../walk/guide-file-judge.ts';
import { roundOfMissed, nextToTell, nothingTold, readByWalk, stillTold, toldOf, withFigureTold, withWalk, type ToldRight } from '../walk/guide-file-told.ts'; // prettier-ignore
import { useAnnouncement } from './announce.ts';
import { focusAfter } from './focus-after.ts';
import { BlankPart } from './GuideFileBlank.tsx';
import { NotOwnYet } from './GuideFileFigures.tsx';
import { OtherHouse, useGuideWalk, useOnPaper } from './guide-file-walk.ts';
import { useWhy } from './guide-file-why.ts';
import { NotKept } from './NotKept.tsx';
import { useWayBack } from './use-way-back.tsx';

const KEPT = storageKey('guide-file');
const verdicts: Readonly<Record<SaidVerdict, string>> = { right: 'Right', near: 'Near', wrong: 'Not right' };
const LOST = 'A part of this page’s script did not come. Load the page again; what you have told is kept.';

let coming: Promise<typeof figureHeard | undefined> | undefined;
/** What hears figures in words: it comes with the first touch of the field. */
const fetchHearing = () =>
  (coming ??= import('../walk/guide-file-heard.ts').then(
    (module) => module.figureHeard,
    () => undefined,
  ));

/** A figure that was told, with its verdict; none yet where it was said aloud and only shown. */
interface Shown {
  readonly id: FigureId;
  readonly verdict?: SaidVerdict;
}

export default function GuideFileTell() {
  let field: HTMLInputElement | undefined;
  let part: HTMLDivElement | undefined;
  const { walk, other } = useGuideWalk();
  const { line, name } = useHouse();
  const { counted } = useKnown();
  const unitOf = useUnits();
  const why = useWhy();
  const isOnPaper = useOnPaper();
  const [told, setTold] = createSignal<ToldRight>(nothingTold);
  const [answer, setAnswer] = createSignal('');
  const [shown, setShown] = createSignal<Shown>();
  const [problem, setProblem] = createSignal('');
  const [isKept, setKept] = createSignal(true);
  const { say, Said } = useWayBack();
  onMount(() => setTold(toldOf(readByWalk(keptText(KEPT)), walk().name)));

  const rooms = createMemo(() =>
    figuresByRoom(walk()).flatMap((ids, i) =>
      ids.flatMap((id) => (why(id) ? [{ id, room: walk().rooms[i]!.name }] : [])),
    ),
  );
  const figures = () => rooms().map(({ id }) => id);
  const valueOf = (id: FigureId) => {
    const path = pathsOf(id)[0]!;
    return counted(id) ?? wholeCountOf(path, figureValue(line(), path));
  };
  /** Against the figure, and against its second where the house has two: hours over a weekend. */
  const judged = (id: FigureId, said: SaidAnswer): SaidVerdict => {
    const { kind } = figureTable[id];
    const second = id === 'fermentationHours' ? line().weekendHours : undefined;
    const all = [valueOf(id), ...(second === undefined ? [] : [second])].map((each) =>
      judgeTold(said, each, kind),
    );
    return all.includes('right') ? 'right' : all.includes('near') ? 'near' : 'wrong';
  };
  const counts = createMemo(() =>
    stillTold(told(), figures(), (id, was) => judged(id, { numbers: [was] }) === 'right'),
  );
  const at = () => shown()?.id ?? nextToTell(figures(), counts());
  const roomAt = () => rooms().find(({ id }) => id === at())?.room;
  const number = () => figures().indexOf(at()!) + 1;
  const right = () => Object.keys(counts().right).length;
  const missed = () => counts().missed.length;

  const keep = (next: ToldRight) => {
    setTold(next);
    setKept(keepText(KEPT, withWalk(readByWalk(keptText(KEPT)), walk().name, next)));
  };
  const tell = (id: FigureId, verdict: SaidVerdict) => {
    say('');
    setShown({ id, verdict });
    keep(withFigureTold(counts(), id, verdict, valueOf(id)));
  };
  const check = async (event: Event) => {
    event.preventDefault();
    const id = at();
    if (id === undefined || shown()) return;
    setProblem('');
    const toNext = () => focusAfter(event, () => document.querySelector<HTMLElement>('.telling .next'));
    if (answer().trim() === '') {
      setShown({ id });
      toNext();
      return;
    }
    const hear = await fetchHearing();
    const { kind } = figureTable[id];
    const said = hear?.(answer(), { kind, label: why(id)!.label, unit: unitOf(kind).unit });
    if (!said || isRefusal(said)) {
      setProblem(said?.refused ?? LOST);
      field?.focus();
      return;
    }
    tell(id, judged(id, said));
    toNext();
  };
  const next = (event: Event, verdict?: SaidVerdict) => {
    const now = shown();
    if (now && verdict) tell(now.id, verdict);
    setShown(undefined);
    setAnswer('');
    focusAfter(event, () => field ?? document.querySelector<HTMLElement>('.telling button'));
  };
  const again = (event: Event, from: ToldRight) => {
    keep(from);
    next(event);
  };

  const beginAnew = (event: Event) => {
    const before = counts();
    again(event, nothingTold);
    say('Begun anew.', () => {
      keep(before);
      return 'What was told stands as it stood.';
    });
  };

  const house = () => {
    const told = shown() && why(shown()!.id);
    return told ? `${name()}: ${told.says}${told.says === told.exact ? '' : `; in the book ${told.exact}`}.` : '';
  }; // prettier-ignore
  const ended = () =>
    figures().length === 0
      ? 'The rooms of this walk have no figures.'
      : missed() === 0
        ? `All ${figures().length} are told right.`
        : `${right()} of ${figures().length} are told right. Now those once more that you missed.`;
  useAnnouncement(
    'guide-tell',
    () => [shown(), problem(), at()],
    () => {
      const verdict = shown()?.verdict;
      if (shown()) return [verdict && `${verdicts[verdict]}.`, house()].filter(Boolean).join(' ');
      return problem() || (at() ? '' : ended());
    },
    () => part,
  );

  return (
    <div class="guide-file" ref={part}>
      <OtherHouse isWanted={other() !== undefined} other={other()!} root="../../" />
      <section class="calculator telling" aria-labelledby="telling-title">
        <Show
          when={at()}
          fallback={
            <>
              <h2 id="telling-title">Told to the end</h2>
              <p>{ended()}</p>
              <p class="actions">
                <Show when={missed() > 0}>
                  <button type="button" onClick={(event) => again(event, roundOfMissed(counts()))}>
                    Tell those again
                  </button>
                </Show>
                <button type="button" onClick={beginAnew}>
                  Begin anew
                </button>
              </p>
            </>
          }
        >
          {(id) => (
            <>
              <h2 id="telling-title">{roomAt()}</h2>
              <p class="when">
                Figure {number()} of {figures().length}; {right()} told right
              </p>
              <form onSubmit={(event) => void check(event)} onFocusIn={() => void fetchHearing()}>
                <div class="field answer">
                  <label for="telling-said">{why(id())?.label}</label>
                  <input
                    id="telling-said"
                    class="words"
                    type="text"
                    autocomplete="off"
                    maxlength="200"
                    ref={field}
                    aria-describedby="telling-how telling-problem"
                    aria-invalid={problem() ? 'true' : 'false'}
                    readOnly={shown() !== undefined}
                    value={answer()}
                    onInput={(event) => {
                      setProblem('');
                      setAnswer(event.currentTarget.value);
                    }}
                  />
                </div>
                <p class="problem" id="telling-problem" hidden={problem() === ''}>
                  {problem()}
                </p>
                <p class="meaning" id="telling-how">
                  As you would say it: “just under five and a half thousand litres”. Or say it aloud, and
                  check with nothing written.
                </p>
                <Show when={!shown()}>
                  <p class="actions">
                    <button type="submit">Check</button>
                  </p>
                </Show>
              </form>
              <Show when={shown()}>
                {(now) => (
                  <>
                    <div
                      class="mark-of"
                      data-verdict={now().verdict === 'near' ? 'rounded' : (now().verdict ?? 'rounded')}
                    >
                      <p class="verdict">
                        <Show when={now().verdict}>{(verdict) => <b>{verdicts[verdict()]}. </b>}</Show>
                        {house()}
                      </p>
                    </div>
                    <p class="actions">
                      <Show
                        when={now().verdict}
                        fallback={
                          <>
                            <button type="button" class="next" onClick={(event) => next(event, 'right')}>
                              I said it right
                            </button>
                            <button type="button" onClick={(event) => next(event, 'wrong')}>
                              I did not
                            </button>
                          </>
                        }
                      >
                        <button type="button" class="next" onClick={(event) => next(event)}>
                          Next figure
                        </button>
                      </Show>
                    </p>
                  </>
                )}
              </Show>
            </>
          )}
        </Show>
        <Said />
        <div role="status">
          <NotKept isKept={isKept()} what="what you have told" />
        </div>
      </section>
      <p class="meaning">{JUDGING_RULE}</p>
      <NotOwnYet walk={walk()} root="../../" />
      <p class="meaning">
        What you tell stays in this browser, for this walk. On paper this page is a list with blanks, and a
        key to fold back.
      </p>
      <p class="actions">
        <button type="button" onClick={() => print()}>
          Print the list with blanks
        </button>
      </p>
      <Show when={isOnPaper()}>
        <div class="guide-paper">
          <section>
            <h2>Tell the figures: {name()}</h2>
            <BlankPart walk={walk()} />
          </section>
        </div>
      </Show>
    </div>
  );
}
