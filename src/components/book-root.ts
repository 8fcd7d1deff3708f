// Where this copy of the book has its root, and links from there.

/** Where the manifest is. */
export const bookRoot = new URL('.', document.querySelector<HTMLLinkElement>('link[rel=manifest]')!.href)
  .href;

export function linkTo(at: string, says: string, onGo?: () => void): HTMLAnchorElement {
  const made = document.createElement('a');
  made.href = bookRoot + at;
  made.textContent = says;
  if (onGo) made.addEventListener('click', onGo);
  return made;
}
