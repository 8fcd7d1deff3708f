// The paper that the page is printed on: of a chosen size, on its side, with no margin but the sheet's own.

let rule: CSSStyleSheet | undefined;

/** Says to the browser which paper it is: a rule after all others, as browsers lay a page with a name out by the margins of those without. */
export function printOn(paper: 'a4' | 'a3'): void {
  if (!rule) document.adoptedStyleSheets.push((rule = new CSSStyleSheet()));
  rule.replaceSync(
    `@page { margin: 0; size: ${paper.toUpperCase()} landscape; @bottom-center { content: none; } }`,
  );
}
