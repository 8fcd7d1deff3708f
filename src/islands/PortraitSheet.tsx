// The portrait itself: one drawing on a sheet of the A series, black on white, that needs nothing of the page to be a file.
import { createMemo, For, Index, Show } from 'solid-js';
import {
  portraitFloors,
  letterHeight,
  PORTRAIT_HEIGHT,
  inRanks,
  inTiers,
  PORTRAIT_LEFT,
  PORTRAIT_RIGHT,
  PORTRAIT_WIDTH,
  innerWalls,
  wrappedLines,
} from '../house/portrait-layout.ts';
import type { CaskSizeShares, DrawnVessel, Shape, PortraitVessels } from '../house/portrait-vessels.ts';
import type { PortraitFigure, RoomName } from '../house/portrait.ts';
import { cask } from './portrait-shapes/cask.ts';
import { coolingOf } from './portrait-shapes/cooling.ts';
import { ENGRAVING_WIDTH, engravings, ENGRAVING_HEIGHT } from './portrait-shapes/engravings.ts';
import {
  duskOf,
  groundOf,
  roofOf,
  slatesOf,
  stonesOf,
  ventAt,
  hallWalls as endWallsOf,
  windowsOf,
} from './portrait-shapes/hall.ts';

export interface PortraitRoom {
  readonly name: RoomName;
  readonly title: string;
  readonly vessels: PortraitVessels;
  readonly figures: readonly PortraitFigure[];
}
export interface PortraitProps {
  readonly name: string;
  readonly words: string;
  readonly rooms: readonly PortraitRoom[];
  readonly mix: CaskSizeShares;
  readonly foot: readonly string[];
  readonly stamp: string;
}

const WHITE = '#fff';
const FINE = 0.09; // mm: strokes that shade
const middle = PORTRAIT_WIDTH / 2;

export function PortraitSheet(props: PortraitProps & { readonly ref: (svg: SVGSVGElement) => void }) {
  const of = (name: RoomName) => props.rooms.find((room) => room.name === name)!;
  const walls = createMemo(() => innerWalls(of('mash').vessels.drawn.length, of('stills').vessels.drawn.length));
  const bounds = (floor: 0 | 1) => [PORTRAIT_LEFT, ...walls()[floor], PORTRAIT_RIGHT];
  const onFloor = (floor: 0 | 1) => (floor === 0 ? props.rooms.slice(0, 4) : props.rooms.slice(4));
  const halls = portraitFloors.map((each) => ({ ...each, left: PORTRAIT_LEFT, right: PORTRAIT_RIGHT }));
  const foot = () => {
    const text = props.foot.join(' ');
    const most = Math.max(190, Math.ceil(text.length / 2) + 12);
    return { lines: wrappedLines(text, most), size: Math.min(2.6, 262 / (most * 0.47)).toFixed(2) };
  };
  return (
    <svg
      ref={props.ref}
      class="portrait-sheet"
      viewBox={`0 0 ${PORTRAIT_WIDTH} ${PORTRAIT_HEIGHT}`}
      fill="none"
      stroke="#000"
      stroke-width="0.25"
      stroke-linecap="round"
      stroke-linejoin="round"
      font-family="serif"
      role="img"
      aria-labelledby="portrait-name"
    >
      <title id="portrait-name">The house’s portrait: {props.name}</title>
      <desc>
        {[...props.rooms.map(({ title, vessels, figures }) => `${[title, vessels.says].filter(Boolean).join(': ')}. ${figures.map(({ words, text }) => `${words}: ${text}.`).join(' ')}`), ...props.foot].join(' ')}
      </desc>
      <rect class="leaf" width={PORTRAIT_WIDTH} height={PORTRAIT_HEIGHT} fill={WHITE} stroke="none" />
      <Frame />
      <g fill="#000" stroke="none" text-anchor="middle">
        <text
          x={middle}
          y={props.words ? 22.5 : 25.5}
          font-size={letterHeight(props.name, 11, 230, 0.86)}
          letter-spacing="0.14em"
        >
          {props.name.toUpperCase()}
        </text>
        <text x={middle} y="29" font-size={letterHeight(props.words, 4.2, 235)}>
          {props.words}
        </text>
      </g>
      <path
        stroke-width="0.2"
        d={`M${middle - 42} 32 H${middle - 4} M${middle + 4} 32 H${middle + 42} M${middle} 30.600 l1.400 1.400 l-1.400 1.400 l-1.400 -1.400Z M${middle - 3} 32 h.8 M${middle + 2.200} 32 h.8`}
      />
      <Shapes />
      <For each={[0, 1] as const}>
        {(floor) => (
          <>
            <path fill={WHITE} d={ventAt(floor === 0 ? 88 : 65, halls[floor]!)} />
            <path fill={WHITE} d={roofOf(halls[floor]!)} />
            <path stroke-width={FINE} d={slatesOf(halls[floor]!)} />
            <path d={endWallsOf(halls[floor]!)} />
            <path stroke-width="0.06" d={duskOf(halls[floor]!)} />
            <path stroke-width="0.15" fill={WHITE} d={bounds(floor).slice(1).map((to, i) => windowsOf(halls[floor]!, bounds(floor)[i]! + 2, to - 2)).join('')} />
            <path fill={WHITE} d={walls()[floor].map((x) => `M${x - 0.700} ${portraitFloors[floor].ceiling} V${portraitFloors[floor].floor} h1.400 V${portraitFloors[floor].ceiling}Z`).join(' ')} />
            <path stroke-width={FINE} d={stonesOf(halls[floor]!, walls()[floor])} />
            <path stroke-width="0.2" d={groundOf(halls[floor]!)} />
            <Index each={onFloor(floor)}>
              {(room, i) => (
                <OneRoom
                  room={room()}
                  mix={props.mix}
                  left={bounds(floor)[i]!}
                  right={bounds(floor)[i + 1]!}
                  floor={portraitFloors[floor].floor}
                  height={portraitFloors[floor].floor - portraitFloors[floor].ceiling}
                />
              )}
            </Index>
          </>
        )}
      </For>
      <g fill="#000" stroke="none" text-anchor="middle">
        <Index each={foot().lines}>
          {(line, i) => (
            <text x={middle} y={193.4 + i * 3.3} font-size={foot().size}>
              {line()}
            </text>
          )}
        </Index>
        <text x={middle} y="200.200" font-size="2.300">
          {props.stamp}
        </text>
      </g>
    </svg>
  );
} // prettier-ignore

/** A double frame with its corners cut in. */
function Frame() {
  const cut = (at: number, by: number) =>
    `M${at + by} ${at} H${PORTRAIT_WIDTH - at - by} A${by} ${by} 0 0 0 ${PORTRAIT_WIDTH - at} ${at + by} V${PORTRAIT_HEIGHT - at - by} A${by} ${by} 0 0 0 ${PORTRAIT_WIDTH - at - by} ${PORTRAIT_HEIGHT - at} H${at + by} A${by} ${by} 0 0 0 ${at} ${PORTRAIT_HEIGHT - at - by} V${at + by} A${by} ${by} 0 0 0 ${at + by} ${at}Z`;
  return (
    <>
      <path stroke-width="0.7" d={cut(5.5, 5)} />
      <path stroke-width="0.2" d={cut(7, 4.5)} />
      <For each={[[9.4, 9.4], [PORTRAIT_WIDTH - 9.4, 9.4], [9.4, PORTRAIT_HEIGHT - 9.4], [PORTRAIT_WIDTH - 9.4, PORTRAIT_HEIGHT - 9.4]]}>
        {([x, y]) => (
          <path stroke-width="0.2" d={`M${x! - 1.3} ${y} L${x} ${y! - 1.3} L${x! + 1.3} ${y} L${x} ${y! + 1.3}Z M${x! - 0.5} ${y} h1 M${x} ${y! - 0.5} v1`} />
        )}
      </For>
    </>
  );
} // prettier-ignore

/** Each shape once, to be set where its vessels stand. */
function Shapes() {
  return (
    <defs>
      <clipPath id="portrait-pot">
        <path d="M-70 -162 H34.5 V6 H-70Z" />
      </clipPath>
      <For each={Object.entries(engravings)}>
        {([name, { beside, body, lines, hatch, shade }]) => {
          const isStill = name === 'wash-still' || name === 'spirit-still';
          return (
            <>
              <clipPath id={`portrait-in-${name}`}>
                <path d={body} />
              </clipPath>
              <g id={`portrait-${name}`} clip-path={isStill ? 'url(#portrait-pot)' : undefined}>
                <g transform={`translate(${-ENGRAVING_WIDTH / 2} -158)`} stroke-width="0.9">
                  <path fill={WHITE} d={beside ?? 'M0 0'} />
                  <path fill={WHITE} d={body} />
                  <path clip-path={`url(#portrait-in-${name})`} stroke-width="0.4" d={shade || 'M0 0'} />
                  <path stroke-width="0.4" d={hatch || 'M0 0'} />
                  <path d={body} />
                  <path d={lines} />
                </g>
              </g>
            </>
          );
        }}
      </For>
      <g id="portrait-cask">
        <path fill={WHITE} stroke-width="0.06" d={cask.body} />
        <path stroke-width="0.035" d={cask.lines} />
        <path stroke-width="0.022" d={cask.hatch} />
      </g>
    </defs>
  );
}

function Vessel(props: { readonly of: DrawnVessel | { readonly shape: 'safe' | 'bottle' }; readonly x: number; readonly y: number; readonly scale: number }) {
  const cooling = () => ('size' in props.of ? coolingOf(props.of) : undefined);
  return (
    <g transform={`translate(${props.x.toFixed(2)} ${props.y.toFixed(2)}) scale(${props.scale.toFixed(4)})`}>
      <use href={`#portrait-${props.of.shape}`} />
      <Show when={cooling()}>
        {(beside) => (
          <g transform={`translate(${-ENGRAVING_WIDTH / 2} -158)`} stroke-width="0.9">
            <path fill={WHITE} d={beside().body} />
            <path stroke-width="0.4" d={beside().hatch} />
            <path d={beside().lines} />
          </g>
        )}
      </Show>
    </g>
  );
} // prettier-ignore

function OneRoom(props: { readonly room: PortraitRoom; readonly mix: CaskSizeShares; readonly left: number; readonly right: number; readonly floor: number; readonly height: number }) {
  const isStills = () => props.room.name === 'stills';
  const isStore = () => props.room.name === 'store';
  const place = () => ({ left: props.left + 2, right: props.right - (isStills() ? 21 : isStore() ? 16 : 2), floor: props.floor, height: props.height - 3 });
  const standing = createMemo(() => inRanks(props.room.vessels.drawn.map(({ size }) => size), place(), [widthOf(props.room.vessels.drawn[0]?.shape), ENGRAVING_HEIGHT]));
  const casks = createMemo(() => (isStore() ? inTiers(props.mix, { ...place(), floor: props.floor - 0.900 }) : []));
  const rails = () => [...new Set(casks().map(({ y, r }) => (y + r).toFixed(2)))].map((y) => `M${props.left + 1.500} ${y} H${place().right} v0.700 H${props.left + 1.500}Z`).join(' ');
  const across = () => (props.right - props.left - 8) / columns();
  const columns = () => (props.room.figures.length > 3 ? 2 : 1);
  const centre = () => (props.left + props.right) / 2;
  return (
    <>
      <Index each={standing()}>
        {(at) => <Vessel of={props.room.vessels.drawn[at().of]!} x={at().x} y={at().y} scale={at().scale} />}
      </Index>
      <Show when={isStills()}>
        <Vessel of={{ shape: 'safe' }} x={props.right - 11} y={props.floor} scale={0.135} />
      </Show>
      <Show when={isStore()}>
        <path fill={WHITE} d={rails()} />
        <Index each={casks()}>
          {(at) => <use href="#portrait-cask" transform={`translate(${at().x.toFixed(2)} ${at().y.toFixed(2)}) scale(${at().r.toFixed(3)})`} />}
        </Index>
        <For each={[11, 5]}>{(from) => <Vessel of={{ shape: 'bottle' }} x={props.right - from} y={props.floor} scale={0.11} />}</For>
      </Show>
      <g fill="#000" stroke="none">
        <text text-anchor="middle" x={centre()} y={props.floor + 6.200} font-size="3.300" letter-spacing="0.600">
          {props.room.title.toUpperCase()}
        </text>
        <text text-anchor="middle" x={centre()} y={props.floor + 10.200} font-size={letterHeight(props.room.vessels.says, 3, props.right - props.left - 4)}>
          {props.room.vessels.says}
        </text>
        <Index each={props.room.figures}>
          {(figure, i) => {
            const left = () => (columns() === 1 ? centre() - Math.min(across(), 62) / 2 : props.left + 3 + Math.floor(i / 3) * (across() + 2));
            const right = () => left() + Math.min(across(), columns() === 1 ? 62 : 80);
            const y = () => props.floor + 14.700 + (i % 3) * 4.200;
            const size = () => letterHeight(`${figure().words}   ${figure().text}`, 3.100, right() - left() - 2);
            return (
              <>
                <path stroke="#000" stroke-width="0.15" stroke-dasharray="0 0.9" d={`M${left()} ${y()} H${right()}`} />
                <text x={left()} y={y()} font-size={size()} stroke={WHITE} stroke-width="1.200" paint-order="stroke">
                  {figure().words}
                </text>
                <text x={right()} y={y()} text-anchor="end" font-weight="bold" font-size={size()} stroke={WHITE} stroke-width="1.200" paint-order="stroke">
                  {figure().text}
                </text>
                <Show when={figure().standing === 'counted' || figure().standing === 'estimate'}>
                  <circle cx={right() + 1.300} cy={y() - 1} r="0.700" stroke="#000" stroke-width="0.2" fill={figure().standing === 'counted' ? '#000' : WHITE} />
                </Show>
              </>
            );
          }}
        </Index>
      </g>
    </>
  );
} // prettier-ignore

/** How much of its drawing’s breadth a vessel needs in a row. */
const widthOf = (shape: Shape | undefined) =>
  shape === 'washback' || shape === 'tub' || shape === 'steel' ? 92 : 126;
