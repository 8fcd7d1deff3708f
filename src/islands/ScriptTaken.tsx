// What a mark in a talk was taken for, how surely and why, and what else it might be: put right by one touch.
import { createMemo, For, onMount, Show } from 'solid-js';
import { stages } from '../core/figures/index.ts';
import type { Finding, Reconciliation } from '../core/cross-check/reconcile.ts';
import { rangeInWords, sentenceOf } from '../core/cross-check/verdict.ts';
import { setByTheHouse } from '../core/cross-check/set-by-the-house.ts';
import { useHouse } from '../browser/house-store.ts';
import { figureIds, talkFigures, type TalkFigureId } from '../talk/figures.ts';
import { labelOf, numberOf, quotableOf, saidOf } from '../talk/labels.ts';
import type { HeldFigure } from '../talk/own-house.ts';
import type { ReadQuantity } from '../talk/script.ts';
import { NOT_OURS } from '../talk/settled.ts';
import { withSmallInitial } from './ScriptAsk.tsx';
import type { PutRight } from './script-corrections.ts';
import type { TakenMark } from './script-taken.ts';
import { canBeFigure } from './script-units.ts';

const NEAR = 3; // other figures that are offered at once

/** What is found of a mark. */
export interface JudgedMark {
  readonly taken: TakenMark | undefined;
  readonly finding: Finding;
  /** What the house has, where what was said is held against it. */
  readonly own: HeldFigure | undefined;
  /** True where the house has no such figure that is known. */
  readonly lacks: boolean;
}

const found: Readonly<Record<Finding, string>> = {
  agrees: 'It agrees with the rest.',
  doubtful: 'It does not go with the rest, or something else does not.',
  disagrees: 'It does not agree with the rest.',
  'not checkable': 'Nothing else you say checks it.',
  'cannot be': 'It cannot be.',
};

export const surenessInWords = (confidence: number) =>
  confidence >= 0.95
    ? 'quite sure'
    : confidence >= 0.8
      ? 'fairly sure'
      : confidence >= 0.5
        ? 'not sure'
        : 'a guess';

const listed = (words: readonly string[]) => words.map((each) => `“${each}”`).join(' and ');

/** What is found of a figure against the rest of the talk, with its sum. */
function findingOf(figure: TalkFigureId, finding: Finding, answer: Reconciliation | undefined): string {
  const name = quotableOf(figure);
  const judged = answer?.figures.find((each) => each.figure === name);
  if (!answer || !judged || finding === 'agrees' || finding === 'not checkable') return found[finding];
  const accused = answer.impossible.find(({ figures }) => figures.includes(judged.figure));
  const broken = answer.broken.find((each) => each.figure === judged.figure);
  if (accused) return `This cannot be. ${accused.says}`;
  if (judged.reason) return `It cannot be: ${judged.reason}`;
  if (broken) return sentenceOf(broken);
  if (setByTheHouse.includes(judged.figure)) return `${found[finding]} Check it: the house decides it.`;
  const { low, high } = judged.fits ?? judged.adjusted;
  return `${found[finding]} If this one alone is wrong, ${rangeInWords(judged.figure, low, high)} would fit.`;
}

export function ScriptTaken(props: {
  readonly id: string;
  readonly quantity: ReadQuantity;
  readonly of: JudgedMark;
  readonly because: readonly string[];
  /** True where it is asked and not used until then. */
  readonly isUnsure: boolean;
  /** The same figure told elsewhere, otherwise. */
  readonly elsewhere: readonly string[];
  readonly answer: Reconciliation | undefined;
  readonly settle: (event: Event, to: PutRight) => void;
  readonly close: (event: Event) => void;
  /** False where a finger opened it: no need to move the focus. */
  readonly takesFocus: boolean;
}) {
  const { name } = useHouse();
  let part: HTMLDivElement | undefined;
  onMount(() => {
    if (props.takesFocus) part!.focus({ preventScroll: true });
    part!.scrollIntoView({ block: 'nearest' });
  });
  const figure = () => props.of.taken?.figure;
  const how = () => {
    const { quantity } = props;
    const by = props.of.taken?.by;
    if (by === 'you') return 'as you said';
    return by === 'name' ? 'by its name' : surenessInWords(quantity.confidence);
  };
  const others = createMemo(() =>
    [...new Set([props.quantity.figure, ...props.quantity.runnersUp])]
      .flatMap((each) => (each && each !== figure() ? [each] : []))
      .slice(0, NEAR),
  );
  /** What it can be by its unit, a stage at a time, beside what is offered. */
  const rest = createMemo(() => {
    const possible = figureIds.filter(
      (id) => id !== figure() && !others().includes(id) && canBeFigure(props.quantity.unit, id),
    );
    return stages.flatMap((stage) => {
      const ids = possible.filter((id) => talkFigures[id].stage === stage);
      return ids.length > 0 ? [{ stage, ids }] : [];
    });
  });
  const why = () => {
    const { taken, own, finding } = props.of;
    if (!taken) return props.isUnsure ? 'Say which it is.' : 'If it is one, say which.';
    if (own && !own.agrees) return `${name()} has ${numberOf(own.figure, own.house)}.`;
    if (own) return `${name()} has it so.`;
    const rest = quotableOf(taken.figure) ? findingOf(taken.figure, finding, props.answer) : found['not checkable']; // prettier-ignore
    return props.of.lacks ? `${rest} ${name()} has no figure of its own for it yet.` : rest;
  };
  return (
    <div
      class="taken"
      id={props.id}
      role="group"
      aria-label={`What “${props.quantity.text}” is taken for`}
      tabindex="-1"
      ref={part}
      onKeyDown={(event) => event.key === 'Escape' && props.close(event)}
    >
      <p>
        <Show
          when={props.of.taken}
          fallback={
            props.isUnsure ? (
              <>
                It is <b>not sure</b> what “{props.quantity.text}” is, so it is not used
              </>
            ) : (
              <>
                “{props.quantity.text}” is taken for <b>no figure of the house</b>
              </>
            )
          }
        >
          {(taken) => (
            <>
              “{props.quantity.text}” is taken for <b>{withSmallInitial(labelOf(taken().figure))}</b>,{' '}
              {saidOf(taken().figure, taken().said)}, {how()}
              {props.because.length > 0 ? `, because you say ${listed(props.because)}` : ''}
            </>
          )}
        </Show>
        . {why()}
        {props.elsewhere.length > 0 ? ` You also say ${listed(props.elsewhere)}.` : ''}
      </p>
      <div class="answers">
        <For each={others()}>
          {(other) => (
            <button type="button" onClick={(event) => props.settle(event, other)}>
              {labelOf(other)}
            </button>
          )}
        </For>
        <Show when={figure() || props.isUnsure || props.elsewhere.length > 0}>
          <button type="button" onClick={(event) => props.settle(event, NOT_OURS)}>
            Not ours
          </button>
        </Show>
        <select
          aria-label="Something else"
          autocomplete="off"
          onChange={(event) => props.settle(event, event.currentTarget.value as TalkFigureId)}
        >
          <option value="">Something else …</option>
          <For each={rest()}>
            {({ stage, ids }) => (
              <optgroup label={stage[0]!.toUpperCase() + stage.slice(1)}>
                <For each={ids}>{(id) => <option value={id}>{labelOf(id)}</option>}</For>
              </optgroup>
            )}
          </For>
        </select>
        <button type="button" class="quiet" onClick={(event) => props.close(event)}>
          Close
        </button>
      </div>
    </div>
  );
}
