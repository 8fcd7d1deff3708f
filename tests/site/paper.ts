// What is wrong with a page on paper: looked for in a window as wide as the print between the margins of @page.
import type { Page } from '@playwright/test';

const MM = 96 / 25.4;
/** The room that print.css leaves on each paper, in CSS pixels. */
export const papers = {
  A4: { width: (210 - 2 * 18) * MM, height: (297 - 18 - 20) * MM },
  Letter: { width: (215.9 - 2 * 18) * MM, height: (279.4 - 18 - 20) * MM },
} as const;
export type PaperName = keyof typeof papers;
export const paperNames = Object.keys(papers) as PaperName[];

/** Lays the page out as for this paper. */
export async function layOut(page: Page, paper: PaperName): Promise<void> {
  const { width, height } = papers[paper];
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  await page.setViewportSize({ width: Math.floor(width), height: Math.floor(height) });
}

/** How many pages the browser makes of it. */
export async function pageCount(page: Page, format: PaperName): Promise<number> {
  const pdf = await page.pdf({ format });
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)!.length;
}

/** The faults of the page as it is laid out, each in a few words. */
export const faultsOf = (page: Page, paper: PaperName): Promise<string[]> =>
  page.evaluate(({ width, height }) => {
    const faults = new Set<string>();
    const name = (element: Element) =>
      `${element.tagName.toLowerCase()}${element.id && `#${element.id}`}${element.getAttribute('class') ? `.${element.getAttribute('class')}` : ''}`;
    const canvas = document.createElement('canvas').getContext('2d', { willReadFrequently: true })!;
    /** From 0 for black to 1 for white; nothing where one sees through. */
    const lightness = (colour: string): number | undefined => {
      canvas.clearRect(0, 0, 1, 1);
      canvas.fillStyle = colour;
      canvas.fillRect(0, 0, 1, 1);
      const [red, green, blue, alpha] = canvas.getImageData(0, 0, 1, 1).data;
      return alpha! < 128 ? undefined : (red! + green! + blue!) / 765;
    };
    const isShown = (element: Element) =>
      element.checkVisibility({ visibilityProperty: true }) &&
      element.getBoundingClientRect().width > 1.5 &&
      !element.closest('.visually-hidden, .skip');

    for (const element of document.body.querySelectorAll('*')) {
      if (!isShown(element)) continue;
      const style = getComputedStyle(element);
      const box = element.getBoundingClientRect();
      const inDrawing = element instanceof SVGElement && element.tagName !== 'svg';
      if (box.right > width + 1 && !inDrawing) faults.add(`${name(element)} reaches past the right edge`);
      if (style.overflowX !== 'visible' && element.scrollWidth > element.clientWidth + 1 && !inDrawing)
        if (!['input', 'svg'].includes(element.tagName.toLowerCase()))
          faults.add(`${name(element)} would have to scroll`);
      if (element.matches('button:not(.step), textarea, nav, [type=file], [type=range], .actions, .pace'))
        faults.add(`${name(element)} is a control`);
      const hasText = [...element.childNodes].some((node) => node.nodeType === 3 && node.nodeValue!.trim());
      if (hasText || element.matches('input, select')) {
        const ink = lightness(element instanceof SVGElement ? style.fill : style.color);
        if (ink === undefined || ink > 0.3) faults.add(`${name(element)} is written in pale ink`);
        if (Number(style.opacity) < 1) faults.add(`${name(element)} is faint`);
      }
      if (!(element instanceof SVGElement) && (lightness(style.backgroundColor) ?? 1) < 0.8)
        faults.add(`${name(element)} has a dark ground`);
      if (element.matches('h1, h2, h3, h4') && style.breakAfter !== 'avoid')
        faults.add(`${name(element)} may stand alone at the foot of a page`);
      const staysWhole =
        element.matches(
          '.card, .caution, .chart, .questions > li, tr, .field, .results, .drawing-figure:not(.in-and-out), .in-and-out > *, .foot',
        ) ||
        element.matches('.calculator > .inputs, .given > .inputs') ||
        (element.matches('.calculator[aria-labelledby$="-title"]:has(> .given)') &&
          !element.querySelector('.chart'));
      if (staysWhole && style.breakInside !== 'avoid') faults.add(`${name(element)} may be split`);
      if (staysWhole && box.height > height) faults.add(`${name(element)} is higher than the paper`);
    }
    if ((lightness(getComputedStyle(document.documentElement).backgroundColor) ?? 1) < 1)
      faults.add('the ground is not white');
    return [...faults];
  }, papers[paper]);
