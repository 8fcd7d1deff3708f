// Opens questions to guess at, and those of practice between passages: what one needs is fetched when the first is opened, by a hand or by an address.
async function open(predict: HTMLDetailsElement): Promise<void> {
  const place = predict.querySelector<HTMLElement>('[data-predict], [data-asked]');
  if (!predict.open || !place || place.dataset['state']) return;
  place.dataset['state'] = 'coming';
  try {
    const { fill } = await ('asked' in place.dataset
      ? import('../islands/asked-open.tsx')
      : import('../islands/predict-open.tsx'));
    await fill(place);
  } catch {
    document.documentElement.dataset['script'] = 'lost';
    delete place.dataset['state'];
  }
}
/** Opens the one that the address names. */
function openNamed(): void {
  const named = document.getElementById(location.hash.slice(1));
  if (named instanceof HTMLDetailsElement && named.classList.contains('predict')) named.open = true;
}

document.addEventListener('toggle', ({ target }) => void open(target as HTMLDetailsElement), true);
for (const early of document.querySelectorAll<HTMLDetailsElement>('.predict[open]')) void open(early);
addEventListener('hashchange', openNamed);
openNamed();
