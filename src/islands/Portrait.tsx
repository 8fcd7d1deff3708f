// The house's portrait, to hang in the visitor room: what is left out, a line of own words, the paper; printed, or saved as a drawing.
import { createEffect, createMemo, createSignal, For, onMount, Show } from 'solid-js';
import { isServer } from 'solid-js/web';
import { isGiven, figureTable, type FigureId } from '../core/figures/index.ts';
import { standings } from '../core/figures/standing.ts';
import { stampInWords } from '../house/book.ts';
import { keepText, keptText, storageKey } from '../browser/browser-store.ts';
import { liveHanging, useKnown } from '../browser/known-store.ts';
import { builtInLine } from '../house/line-of.ts';
import { readPart } from '../house/parts/part.ts';
import { plantPart } from '../house/parts/plant.ts';
import { usePart } from '../browser/part-store.ts';
import {
  figuresOfRoom,
  LONGEST_WORDS,
  ownWords,
  portraitRoomNames,
  portraitRooms,
  type HowKnown,
} from '../house/portrait.ts';
import { portraitFoot } from '../house/portrait-says.ts';
import { caskMix, namesOfCasks, vesselsIn } from '../house/portrait-vessels.ts';
import { liveParts, useHouse } from '../browser/house-store.ts';
import { useAnnouncement } from './announce.ts';
import { ChoiceField } from './ChoiceField.tsx';
import { fileNameOf } from './file-name.ts';
import { NotKept } from './NotKept.tsx';
import { drawingFile } from './portrait-file.ts';
import { printOn } from './portrait-paper.ts';
import { PortraitSheet, type PortraitRoom } from './PortraitSheet.tsx';
import { saveFile } from './save-file.ts';
import { Tick } from './Tick.tsx';
import { dateInWords, today } from './today.ts';
import { WalkField } from './WalkField.tsx';

const KEY = storageKey('portrait');
const papers = { a4: 'A4', a3: 'A3' } as const;
type Paper = keyof typeof papers;
interface Wishes {
  readonly paper: Paper;
  readonly left: readonly string[];
  /** The line under the name, and of which house it was written. */
  readonly words: string;
  readonly of: string;
}
const none: Wishes = { paper: 'a4', left: [], words: '', of: '' };

/** What was wished when the page was last open; what cannot be read counts for nothing. */
function kept(): Wishes {
  try {
    const data = JSON.parse(keptText(KEY) ?? '{}') as Partial<Record<keyof Wishes, unknown>>;
    const text = (given: unknown) => (typeof given === 'string' ? given : '');
    return {
      paper: data.paper === 'a3' ? 'a3' : 'a4',
      left: Array.isArray(data.left) ? data.left.filter((id): id is string => typeof id === 'string') : [],
      words: ownWords(text(data.words)),
      of: text(data.of),
    };
  } catch {
    return none;
  }
}

if (!isServer) builtInLine(); // while the script comes, and not while the portrait takes over from the built page

/** Casks that are alike. */
interface Casks {
  readonly casks: number;
  readonly size: number;
}

/** The portrait; `register` is of the built-in house, whose casks lie in store until the reader has put in others. */
export default function Portrait(props: { readonly register: readonly Casks[] }) {
  let sheet: SVGSVGElement | undefined;
  const { line, name, mounted } = useHouse();
  const { value: plant } = usePart(plantPart);
  const { standing, counted, isBuiltIn, unknown, hangsOn } = useKnown();
  const [wishes, setWishes] = createSignal(none);
  const [isKept, setKept] = createSignal(true);
  const [saved, setSaved] = createSignal<string>();
  onMount(() => setWishes(kept()));
  createEffect(() => printOn(wishes().paper));
  const wish = (change: Partial<Wishes>) => {
    setWishes({ ...wishes(), ...change });
    setKept(keepText(KEY, JSON.stringify(wishes())));
  };
  const words = () => (wishes().of === name() ? wishes().words : '');
  const left = createMemo(() => new Set(wishes().left));

  /** True until it has been looked at what hangs on what is not known: so long all that is computed is an estimate. */
  const isOpen = () => unknown().length > 0 && liveHanging().size === 0;
  const known: HowKnown = {
    get isBuiltIn() {
      return isBuiltIn();
    },
    counted,
    standing: (id) =>
      isOpen() && !isGiven(figureTable[id]) && counted(id) === undefined ? 'estimate' : standing(id),
  };
  /** The reader's own register; what reads it comes only where there is one, and without it casks are of no told size. */
  const [own, setOwn] = createSignal<readonly Casks[]>([]);
  const given = () => (mounted() ? liveParts().stock : undefined);
  createEffect(() => {
    const data = given();
    setOwn([]);
    if (data === undefined) return;
    void import('../house/parts/stock.ts').then(
      ({ stockPart }) => data === given() && setOwn(readPart(stockPart, data).value.groups),
      () => undefined,
    );
  });
  const register = () => (given() === undefined && isBuiltIn() ? props.register : own());
  const mix = createMemo(() =>
    caskMix(register(), isBuiltIn() || standing('barrels') !== 'unknown' ? line().house : undefined),
  );
  const saysCasks = () => `${register().length > 0 ? 'lying here: ' : ''}${namesOfCasks(mix())}`;
  const drawn = createMemo((): readonly PortraitRoom[] =>
    portraitRoomNames.map((room) => ({
      name: room,
      title: portraitRooms[room].title,
      vessels: room === 'store' ? { says: saysCasks(), drawn: [] } : vesselsIn(room, plant()),
      figures: figuresOfRoom(room, line(), known, left()),
    })),
  );
  const figures = () => drawn().flatMap((room) => room.figures);
  const hangs = (id: FigureId) => isOpen() || hangsOn(id).length > 0;
  const foot = createMemo(() =>
    portraitFoot(
      figures(),
      line(),
      known,
      hangs,
      drawn().some(({ vessels }) => vessels.isSign),
    ),
  );
  const dated = () => `${stampInWords(name())}${mounted() ? `, ${dateInWords(today())}` : ''}`;
  useAnnouncement(
    'portrait',
    () => wishes(),
    () => `${foot()[0]} ${papers[wishes().paper]}.`,
  );
  const save = () => {
    const file = fileNameOf(name(), 'portrait').replace(/json$/, 'svg');
    saveFile(file, drawingFile(sheet!, wishes().paper), 'image/svg+xml');
    setSaved(`The drawing is saved as ${file}.`);
  };
  return (
    <div class="portrait" data-paper={wishes().paper}>
      <figure class="drawing-figure">
        <PortraitSheet
          ref={(svg) => (sheet = svg)}
          name={name()}
          words={words()}
          rooms={drawn()}
          mix={mix()}
          foot={foot()}
          stamp={dated()}
        />
      </figure>
      <section class="calculator choices" aria-labelledby="portrait-title">
        <h2 id="portrait-title">To hang it</h2>
        <ChoiceField
          id="portrait-paper"
          label="Paper, on its side"
          options={papers}
          value={wishes().paper}
          take={(paper) => void wish({ paper: paper as Paper })}
        />
        <WalkField
          id="portrait-words"
          label="A line of your own under the name"
          value={words()}
          longest={LONGEST_WORDS}
          take={(text) => void wish({ words: ownWords(text), of: name() })}
        />
        <details>
          <summary>Figures on it ({figures().length})</summary>
          <For each={portraitRoomNames}>
            {(room) => (
              <fieldset>
                <legend>{portraitRooms[room].title}</legend>
                <For each={Object.entries(portraitRooms[room].figures)}>
                  {([id, label]) => (
                    <Tick
                      checked={!left().has(id)}
                      take={(isTicked) => {
                        const others = wishes().left.filter((each) => each !== id);
                        wish({ left: isTicked ? others : [...others, id] });
                      }}
                    >
                      {label}
                    </Tick>
                  )}
                </For>
              </fieldset>
            )}
          </For>
        </details>
        <p class="actions">
          <button type="button" onClick={() => print()}>
            Print
          </button>{' '}
          <button type="button" onClick={save}>
            Save as a drawing (SVG)
          </button>
        </p>
        <div role="status">
          <Show when={saved()}>{(says) => <p>{says()}</p>}</Show>
          <NotKept isKept={isKept()} what="your choices" />
        </div>
      </section>
      <section class="portrait-says" aria-labelledby="portrait-says">
        <h2 id="portrait-says">What stands on it</h2>
        <For each={foot()}>{(says) => <p>{says}</p>}</For>
        <For each={drawn()}>
          {(room) => (
            <div>
              <h3>{room.title}</h3>
              <Show when={room.vessels.says}>
                <p>{room.vessels.says}</p>
              </Show>
              <dl>
                <For each={room.figures}>
                  {(figure) => (
                    <div>
                      <dt>{figure.words}</dt>
                      <dd>
                        {figure.text}
                        <Show when={figure.standing === 'counted' || figure.standing === 'estimate'}>
                          {' '}
                          <small>{standings[figure.standing]}</small>
                        </Show>
                      </dd>
                    </div>
                  )}
                </For>
              </dl>
            </div>
          )}
        </For>
      </section>
    </div>
  );
}
