// Fills a question between two passages, once the reader has opened it.
import { render } from 'solid-js/web';
import { fetchedKind } from '../exercises/kinds/fetched-kinds.ts';
import { AskedView } from './AskedView.tsx';

/** Puts a question of its kind into its place. Fails when a part of the script does not come. */
export async function fill(place: HTMLElement): Promise<void> {
  const kind = await fetchedKind(place.dataset['asked']!);
  render(() => <AskedView kind={kind} />, place);
}
