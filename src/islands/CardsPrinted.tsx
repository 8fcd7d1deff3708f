// Pocket cards as they were printed last, held against the house: what stands otherwise on paper is told until they are printed anew.
import { createMemo, createSignal, For, onCleanup, onMount, Show } from 'solid-js';
import type { FigureId } from '../core/figures/index.ts';
import { liveHanging } from '../browser/known-store.ts';
import { keepText, keptText, storageKey } from '../browser/browser-store.ts';
import { useHouse } from '../browser/house-store.ts';
import { readCard } from '../walk/printed-card.ts';
import { answersMoved, movedOn, type SaidNow } from '../walk/printed.ts';
import type { PrintedCard } from '../walk/walk.ts';
import { dateInWords, today as now } from './today.ts';

const KEY = storageKey('cards-printed');
const MOST = 200; // figures, and answers, of one print

/** What was printed last; nothing where none was, or it cannot be read. */
function keptPrint(): PrintedCard | undefined {
  try {
    return readCard(JSON.parse(keptText(KEY) ?? 'null'), MOST, MOST);
  } catch {
    return undefined;
  }
}

export interface CardsPrintedProps {
  /** The figures on the cards, and the questions with their answers, as they stand now. */
  readonly figures: readonly FigureId[];
  readonly answers: PrintedCard['answers'];
  readonly says: (figure: FigureId, told?: number) => SaidNow | undefined;
  /** The answer of a question now. */
  readonly answer: (ask: string) => string | undefined;
  readonly question: (ask: string) => string;
}

export function CardsPrinted(props: CardsPrintedProps) {
  const { name } = useHouse();
  const [printed, setPrinted] = createSignal(keptPrint());
  const [isKept, setKept] = createSignal(true);
  const keep = () => {
    const card: PrintedCard = {
      room: 'Pocket cards',
      on: now(),
      house: name(),
      figures: props.figures.flatMap((figure) => {
        const { value, says, mark } = props.says(figure) ?? {};
        return says === undefined ? [] : [{ figure, value: value!, says, ...(mark ? { mark } : {}) }];
      }),
      answers: props.answers,
    };
    setPrinted(card);
    setKept(keepText(KEY, JSON.stringify(card)));
  };
  onMount(() => {
    addEventListener('beforeprint', keep);
    onCleanup(() => removeEventListener('beforeprint', keep));
  });
  const moved = createMemo(() => {
    liveHanging();
    return movedOn(printed()?.figures ?? [], props.says);
  });
  const answers = createMemo(() => (printed() ? answersMoved(printed()!, props.answer) : []));
  return (
    <div class="on-screen" role="status">
      <Show
        when={printed()}
        fallback={<p>Nothing has been printed here yet. Once it is, you are told when the house makes it stale.</p>} // prettier-ignore
      >
        {(card) => (
          <>
            <p>
              Printed {dateInWords(card().on)} for {card().house}.{' '}
              {moved().length + answers().length > 0
                ? 'Print them anew: these stand otherwise on paper.'
                : card().house === name()
                  ? 'What was printed still holds.'
                  : `The house here is ${name()}.`}
            </p>
            <ul class="sentences">
              <For each={moved()}>
                {({ label, was, is }) => (
                  <li>
                    {label}: was {was}, {is ? `is ${is}` : `and is not ${name()}’s own any more`}.
                  </li>
                )}
              </For>
              <For each={answers()}>{(ask) => <li>Another answer: {props.question(ask)}</li>}</For>
            </ul>
          </>
        )}
      </Show>
      <Show when={!isKept()}>
        <p class="problem">
          This browser does not keep what was printed, so it cannot be held against the house later.
        </p>
      </Show>
    </div>
  );
}
