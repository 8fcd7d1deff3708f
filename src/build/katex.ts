// Sets formulas as MathML at build time; a formula that does not parse fails the build.
import katex from 'katex';
import { defineMdastPlugin } from 'satteri';
import { mathematics } from './characters.ts';

function render(tex: string, displayMode: boolean): string {
  const formula = katex.renderToString(tex, {
    displayMode,
    output: 'mathml',
    throwOnError: true,
    strict: 'error',
  });
  const shown = formula.replace(/<annotation[^]*?<\/annotation>|<[^>]*>|&\w+;/g, '');
  const missing = [...shown].filter((sign) => !/[\sA-Za-z]/.test(sign) && !mathematics.includes(sign));
  if (missing.length > 0)
    throw new Error(
      `The formula ${tex} needs ${missing.join(' ')}: add it in build/characters.ts and run npm run fonts.`,
    );
  return formula;
}

const LONG = 12; // signs of an inline formula that may be too wide for a phone with large letters

/** The pieces of a formula in a line of text, cut behind each sign between two sides, so that the line can break there. */
function pieces(tex: string): readonly string[] {
  if (tex.replace(/\\[a-z]+/g, '×').length <= LONG) return [tex];
  let depth = 0;
  const cut = tex.replace(/[{}]| (?:=|\\times|\/|\+|-) /g, (sign) => {
    if (sign === '{') depth++;
    if (sign === '}') depth--;
    return depth === 0 && sign.startsWith(' ') ? `${sign}\n` : sign;
  });
  return cut.split('\n').map((piece) => piece.trim());
}

export const formulas = defineMdastPlugin({
  name: 'formulas',
  math(node, context) {
    // A long formula scrolls in its own box, which the keyboard must reach.
    const box = `<div class="formula" tabindex="0" role="group" aria-label="Formula">${render(node.value, true)}</div>`;
    context.replaceNode(node, { rawHtml: box });
  },
  inlineMath(node, context) {
    context.replaceNode(node, {
      rawHtml: pieces(node.value)
        .map((piece) => render(piece, false))
        .join('<wbr>'),
    });
  },
});
