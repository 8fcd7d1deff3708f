// client:seen: an island's script comes as soon as the page has been seen as it was built.
import type { ClientDirective } from 'astro';
import { firstSeen } from '../house/first-seen.ts';

const seen: ClientDirective = async (load) => {
  await firstSeen;
  const start = await load();
  setTimeout(() => void start()); // the script has run; what it does next may be seen between
};
export default seen;
