// Keeps a number and its unit on one line, so that authors may type plain spaces.
import { defineMdastPlugin } from 'satteri';

const UNIT =
  /(\d) (%|°C|kg|g|mg|t|L|hL|mL|cL|m³|mm|h|min|s|ppm|kPa|kWh|MJ|kJ|K|years?|weeks?|days?|hours?|minutes?)(?![\w])/g;

export const spaces = defineMdastPlugin({
  name: 'spaces',
  text(node, context) {
    const kept = node.value.replace(UNIT, '$1\u00a0$2').replace(/% vol\b/g, '%\u00a0vol');
    if (kept !== node.value) context.replaceNode(node, { type: 'text', value: kept });
  },
});
