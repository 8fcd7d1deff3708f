// The spirit safe: a locked case of glass on legs, a spout over a bowl on either side and a hydrometer between them.
import type { Engraving } from './engravings.ts';

export const safe: Engraving = {
  beside: 'M8 62 L20 52 H110 L122 62Z',
  body: 'M12 62 H118 V124 H12Z',
  lines:
    'M8 62 H122 V67 H8Z M8 119 H122 V126 H8Z M45 67 V119 M85 67 V119 M12 67 V119 M28 67 v9 q0 5 5 5 h2 M102 67 v9 q0 5 -5 5 h-2 M22 100 h16 l-3 12 h-10Z M92 100 h16 l-3 12 h-10Z M58 82 V117 h14 V82 M65 74 V98 M62 98 q3 -3 6 0 v10 q-3 5 -6 0Z M22 126 V158 M108 126 V158 M17 158 h10 M103 158 h10 M22 142 H108 M61 126 v-3 a4 4 0 0 1 8 0 v3 M59 126 h12 v9 h-12Z',
  hatch:
    'M14 76 l9 -8 M14 84 l14 -13 M48 76 l9 -8 M48 84 l8 -7 M88 76 l9 -8 M88 84 l6 -5 M115 92 l-8 7 M115 100 l-5 4 M35 84 v15 M95 84 v15 M60 92 h3 M67 92 h3 M60 97 h10 M24 55 l-4 5 M40 54 l-4 6 M56 54 l-4 6 M72 54 l-4 6 M88 54 l-4 6 M104 54 l-4 6',
  shade: 'M114 68 V118 M116 68 V118',
};
