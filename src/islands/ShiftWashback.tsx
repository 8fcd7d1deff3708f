// A shift at a washback: the desk of every shift, with a washback of this house.
import { ShiftFrame } from './ShiftFrame.tsx';
import { washbackPost } from './shift-washback.ts';

export default function ShiftWashback() {
  return <ShiftFrame post={washbackPost} />;
}
