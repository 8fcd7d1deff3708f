// The built site, served while something is measured on it.
import { serve } from '../serve.ts';

/** Serves the site on a free port, does the work with its address, and stops serving. */
export async function whileServed(work: (address: string) => Promise<void>): Promise<void> {
  const { address, stop } = await serve();
  try {
    await work(address.replace(/\/$/, ''));
  } finally {
    stop();
  }
}
