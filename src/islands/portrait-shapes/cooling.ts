// How a still's vapour is condensed, beside its pot: an upright condenser, or a coil in a tub of water; nothing where nobody has said.
import { lineVessels } from '../LineVessel.tsx';
import type { DrawnVessel } from '../../house/portrait-vessels.ts';

/** What stands beside a still: a filled outline, its lines, and fine strokes. */
interface Beside {
  readonly body: string;
  readonly lines: string;
  readonly hatch: string;
}

/** The arm of each still ends at x = 99, here. */
const arm = { 'wash-still': 30, 'spirit-still': 13 } as const;

export function coolingOf({ shape, condenser }: DrawnVessel): Beside | undefined {
  if (condenser === undefined || (shape !== 'wash-still' && shape !== 'spirit-still')) return undefined;
  if (condenser === 'shell-and-tube')
    return {
      body: lineVessels[shape].beside!,
      lines: 'M99 34 h14 M99 106 h14 M113 100 h8 M113 40 h8 M101 120 V158 M111 120 V158 M97 158 h8 M107 158 h8',
      hatch: 'M102 34 V106 M104.5 34 V106 M107 34 V106 M109 34 V106 M110.500 34 V106 M112 34 V106',
    };
  const y = arm[shape];
  return {
    body: 'M91 56 L94 150 A17 4 0 0 0 126 150 L129 56 A19 4 0 0 0 91 56Z',
    lines: `M91 56 A19 4 0 0 0 129 56 M92 76 A18.500 4 0 0 0 128 76 M93 112 A17.500 4 0 0 0 127 112 M94 144 A16.500 4 0 0 0 126 144 M99 ${y} Q112 ${y + 3} 113 ${y + 16} V57 M99 ${y + 9} Q105 ${y + 11} 106 ${y + 18} V57`,
    hatch: 'M97 60 V152 M103 61 V153 M110 61 V154 M116 61 V153 M120 60 V153 M123 60 V152 M125.500 60 V151 M96 54 q4 2 8 0 q4 -2 8 0 M110 54 q5 2 9 0',
  };
} // prettier-ignore
