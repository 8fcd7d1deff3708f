// Keeps a number and its unit on one line, so that authors may type plain spaces.
import { defineMdastPlugin } from 'satteri';
import { keepTogether } from '../core/keep-together.ts';

export const spaces = defineMdastPlugin({
  name: 'spaces',
  text(node, context) {
    const kept = keepTogether(node.value);
    if (kept !== node.value) context.replaceNode(node, { type: 'text', value: kept });
  },
});
