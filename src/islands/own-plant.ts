// The plant of the house in an island, with the hours of fermentation that the house is known to have.
import { createMemo } from 'solid-js';
import { withHours } from '../core/plant/line.ts';
import { plantPart } from '../house/parts/plant.ts';
import { useKnown } from '../browser/known-store.ts';
import { usePart } from '../browser/part-store.ts';
import { liveHouse } from '../browser/house-store.ts';

export function useOwnPlant() {
  const part = usePart(plantPart);
  const { standing, isBuiltIn } = useKnown();
  const isKnown = () => !isBuiltIn() && standing('fermentationHours') !== 'unknown';
  const value = createMemo(() =>
    isKnown() ? withHours(part.value(), liveHouse().fermentationHours) : part.value(),
  );
  return { ...part, value };
}
