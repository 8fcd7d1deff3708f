// The vessels drawn beside each other to one scale: all of one shape, so that the height goes with the cube root of the litres.
import { createMemo, For } from 'solid-js';
import { formatNumber } from '../core/format.ts';
import type { VesselFit } from '../core/plant/fits.ts';
import { stillNames, type Plant } from '../core/plant/plant.ts';

interface Drawn {
  readonly name: string;
  readonly number: number;
  readonly litres: number;
  readonly shape: 'tub' | 'pot';
  /** How far it is filled, 0–1. */
  readonly level: number;
}

const TALLEST = 88; // of 96, drawing units

const tubs = (plant: Plant, fits: readonly VesselFit[]): readonly Drawn[] => {
  const holding = (name: string, holds: number): readonly Drawn[] => {
    const fit = fits.find(({ vessel }) => vessel === name);
    return holds > 0
      ? [{ name, number: 1, litres: holds, shape: 'tub', level: Math.min(1, (fit?.takes ?? 0) / holds) }]
      : [];
  };
  const pots = (name: string, stills: Plant['washStills']) =>
    stills.map(({ number, charge }): Drawn => ({ name, number, litres: charge, shape: 'pot', level: 1 }));
  return [
    ...plant.washbacks.map(({ number, full, working }): Drawn => ({ name: 'Washbacks', number, litres: full, shape: 'tub', level: working / full })),
    ...holding('Wash charger', plant.washCharger.holds),
    ...pots(stillNames.wash, plant.washStills),
    ...holding('Low wines receiver', plant.lowWinesReceiver.holds),
    ...(plant.scheme === 'twice' ? [] : pots(stillNames.intermediate, plant.intermediateStills)),
    ...pots(stillNames.spirit, plant.spiritStills),
    ...holding('Spirit receiver', plant.spiritReceiver.holds),
  ];
}; // prettier-ignore

/** The outline of a pot of this height whose foot stands at 94 in the middle of 96: a round pot, a swan neck and the arm that leaves it. */
function pot(height: number): string {
  const at = (x: number, y: number) => `${(48 + x * height).toFixed(1)} ${(94 - y * height).toFixed(1)}`;
  return `M${at(-0.36, 0)} L${at(0.36, 0)} Q${at(0.46, 0.34)} ${at(0.2, 0.46)} Q${at(0.08, 0.55)} ${at(0.08, 0.84)} L${at(0.5, 0.7)} L${at(0.5, 0.8)} L${at(0.08, 1)} Q${at(-0.06, 1)} ${at(-0.08, 0.84)} Q${at(-0.08, 0.55)} ${at(-0.2, 0.46)} Q${at(-0.46, 0.34)} ${at(-0.36, 0)} Z`;
}
const POT_LEVEL = 0.4; // of a pot's height: up to where it is filled

/** One vessel standing on the floor of a square of 96. */
function Vessel(props: { readonly of: Drawn; readonly largest: number }) {
  const side = () => TALLEST * Math.cbrt(props.of.litres / props.largest);
  const level = () => side() * (props.of.shape === 'pot' ? POT_LEVEL : props.of.level);
  const tub = () => `M${48 - 0.4 * side()} ${94 - side()} h${0.8 * side()} v${side()} h${-0.8 * side()} Z`;
  const outline = () => (props.of.shape === 'pot' ? pot(side()) : tub());
  return (
    <svg class="drawing" viewBox="0 0 96 96" aria-hidden="true">
      <svg x="0" y={94 - level()} width="96" height={level()} viewBox={`0 ${94 - level()} 96 ${level()}`}>
        <path class="liquid" d={outline()} />
      </svg>
      <path class="wall" d={outline()} />
    </svg>
  );
}

export function PlantDrawing(props: { readonly plant: Plant; readonly fits: readonly VesselFit[] }) {
  const drawn = createMemo(() => tubs(props.plant, props.fits));
  const largest = () => Math.max(...drawn().map(({ litres }) => litres));
  return (
    <figure class="drawing-figure plant-drawing" aria-labelledby="plant-drawing-says">
      <ul>
        <For each={drawn()}>
          {(vessel) => (
            <li>
              <Vessel of={vessel} largest={largest()} />
              {vessel.name}: {vessel.number > 1 ? `${vessel.number} of ` : ''}
              {formatNumber(vessel.litres, 0)} L
            </li>
          )}
        </For>
      </ul>
      <figcaption id="plant-drawing-says">
        One of each kind, to one scale, as full as it gets in a week. A still is drawn as large as its charge.
      </figcaption>
    </figure>
  );
}
