// Pocket cards for rooms where no phone may go: chosen figures and questions, to print, cut and fold.
import { createMemo, createSignal, For, onMount, Show } from 'solid-js';
import { unwrap } from 'solid-js/store';
import { isServer } from 'solid-js/web';
import type { FigureId } from '../core/figures/index.ts';
import { standings, type FigureStanding } from '../core/figures/standing.ts';
import { computedBeside } from '../core/line/counted-beside.ts';
import type { Line } from '../core/line/line.ts';
import { cardFigures, saidOnCard, type CardFigure } from '../house/card-figures.ts';
import { stampInWords } from '../house/book.ts';
import { keepText, keptText, storageKey } from '../browser/browser-store.ts';
import { withVessels } from '../house/facts-beside.ts';
import { facts, factSays, type FactId } from '../house/facts.ts';
import { stages } from '../house/figures.ts';
import { builtInLine } from '../house/line-of.ts';
import { useKnown } from '../browser/known-store.ts';
import { factsPart } from '../house/parts/facts.ts';
import { plantPart } from '../house/parts/plant.ts';
import { usePart } from '../browser/part-store.ts';
import { figureText, figureValue, secondFigureText, textOfFigure } from '../house/prose.ts';
import { useHouse } from '../browser/house-store.ts';
import { useAnnouncement } from './announce.ts';
import { fetchedWhenWanted } from './fetched-part.tsx';
import { NotKept } from './NotKept.tsx';
import { Tick } from './Tick.tsx';
import { dateInWords, today as now } from './today.ts';
import { answerText, hasFigures, notSaid, type VisitorQuestion } from '../house/visitor-questions.ts';

const FIGURES_ON_A_CARD = 6;
const [LEFT, ASKED] = [storageKey('cards-left'), storageKey('cards-asked')];

/** What was ticked when the page was last open; anything that is not a list of names counts for nothing. */
function kept(key: string): ReadonlySet<string> {
  try {
    const data: unknown = JSON.parse(keptText(key) ?? '[]');
    return new Set(
      Array.isArray(data) ? data.filter((each): each is string => typeof each === 'string') : [],
    );
  } catch {
    return new Set();
  }
}

const CardsPrinted = fetchedWhenWanted(() => import('./CardsPrinted.tsx').then((come) => come.CardsPrinted));
if (!isServer) builtInLine(); // while the script comes, and not while the cards take over from the built page

export default function Cards(props: { readonly questions: readonly VisitorQuestion[] }) {
  const all = unwrap(props.questions); // as they are: each look at a property of Astro's is watched
  const { line, name } = useHouse();
  const [left, setLeft] = createSignal<ReadonlySet<string>>(new Set());
  const [asked, setAsked] = createSignal<ReadonlySet<string>>(new Set());
  const [isKept, setKept] = createSignal(true);
  const [today, setToday] = createSignal('');
  onMount(() => {
    setToday(dateInWords(now()));
    setLeft(kept(LEFT));
    setAsked(kept(ASKED));
  });
  const leave = (next: ReadonlySet<string>) => {
    setLeft(next);
    setKept(keepText(LEFT, JSON.stringify([...next])));
  };
  const ask = (next: ReadonlySet<string>) => {
    setAsked(next);
    setKept(keepText(ASKED, JSON.stringify([...next])));
  };
  const toggled = (set: ReadonlySet<string>, id: string) => {
    const next = new Set(set);
    if (!next.delete(id)) next.add(id);
    return next;
  };

  const { standing, counted, isBuiltIn, doubtAt, unknown } = useKnown();
  /** True for a figure that is not the house's own: no card of the house carries it. */
  const isTheirs = (id: FigureId) => !isBuiltIn() && standing(id) === 'unknown';
  const chosen = createMemo(() => cardFigures.filter(({ id, path }) => !left().has(path) && !isTheirs(id)));
  const theirs = createMemo(() => cardFigures.filter(({ id, path }) => !left().has(path) && isTheirs(id)));
  const sets = createMemo(() =>
    Array.from({ length: Math.ceil(chosen().length / FIGURES_ON_A_CARD) }, (_, i) =>
      chosen().slice(i * FIGURES_ON_A_CARD, (i + 1) * FIGURES_ON_A_CARD),
    ),
  );
  const questions = () => all.filter(({ id }) => asked().has(id));
  const count = (n: number, one: string) => `${n} ${one}${n === 1 ? '' : 's'}`;
  useAnnouncement(
    'cards',
    () => [left(), asked()],
    () =>
      `${count(sets().length + questions().length, 'card')}: ${count(chosen().length, 'figure')} and ${count(questions().length, 'question')}.`,
  );
  const asking = createMemo(() => [...new Map(all.map(({ chapter, title }) => [chapter, title]))]);
  const plainFoot = () => `${stampInWords(name())}, ${today()}.`;
  const foot = () => `${plainFoot()} Computed from the figures of the house.`;
  const told = (figure: string) => {
    const doubt = doubtAt(figure);
    return secondFigureText(line(), figure) + (doubt === undefined ? '' : ` (${doubt})`);
  };
  const { value: given } = usePart(factsPart);
  const { value: plant } = usePart(plantPart);
  const ofHouse = createMemo(() => withVessels(given(), plant()));
  const says = (fact: FactId) => factSays(ofHouse(), fact);
  const toSay = () => [...new Set(questions().flatMap(({ say, know }) => notSaid([...say, ...know], says)))];
  const onPaper = ({ say, know }: VisitorQuestion) =>
    [say, know].map((each) => answerText(each, line(), told, says, unknown())).join(' ');
  const byId = new Map(cardFigures.map((figure) => [figure.id, figure]));
  /** What a card says of a figure now, or of another value of it in the same way. */
  const saidNow = (id: FigureId, value = counted(id)) => {
    const figure = byId.get(id);
    if (!figure || isTheirs(id)) return undefined;
    const mark = standing(id) === 'estimate' ? standings.estimate : undefined;
    return {
      value: value ?? figureValue(line(), figure.path),
      says: saidOnCard(figure, line(), value),
      mark,
    };
  };
  const footOf = ({ say, know }: VisitorQuestion) =>
    hasFigures([...say, ...know], line(), unknown()) ? foot() : plainFoot();

  return (
    <>
      <section class="calculator choices" aria-labelledby="cards-title">
        <h2 id="cards-title">Choose</h2>
        <p class="purpose">
          Tick what you want on the cards, print, cut along the lines and fold: one side to say, one to know.
        </p>
        <details open>
          <summary>
            Figures ({chosen().length}
            <Show when={theirs().length > 0}>
              ; {theirs().length} ticked are not yours yet, and on no card
            </Show>
            )
          </summary>
          <For each={stages}>
            {(stage) => (
              <fieldset>
                <legend>{stage[0]!.toUpperCase() + stage.slice(1)}</legend>
                <button
                  type="button"
                  class="reset"
                  aria-label={`Only ${stage}`}
                  onClick={() =>
                    leave(new Set(cardFigures.filter((each) => each.stage !== stage).map(({ path }) => path)))
                  }
                >
                  only
                </button>
                <For each={cardFigures.filter((figure) => figure.stage === stage)}>
                  {({ path, label }) => (
                    <Tick checked={!left().has(path)} take={() => leave(toggled(left(), path))}>
                      {label}
                    </Tick>
                  )}
                </For>
              </fieldset>
            )}
          </For>
        </details>
        <details>
          <summary>Questions ({questions().length})</summary>
          <For each={asking()}>
            {([chapter, title]) => (
              <fieldset>
                <legend>{title}</legend>
                <For each={all.filter((question) => question.chapter === chapter)}>
                  {({ id, question }) => (
                    <Tick checked={asked().has(id)} take={() => ask(toggled(asked(), id))}>
                      {question}
                    </Tick>
                  )}
                </For>
              </fieldset>
            )}
          </For>
        </details>
        <div role="status">
          <NotKept isKept={isKept()} what="what you tick" />
        </div>
        <p class="actions">
          <button type="button" onClick={() => print()}>
            Print the cards
          </button>
        </p>
        <CardsPrinted
          isWanted={today() !== ''}
          figures={chosen().map(({ id }) => id)}
          answers={questions().map((question) => ({ ask: question.id, says: onPaper(question) }))}
          says={saidNow}
          answer={(ask) => {
            const question = all.find(({ id }) => id === ask);
            return question && onPaper(question);
          }}
          question={(ask) => all.find(({ id }) => id === ask)!.question}
        />
      </section>
      <div class="cards">
        <For each={sets()}>
          {(figures) => (
            <FigureCard figures={figures} line={line()} foot={foot()} standing={standing} counted={counted} />
          )}
        </For>
        <For each={questions()}>
          {(asked) => (
            <article class="card">
              <div class="side">
                <h3>{asked.question}</h3>
                <p>{answerText(asked.say, line(), told, says, unknown())}</p>
                <p class="foot">Say · {footOf(asked)}</p>
              </div>
              <div class="side">
                <p>{answerText(asked.know, line(), told, says, unknown())}</p>
                <p class="foot">Know · {footOf(asked)}</p>
              </div>
            </article>
          )}
        </For>
        <Show when={theirs().length > 0}>
          <p class="left-out">
            Left out, as they are not {name()}’s own yet:{' '}
            {theirs()
              .map(({ label }) => label[0]!.toLowerCase() + label.slice(1))
              .join(', ')}
            . <a href="../house/">Fill them in</a>
          </p>
        </Show>
        <Show when={toSay().length > 0}>
          <p class="left-out">
            {name()} does not say yet:{' '}
            {toSay()
              .map((fact) => facts[fact].label.toLowerCase())
              .join(', ')}
            . <a href="../house/facts/">Say it on the fact sheet</a>
          </p>
        </Show>
        <Show when={chosen().length + questions().length === 0}>
          <p>Nothing is chosen yet.</p>
        </Show>
      </div>
    </>
  );
}

function FigureCard(props: {
  readonly figures: readonly CardFigure[];
  readonly line: Line;
  readonly foot: string;
  readonly standing: (id: FigureId) => FigureStanding;
  readonly counted: (id: FigureId) => number | undefined;
}) {
  /** What stands under a figure that is not simply so: that it is an estimate, or what is computed where it was counted. */
  const aside = ({ id, path }: CardFigure): string => {
    const own = props.counted(id);
    if (own === undefined) return props.standing(id) === 'estimate' ? standings.estimate : '';
    const computed = figureValue(props.line, path);
    return `counted; computed ${textOfFigure(id, computed)}: ${computedBeside(id, own, computed)}`;
  };
  return (
    <article class="card">
      <div class="side">
        <dl>
          <For each={props.figures}>
            {(figure) => (
              <div>
                <dt>{figure.label}</dt>
                <dd>
                  {saidOnCard(figure, props.line, props.counted(figure.id))}
                  <Show when={props.standing(figure.id) === 'estimate'}>
                    <small>{standings.estimate}</small>
                  </Show>
                </dd>
              </div>
            )}
          </For>
        </dl>
        <p class="foot">Say · {props.foot}</p>
      </div>
      <div class="side">
        <dl>
          <For each={props.figures}>
            {(figure) => (
              <div>
                <dt>{figure.label}</dt>
                <dd>
                  {props.counted(figure.id) === undefined
                    ? figureText(props.line, figure.path) + secondFigureText(props.line, figure.path)
                    : textOfFigure(figure.id, props.counted(figure.id)!)}
                  <Show when={aside(figure)}>{(says) => <small>{says()}</small>}</Show>
                </dd>
              </div>
            )}
          </For>
        </dl>
        <p class="foot">Know · {props.foot}</p>
      </div>
    </article>
  );
}
