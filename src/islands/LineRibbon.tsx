// The ribbon of alcohol, drawn along the page where it is wide and down it where it is not, with a ghost of how it lay before.
import { createMemo, Index } from 'solid-js';
import type { LineFlows, RibbonRoom } from './line-flows.ts';
import { RIBBON_HEIGHT, ribbonOf, type RibbonCourse, type Ribbon } from './line-ribbon.ts';

/** Along the page: seven equal stations. */
const along: RibbonCourse = {
  bounds: [0, 100, 200, 300, 400, 500, 600, 700],
  perAcross: 0.9,
  isDown: false,
};
/** Down it: as high as each station’s words and steps; the same proportions are in `line.css`. */
const down: RibbonCourse = {
  bounds: [0, 64, 104, 168, 208, 316, 424, 464],
  perAcross: 0.9,
  isDown: true,
};

const outline = ({ promise, spirit, round, lost }: Ribbon) =>
  [promise, spirit, round, ...Object.values(lost)].join(' ');

interface RibbonProps {
  readonly flows: LineFlows;
  readonly before: LineFlows | undefined;
  readonly room: RibbonRoom;
}

export function LineRibbon(props: RibbonProps) {
  return (
    <>
      <One {...props} course={along} name="along" />
      <One {...props} course={down} name="down" />
    </>
  );
}

function One(props: RibbonProps & { readonly course: RibbonCourse; readonly name: string }) {
  const length = props.course.bounds.at(-1)!;
  const ribbon = createMemo(() => ribbonOf(props.flows, props.room, props.course));
  const ghost = createMemo(() =>
    props.before ? outline(ribbonOf(props.before, props.room, props.course)) : undefined,
  );
  return (
    <svg
      class={`drawing ribbon ${props.name}`}
      viewBox={props.course.isDown ? `0 0 ${RIBBON_HEIGHT} ${length}` : `0 0 ${length} ${RIBBON_HEIGHT}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      <path class="promise" d={ribbon().promise} />
      <path class="round" fill-rule="evenodd" d={ribbon().round} />
      <path class="way" d={ribbon().way} />
      <path class="spirit" d={ribbon().spirit} />
      <Index each={Object.entries(ribbon().lost)}>
        {(loss) => <path class="loss" data-loss={loss()[0]} d={loss()[1]} />}
      </Index>
      <path class="ghost" classList={{ hidden: ghost() === undefined }} d={ghost() ?? 'M0 0'} />
    </svg>
  );
}
