// A shift of two casks: the desk of every shift, with a filling of this house in two stores.
import { ShiftFrame } from './ShiftFrame.tsx';
import { casksPost } from './shift-casks.ts';

export default function ShiftCasks() {
  return <ShiftFrame post={casksPost} />;
}
