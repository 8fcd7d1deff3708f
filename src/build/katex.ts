// Sets formulas as MathML at build time; a formula that does not parse fails the build.
import katex from 'katex';
import { defineMdastPlugin } from 'satteri';

function render(tex: string, displayMode: boolean): string {
  return katex.renderToString(tex, { displayMode, output: 'mathml', throwOnError: true, strict: 'error' });
}

export const formulas = defineMdastPlugin({
  name: 'formulas',
  math(node, context) {
    // A long formula scrolls in its own box, which the keyboard must reach.
    const box = `<div class="formula" tabindex="0" role="group" aria-label="Formula">${render(node.value, true)}</div>`;
    context.replaceNode(node, { rawHtml: box });
  },
  inlineMath(node, context) {
    context.replaceNode(node, { rawHtml: render(node.value, false) });
  },
});
