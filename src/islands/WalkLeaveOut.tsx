// What a short walk, or one for children, may leave out: each piece taken or refused by hand, and all put back at once.
import { createMemo, For, Show } from 'solid-js';
import {
  withProposalsAnswered,
  answeredSo,
  withLeftOutBack,
  wordsStillOver,
  toLeaveOut,
  type LeaveOutProposal,
} from '../walk/leave-out.ts';
import { inMinutes } from '../walk/time.ts';
import { SHORT_WALK, type Walk } from '../walk/walk.ts';
import { focusAfter } from './focus-after.ts';

const SHOWN = 4; // pieces at a time: a phone’s screen or two
const FIRST = 90; // characters of a piece by which it is known

export interface LeaveOutProps {
  readonly walk: Walk;
  /** Takes the walk as it has become; `says` what was done, `wayBack` what is on the button that undoes it. */
  readonly take: (walk: Walk, says: string, wayBack?: string) => void;
}

const begins = (text: string) =>
  text.length > FIRST ? `${text.slice(0, FIRST).replace(/\s+\S*$/, '')} …` : text;
const pieces = (many: number) => (many === 1 ? 'One piece' : `${many} pieces`);

export function WalkLeaveOut(props: LeaveOutProps) {
  const proposals = createMemo(() => toLeaveOut(props.walk));
  const out = createMemo(() => answeredSo(props.walk, 'out'));
  const refused = createMemo(() => answeredSo(props.walk, 'stays'));
  const over = createMemo(() => wordsStillOver(props.walk, proposals()));
  const what = () =>
    [
      ...(props.walk.coming === 'children' ? ['children'] : []),
      ...(props.walk.length < SHORT_WALK ? [inMinutes(props.walk.length)] : []),
    ].join(' and ');
  const answer = (event: Event, of: readonly LeaveOutProposal[], how: 'out' | 'stays') => {
    const says = how === 'out' ? `${pieces(of.length)} left out.` : 'It stays.';
    props.take(withProposalsAnswered(props.walk, of, how), says, 'Put it back as it was');
    focusAfter(event, () => document.getElementById('walk-leave-out-title') ?? document.getElementById('walk-rooms-title')); // prettier-ignore
  };
  return (
    <Show when={proposals().length + out() + refused() + over() > 0}>
      <section class="walk-leave-out" aria-labelledby="walk-leave-out-title">
        <h3 id="walk-leave-out-title" tabindex="-1">
          What to leave out for {what()} ({proposals().length})
        </h3>
        <Show when={proposals().length > 0}>
          <p>Nothing is left out until you say so. A piece that is only partly meant can be split first.</p>
        </Show>
        <ol class="stale">
          <For each={proposals().slice(0, SHOWN)}>
            {(each) => (
              <li>
                <p>
                  <b>{props.walk.rooms[each.at.room]?.name}.</b> {begins(each.piece.text)}
                </p>
                <p class="meaning">{each.why}</p>
                <p class="actions">
                  <button
                    type="button"
                    aria-label={`Leave it out: ${begins(each.piece.text)}`}
                    onClick={(event) => answer(event, [each], 'out')}
                  >
                    Leave it out
                  </button>
                  <button
                    type="button"
                    aria-label={`It stays: ${begins(each.piece.text)}`}
                    onClick={(event) => answer(event, [each], 'stays')}
                  >
                    It stays
                  </button>
                </p>
              </li>
            )}
          </For>
        </ol>
        <Show when={proposals().length > SHOWN}>
          <p class="meaning">The next {proposals().length - SHOWN} come when these are answered.</p>
        </Show>
        <Show when={over() > 0}>
          <p class="remark">
            {proposals().length > 0 ? 'Even without them' : 'With what stays'} it is about {over()} words too
            many, if a quarter of the time is for the way and questions: shorten it by hand.
          </p>
        </Show>
        <p class="actions">
          <Show when={proposals().length > 1}>
            <button type="button" onClick={(event) => answer(event, proposals(), 'out')}>
              Leave all {proposals().length} out
            </button>
          </Show>
          <Show when={out() > 0}>
            <button
              type="button"
              onClick={(event) => {
                props.take(
                  withLeftOutBack(props.walk, 'out'),
                  `${pieces(out())} put back.`,
                  'Put it back as it was',
                );
                focusAfter(event, () => document.getElementById('walk-rooms-title'));
              }}
            >
              {out() === 1
                ? 'Put back the piece that was left out'
                : `Put back all ${out()} that were left out`}
            </button>
          </Show>
          <Show when={refused() > 0}>
            <button
              type="button"
              onClick={(event) => {
                props.take(withLeftOutBack(props.walk, 'stays'), 'What stays is asked again.');
                focusAfter(event, () => document.getElementById('walk-rooms-title'));
              }}
            >
              Ask again about {refused() === 1 ? 'the one that stays' : `the ${refused()} that stay`}
            </button>
          </Show>
        </p>
      </section>
    </Show>
  );
}
