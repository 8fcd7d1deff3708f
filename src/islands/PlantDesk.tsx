// The vessels of the house, to be entered; and what a mash becomes in them, and what does not fit.
import { createMemo, Show } from 'solid-js';
import { chargesOfLine } from '../core/plant/charges.ts';
import { plantFits } from '../core/plant/fits.ts';
import type { Line } from '../core/line/line.ts';
import { areAlike, inHouse, lineWithPlant } from '../core/plant/line.ts';
import { notNamed } from '../core/plant/not-named.ts';
import type { Plant } from '../core/plant/plant.ts';
import { usualSentence } from '../core/plant/usual.ts';
import { isRefusal } from '../core/refusal.ts';
import { changeFigure } from '../browser/change-figure.ts';
import { builtInName } from '../house/figures.ts';
import { useKnown } from '../browser/known-store.ts';
import { builtInParts } from '../house/parts/built-in.ts';
import { isSamePart } from '../house/parts/part.ts';
import { emptyPlant, plantPart } from '../house/parts/plant.ts';
import { useAnnouncement } from './announce.ts';
import { useHouseWhenIdle } from './house-when-idle.ts';
import { focusAfter } from './focus-after.ts';
import { useOwnPlant } from './own-plant.ts';
import { PlantDrawing } from './PlantDrawing.tsx';
import { PlantResult } from './PlantResult.tsx';
import { PlantVessels } from './PlantVessels.tsx';
import { Troubles } from './Troubles.tsx';
import { useWayBack } from './use-way-back.tsx';

/** A line with all that the page says of it. */
const lookAt = (line: Line, plant: Plant) => {
  const charges = chargesOfLine(line, plant);
  return { line, charges, fits: plantFits(line, plant, charges) };
};
export type Looked = ReturnType<typeof lookAt>;

export default function PlantDesk() {
  let island: HTMLElement | undefined;
  const { house, line, name } = useHouseWhenIdle(() => island);
  const part = useOwnPlant();
  const { say, Said, saying } = useWayBack(true);
  const { standing } = useKnown();
  const shown = createMemo(() => inHouse(part.value(), house()));
  /** Takes a plant; the reflux of stills that are alike is a figure of the house, and so are the hours of a fermentation, where nobody has given them. */
  const set = (next: Plant): string | undefined => {
    for (const [figure, stills] of [['washReflux', next.washStills], ['spiritReflux', next.spiritStills]] as const) {
      const reflux = stills[0]?.reflux;
      if (reflux === undefined || !areAlike(stills) || reflux === house()[figure]) continue;
      const problem = changeFigure(figure, reflux);
      if (problem !== undefined) return problem;
    }
    if (next.shortFermentation !== part.value().shortFermentation && standing('fermentationHours') === 'unknown')
      changeFigure('fermentationHours', next.shortFermentation);
    return part.set(next)[0];
  }; // prettier-ignore
  const isEmpty = createMemo(() => isSamePart(part.value(), emptyPlant));
  const found = createMemo(() => {
    const reckoned = lineWithPlant(house(), part.value());
    return isRefusal(reckoned) ? reckoned : lookAt(reckoned, part.value());
  });
  const looked = () => {
    const now = found();
    return isEmpty() || isRefusal(now) ? undefined : now;
  };
  /** What is said first: that all fits, what does not, or why nothing can be reckoned. */
  const says = (): readonly string[] => {
    const now = found();
    if (isEmpty()) return [`No vessel of ${name()} is named yet.`];
    if (isRefusal(now)) return [now.refused];
    return now.fits.flatMap(({ says }) => says ?? []);
  };
  const missing = createMemo(() => notNamed(part.value()));
  const allFit = () =>
    missing().length > 0
      ? 'Every vessel that is named is large enough.'
      : 'Every vessel is large enough for this house’s week.';
  useAnnouncement(
    'plant',
    () => says().join(' '),
    () => says().join(' ') || allFit(),
    () => island,
  );

  /** Says what became of all vessels at once, with the way back to those that stood there. */
  const tell = (event: Event, says: string, before: Plant) => {
    const back = () => part.set(before)[0] ?? 'The vessels are as they were.';
    say(says, isSamePart(before, emptyPlant) ? undefined : back);
    focusAfter(event, saying);
  };
  const begin = (event: Event) => {
    const before = part.value();
    part.set(part.isBuiltIn() ? emptyPlant : plantPart.read(builtInParts.plant).value); // under its own name they stand where none is given
    tell(event, `The vessels are ${builtInName}’s.`, before);
  };
  const clear = (event: Event) => {
    const before = part.value();
    part.set(emptyPlant);
    tell(event, 'All vessels are taken away.', before);
  };

  return (
    <section ref={island} class="calculator plant" aria-labelledby="plant-title">
      <h2 id="plant-title">What fits, and what does not</h2>
      <Troubles />
      <div class="plant-both">
        <div class="plant-found">
          <div class="plant-says">
            <Show when={says().length > 0} fallback={<p>{allFit()}</p>}>
              <ul>
                {says().map((sentence) => (
                  <li>{sentence}</li>
                ))}
              </ul>
            </Show>
          </div>
          <Show when={!isEmpty()}>
            <p class="meaning">
              <Show when={missing().length > 0}>Not named yet, and not judged: {missing().join(', ')}. </Show>
              Whether the hours fall right is judged in <a href="/house/week/">The week</a>.{' '}
              {usualSentence(part.value())}
            </p>
          </Show>
          <Show when={isEmpty()}>
            <p class="actions">
              <button type="button" onClick={begin}>
                Start from {builtInName}’s vessels
              </button>
            </p>
            <p>Or name your own, one kind after the other:</p>
          </Show>
          <Show when={looked()}>
            {(now) => <PlantResult of={now()} plant={part.value()} bottles={line().bottling.bottles} />}
          </Show>
        </div>
        <PlantVessels plant={shown()} line={line()} set={set} />
      </div>
      <Show when={looked()}>{(now) => <PlantDrawing plant={part.value()} fits={now().fits} />}</Show>
      <p class="actions">
        <Show when={part.isOwn() && !isEmpty()}>
          <Show
            when={part.isBuiltIn()}
            fallback={
              <button type="button" onClick={clear}>
                Take all vessels away
              </button>
            }
          >
            <button type="button" onClick={begin}>
              Put {builtInName}’s vessels back
            </button>
          </Show>
        </Show>
      </p>
      <Said />
    </section>
  );
}
