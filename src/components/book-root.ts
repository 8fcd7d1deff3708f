// Where this copy of the book has its root, and links from there.

/** Where the manifest is. */
export const root = new URL('.', document.querySelector<HTMLLinkElement>('link[rel=manifest]')!.href).href;

export function linkTo(at: string, says: string, onGo?: () => void): HTMLAnchorElement {
  const made = document.createElement('a');
  made.href = root + at;
  made.textContent = says;
  if (onGo) made.addEventListener('click', onGo);
  return made;
}
