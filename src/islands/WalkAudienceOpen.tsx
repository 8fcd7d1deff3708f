// The choice of who is coming and of their units, the sentences that are then said otherwise, pieces to add, and the sheet for another language.
import { createMemo, createSignal, For, onMount, Show } from 'solid-js';
import { useKnown } from '../browser/known-store.ts';
import { plainName } from '../house/name.ts';
import { useHouse } from '../browser/house-store.ts';
import type { Coming, SaidIn } from '../walk/audience-kinds.ts';
import { comers, leftOutFor, sayings } from '../walk/audience-names.ts';
import { suggestedFor, type WalkAbroad } from '../walk/audience-pieces.ts';
import { toldWalk, withSentencesTold, type ToldHere } from '../walk/audience-talk.ts';
import { houseNow } from '../walk/house-now.ts';
import type { Walk } from '../walk/walk.ts';
import { ChoiceField } from './ChoiceField.tsx';
import { focusAfter } from './focus-after.ts';
import { printPart } from './print-part.ts';
import { Tick } from './Tick.tsx';
import type { AudienceProps } from './WalkAudience.tsx';
import { WalkAudienceSheet } from './WalkAudienceSheet.tsx';

const SHOWN = 4; // sentences until all are asked for: a phone’s screen or two
const ADDRESS = '../walk-abroad.json';

const keyOf = ({ of, at }: ToldHere) => `${of.room} ${of.piece} ${at}`;
const nameFor = ({ coming, saidIn }: Walk) =>
  coming ? comers[coming] : saidIn ? sayings[saidIn].split(',')[0]! : '';

/** The walk for others, or for anybody; US visitors get their own units where none were chosen. */
function withComing({ coming: _, ...walk }: Walk, coming: Coming | undefined): Walk {
  if (!coming) return walk;
  return { ...walk, coming, ...(coming === 'us' && !walk.saidIn ? { saidIn: 'American' } : {}) };
}
function withSaidIn({ saidIn: _, ...walk }: Walk, saidIn: SaidIn | undefined): Walk {
  return saidIn ? { ...walk, saidIn } : walk;
}

export function WalkAudienceOpen(props: AudienceProps) {
  const { line, name } = useHouse();
  const known = useKnown();
  const { unknown, isBuiltIn } = known;
  const [abroad, setAbroad] = createSignal<WalkAbroad>();
  const [hasFailed, setFailed] = createSignal(false);
  const [left, setLeft] = createSignal<ReadonlySet<string>>(new Set());
  const [isAll, setAll] = createSignal(false);
  const [problem, setProblem] = createSignal<string>();
  let title: HTMLHeadingElement | undefined;
  onMount(() =>
    fetch(ADDRESS)
      .then((answer) => (answer.ok ? answer.json() : Promise.reject(new Error(String(answer.status)))))
      .then((told: WalkAbroad) => setAbroad(told))
      .catch(() => setFailed(true)),
  );
  const told = createMemo(() => {
    const { rooms, saidIn, house } = props.walk;
    if (!saidIn) return [];
    const said = rooms.flatMap(({ pieces }) => pieces.flatMap((piece) => piece.figures));
    const isHere = house === undefined || house === name(); // a walk of another house is not held against this one
    return toldWalk(props.walk, saidIn, isHere ? houseNow(line(), known, said) : undefined);
  });
  const taken = () => told().filter((each) => !left().has(keyOf(each)));
  const suggested = createMemo(() =>
    suggestedFor(props.walk, abroad()?.pieces ?? [], line(), isBuiltIn() ? [] : unknown()),
  );
  const figures = () => props.walk.rooms.some(({ pieces }) => pieces.some((piece) => piece.figures.length > 0)); // prettier-ignore
  const copy = (event: Event) => {
    const next = withSentencesTold(props.walk, taken());
    const name = plainName(`${props.walk.name.slice(0, 50)}, ${nameFor(props.walk)}`) || props.walk.name;
    const count = taken().length;
    const says = `${count === 1 ? 'One sentence is' : `${count} sentences are`} new in this copy; your own walk is kept under “${props.walk.name}”.`;
    setProblem(props.copy({ ...next, name }, says));
    setLeft(new Set<string>());
    focusAfter(event, () => document.getElementById('walk-audience-title'));
  };
  return (
    <div class="audience">
      <p>
        {props.walk.coming ? comers[props.walk.coming] : 'Anybody'}. Figures:{' '}
        {props.walk.saidIn ? sayings[props.walk.saidIn] : 'as you say them'}.{' '}
        {leftOutFor(
          props.walk.rooms.flatMap(({ pieces }) => pieces),
          props.walk.coming,
        )}
      </p>
      <ChoiceField
        id="walk-coming"
        label="Who is coming"
        options={{ '': 'anybody: as it stands', ...comers }}
        value={props.walk.coming ?? ''}
        take={(value) => {
          const coming = (value || undefined) as Coming | undefined;
          setLeft(new Set<string>());
          props.choose(withComing(props.walk, coming), `${coming ? comers[coming] : 'Anybody'} may come.`);
          return undefined;
        }}
      />
      <ChoiceField
        id="walk-said-in"
        label="Units and numbers"
        options={{ '': 'as you say them', ...sayings }}
        value={props.walk.saidIn ?? ''}
        take={(value) => {
          const saidIn = (value || undefined) as SaidIn | undefined;
          setLeft(new Set<string>());
          props.choose(
            withSaidIn(props.walk, saidIn),
            saidIn ? `The cards are in these units: ${sayings[saidIn]}.` : 'The cards are in your own units.',
          );
          return undefined;
        }}
      />
      <div role="status">
        <Show when={problem()}>
          <p class="problem">{problem()}</p>
        </Show>
      </div>
      <Show when={props.walk.saidIn}>
        <h3 tabindex="-1" ref={title}>
          Said otherwise ({told().length})
        </h3>
        <Show
          when={told().length > 0}
          fallback={
            <p>
              {figures()
                ? 'No sentence is left that would be said otherwise.'
                : 'No figure is found in the talk yet: paste it above.'}
            </p>
          }
        >
          <p>
            Nothing is changed until you take it, and then only in a copy. What has no unit of theirs stays as
            it is.
          </p>
          <ol class="stale">
            <For each={isAll() ? told() : told().slice(0, SHOWN)}>
              {(each) => (
                <li>
                  <p>
                    <b>{props.walk.rooms[each.of.room]?.name}.</b> <del>{each.stood.trim()}</del>
                  </p>
                  <p>
                    <ins>{each.anew.trim()}</ins>
                  </p>
                  <Tick
                    checked={!left().has(keyOf(each))}
                    take={() => {
                      const next = new Set(left());
                      if (!next.delete(keyOf(each))) next.add(keyOf(each));
                      setLeft(next);
                    }}
                  >
                    Take it
                  </Tick>
                </li>
              )}
            </For>
          </ol>
          <p class="actions">
            <Show when={!isAll() && told().length > SHOWN}>
              <button
                type="button"
                onClick={(event) => {
                  setAll(true);
                  focusAfter(event, () => title);
                }}
              >
                Show all {told().length}
              </button>
            </Show>
            <button type="button" disabled={taken().length === 0} onClick={copy}>
              Take {taken().length === told().length ? `all ${told().length}` : taken().length} into a copy
            </button>
          </p>
        </Show>
      </Show>
      <Show when={props.walk.coming}>
        {(coming) => (
          <details>
            <summary>
              Pieces that you may add for {coming() === 'us' ? comers.us : comers[coming()].toLowerCase()} (
              {suggested().length})
            </summary>
            <ul class="sentences">
              <For each={suggested()} fallback={<li>No others for the rooms of this walk.</li>}>
                {({ room, piece }) => (
                  <li>
                    <p>{piece.text}</p>
                    <p class="actions">
                      <button
                        type="button"
                        aria-label={`Add to ${props.walk.rooms[room]!.name}: ${piece.text.slice(0, 40)}`}
                        onClick={(event) => {
                          props.add(room, piece);
                          focusAfter(event, () => document.getElementById('walk-audience-title'));
                        }}
                      >
                        Add to {props.walk.rooms[room]!.name}
                      </button>
                    </p>
                  </li>
                )}
              </For>
            </ul>
            <p class="meaning">Each is told only to them, and is yours to change once it is in its room.</p>
          </details>
        )}
      </Show>
      <Show when={hasFailed()}>
        <p class="problem">Pieces to add, and the words of the trade, could not be fetched.</p>
      </Show>
      <p class="actions">
        <button type="button" onClick={() => printPart('walk-abroad')}>
          Print a sheet for another language
        </button>
      </p>
      <p class="meaning">
        The figures by room and the words of the trade, with room to write. Words in six languages:{' '}
        <a href="../words/">Trade words abroad</a>.
      </p>
      <WalkAudienceSheet walk={props.walk} said={props.said} words={abroad()?.words ?? []} />
    </div>
  );
}
