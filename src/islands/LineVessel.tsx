// The vessels of the line, engraved, each filled to its level; a dashed line says where it stood before a move.
import { Show, type JSX } from 'solid-js';
import type { LineVesselName } from './line-levels.ts';

export const VESSEL_HEIGHT = 162; // units of a vessel’s drawing, of which 130 are across

interface Vessel {
  readonly alt: string;
  /** Its body, which holds what is in it, and whether that is copper. */
  readonly body: string;
  readonly isCopper?: true;
  /** Where it is empty and where it is full, down the drawing; and its middle and half its breadth. */
  readonly empty: number;
  readonly full: number;
  readonly middle: number;
  readonly half: number;
  /** Lines over the body, fine strokes, and what stands beside it. */
  readonly lines: string;
  readonly hatch: string;
  readonly beside?: string;
}

/** Short slanting strokes that shade a side, from (x, from) down to (x, to). */
function hatching(x: number, from: number, to: number, length = 7): string {
  let strokes = '';
  for (let y = from; y <= to; y += 5) strokes += `M${x} ${y} l${-length} ${length * 0.7}`;
  return strokes;
}

export const lineVessels: Readonly<Record<LineVesselName, Vessel>> = {
  malt: {
    alt: 'A hopper of malt over the mill',
    body: 'M24 34 H106 V92 L74 136 H56 L24 92Z',
    empty: 136,
    full: 34,
    middle: 65,
    half: 42,
    lines: 'M20 34 H110 M24 92 H106 M56 136 V146 H74 V136 M30 100 V158 M100 100 V158 M25 158 h10 M95 158 h10',
    hatch: hatching(106, 42, 86, 8) + 'M60 150 v3 M65 150 v5 M70 150 v3',
  },
  'mash-tun': {
    alt: 'A round, domed tun with rakes above a slotted floor',
    body: 'M22 66 V118 A46 8 0 0 0 114 118 V66 C108 46 88 38 68 38 C48 38 28 46 22 66Z',
    empty: 124,
    full: 58,
    middle: 68,
    half: 46,
    lines:
      'M22 66 A46 8 0 0 0 114 66 M62 38 V28 H74 V38 M68 28 V22 H84 M68 76 V112 M38 96 H98 M44 96 v11 M52 96 v11 M60 96 v11 M76 96 v11 M84 96 v11 M92 96 v11 M86 48 q9 1 13 7 l-8 2 q-4 -5 -9 -6Z M36 124 V158 M100 124 V158 M32 158 h8 M96 158 h8',
    hatch: hatching(114, 72, 112, 7),
  },
  washback: {
    alt: 'A tall hooped tub of staves, a hydrometer floating in it',
    body: 'M36 40 L29 148 A37 7 0 0 0 103 148 L96 40 A30 6 0 0 0 36 40Z',
    empty: 154,
    full: 46,
    middle: 66,
    half: 37,
    lines:
      'M36 40 A30 6 0 0 1 96 40 A30 6 0 0 1 36 40Z M34.7 60 A31.5 6.5 0 0 0 97.3 60 M33 86 A33.5 7 0 0 0 99 86 M31.3 113 A35 7 0 0 0 100.7 113 M29.7 138 A36.5 7 0 0 0 102.3 138',
    hatch: 'M43 44 L38 152 M51 46 L48 154 M81 46 L84 154 M89 44 L94 152 M92.5 43 L98 150',
  },
  'wash-still': {
    alt: 'A wide pot still; its arm slopes down to an upright condenser',
    isCopper: true,
    body: 'M18 122 C9 104 22 92 37 84 C46 78 47 62 47 42 C47 24 55 15 66 16 L99 30 V39 L68 28 C61 26 58 32 58 44 C58 62 59 78 68 84 C83 92 96 104 87 122 C87 138 71 144 52.5 144 C34 144 18 138 18 122Z',
    empty: 144,
    full: 86,
    middle: 52,
    half: 42,
    lines:
      'M37 84 A16 4 0 0 0 68 84 M47 50 h11 M57 104 A9 7 0 0 1 39 104 A9 7 0 0 1 57 104 M113 108 h7 M113 34 h7 M26 158 L30 141 M79 158 L75 141 M20 158 h14 M71 158 h14',
    hatch:
      'M48 97 v14 M88 100 l-9 7 M91 105 l-11 8 M91 111 l-11 8 M89 118 l-10 7 M57 62 l-5 4 M58 70 l-6 5 M62 78 l-7 6 M86 134 l-7 5 M103 30 V112 M106 30 V112 M109 30 V112',
    beside: 'M99 28 Q99 22 106 22 Q113 22 113 28 V114 Q113 120 106 120 Q99 120 99 114Z',
  },
  'spirit-still': {
    alt: 'A smaller pot still with a bulge in its neck; its arm rises to a condenser, where the run is cut',
    isCopper: true,
    body: 'M22 128 C14 112 26 103 40 98 C46 96 46 93 41 89 C33 82 37 71 45 68 C46.5 60 46 54 46 44 C46 28 53 21 63 20 L99 13 V22 L64 29 C57 30 54 35 54 46 C54 54 53.5 60 55 68 C63 71 67 82 59 89 C54 93 54 96 60 98 C74 103 86 112 78 128 C78 139 66 144 50 144 C34 144 22 139 22 128Z',
    empty: 144,
    full: 98,
    middle: 50,
    half: 34,
    lines:
      'M40 98 A12 3 0 0 0 60 98 M45 68 h10 M53 114 A7 5.5 0 0 1 39 114 A7 5.5 0 0 1 53 114 M113 108 h7 M113 22 h7 M28 158 L32 142 M72 158 L68 142 M22 158 h14 M64 158 h14',
    hatch:
      'M46 109 v11 M80 114 l-9 7 M81 120 l-9 7 M79 127 l-8 6 M62 76 l-7 5 M63 81 l-7 5 M77 136 l-7 5 M103 18 V112 M109 18 V112',
    beside: 'M99 16 Q99 9 106 9 Q113 9 113 16 V114 Q113 120 106 120 Q99 120 99 114Z',
  },
  cask: {
    alt: 'A hooped cask lying on rails in the store',
    body: 'M22 80 C42 62 88 62 108 80 C114 96 114 116 108 132 C88 150 42 150 22 132 C16 116 16 96 22 80Z',
    empty: 146,
    full: 66,
    middle: 65,
    half: 48,
    lines:
      'M32 74 C25 94 25 118 32 138 M44 70 C38 92 38 120 44 142 M86 70 C92 92 92 120 86 142 M98 74 C105 94 105 118 98 138 M61 66 h8 M12 148 H118 V153 H12Z M26 153 v5 M104 153 v5 M30 148 l6 -7 M100 148 l-6 -7 M8 158 V40 L65 14 L122 40 V158',
    hatch:
      'M19 94 C42 83 88 83 111 94 M18 106 H112 M19 118 C42 129 88 129 111 118 M21 126 C42 138 88 138 109 126',
  },
  bottle: {
    alt: 'A corked bottle with a plain label',
    body: 'M57 44 V70 C57 80 42 82 42 96 V152 Q42 158 48 158 H76 Q82 158 82 152 V96 C82 82 67 80 67 70 V44Z',
    empty: 158,
    full: 46,
    middle: 62,
    half: 20,
    lines: 'M55 40 H69 V46 H55Z M47 112 H77 V140 H47Z',
    hatch: hatching(82, 98, 148, 5) + 'M52 120 h20 M52 126 h20 M52 132 h12',
  },
};

export function LineVessel(props: {
  readonly of: LineVesselName;
  readonly level: number;
  readonly before: number | undefined;
  /** True when handles stand on it. */
  readonly isHeld: boolean;
  readonly children?: JSX.Element;
}) {
  const vessel = lineVessels[props.of];
  const y = (level: number) =>
    vessel.empty + Math.min(1.04, Math.max(0, level)) * (vessel.full - vessel.empty);
  const surface = (level: number) => {
    const { middle, half } = vessel;
    const dip = half / 7;
    return `M${middle - half} ${y(level).toFixed(2)} a${half} ${dip} 0 0 1 ${2 * half} 0`;
  };
  return (
    <svg
      class="drawing vessel"
      viewBox={`0 0 130 ${VESSEL_HEIGHT}`}
      width="130"
      height={VESSEL_HEIGHT}
      role={props.isHeld ? 'group' : 'img'}
      aria-label={vessel.alt}
    >
      <clipPath id={`line-${props.of}`}>
        <path d={vessel.body} />
      </clipPath>
      <path class="hatch" d="M0 158 H130" />
      <Show when={vessel.beside}>
        <path class="copper" d={vessel.beside} />
      </Show>
      <path class={vessel.isCopper ? 'copper' : 'leaf'} d={vessel.body} />
      <g clip-path={`url(#line-${props.of})`}>
        <path
          class="level"
          classList={{ grain: props.of === 'malt', liquid: props.of !== 'malt' }}
          d={`${surface(props.level)} V170 H${vessel.middle - vessel.half}Z`}
        />
        <path
          class="level-before"
          classList={{ hidden: props.before === undefined }}
          d={surface(props.before ?? props.level)}
        />
      </g>
      <path class="hatch" d={vessel.hatch} />
      <path d={vessel.body} />
      <path d={vessel.lines} />
      {props.children}
    </svg>
  );
}
