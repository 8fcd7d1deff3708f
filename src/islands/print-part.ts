// Prints one part of a page: the style sheet shows only what is named by html[data-print].

/** Prints what has the class `paper` and this part's name, once it stands on the page. */
export function printPart(part: string): void {
  const root = document.documentElement;
  root.dataset['print'] = part;
  addEventListener('afterprint', () => delete root.dataset['print'], { once: true });
  print();
}
