// The foot of each printed page of a sheet: which sheet and version it is, and the page within that version.

/** Text as CSS quotes it. */
const quoted = (text: string) => `"${text.replace(/["\\]/g, '\\$&').replace(/\s+/g, ' ')}"`;

/** Numbers the pages of each version by themselves, until the next print is over: a version is an article with `data-version`. */
export function footPages(name: string, versions: number): void {
  const sheet = new CSSStyleSheet();
  const all = versions === 1 ? ' " of " counter(pages)' : '';
  sheet.replaceSync(
    Array.from({ length: versions }, (_, i) => i + 1)
      .map((version) => {
        const page = `version-${version}`;
        return `.paper .sheet-paper[data-version="${version}"] { page: ${page} }
        @page ${page} {
          counter-increment: ${page};
          margin: 10mm 12mm 14mm;
          @bottom-center { content: ${quoted(`${name}, version ${version}, page `)} counter(${page})${all}; font: 8pt Georgia, serif; }
        }`;
      })
      .join('\n'),
  );
  document.adoptedStyleSheets.push(sheet);
  addEventListener(
    'afterprint',
    () => (document.adoptedStyleSheets = document.adoptedStyleSheets.filter((each) => each !== sheet)),
    { once: true },
  );
}
