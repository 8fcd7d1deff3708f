// A shift at the still: the desk of every shift, with the still of this house.
import { plantPart } from '../house/parts/plant.ts';
import { usePart } from '../browser/part-store.ts';
import { ShiftFrame } from './ShiftFrame.tsx';
import { stillPost } from './shift-still.ts';

export default function ShiftDesk() {
  const plant = usePart(plantPart);
  return <ShiftFrame post={stillPost(() => plant.value().spiritStills[0])} />;
}
