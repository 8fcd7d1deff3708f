// A shift at a mash tun: the desk of every shift, with the tun of this house.
import { ShiftFrame } from './ShiftFrame.tsx';
import { tunPost } from './shift-tun.ts';

export default function ShiftTun() {
  return <ShiftFrame post={tunPost} />;
}
