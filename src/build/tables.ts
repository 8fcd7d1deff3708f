// Puts every table of a chapter into a box of its own that scrolls on a narrow screen and that the keyboard reaches.
import { defineHastPlugin } from 'satteri';

export const tables = defineHastPlugin({
  name: 'tables',
  element: [
    {
      filter: ['table'],
      visit(node, context) {
        context.wrapNode(node, {
          type: 'element',
          tagName: 'div',
          properties: { className: ['table'], tabIndex: 0, role: 'group', ariaLabel: 'Table' },
          children: [],
        });
      },
    },
    {
      // The corner above the row names heads nothing.
      filter: ['th'],
      visit(node, context) {
        if (node.children.length === 0) context.replaceNode(node, { ...node, tagName: 'td' });
      },
    },
  ],
});
