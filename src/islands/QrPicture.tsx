// A picture of code with its name beside it: dark on white in either colour scheme, on screen and on paper.
import type { Code } from './qr.ts';

const WIDEST = 384; // px on a side, as `.qr` allows

/** Width at which each module is a whole number of pixels: at 2.8 px a dense code is not read off a screen. */
const wholePixels = (modules: number): number => Math.max(1, Math.floor(WIDEST / modules)) * modules;

export default function QrPicture(props: {
  readonly code: Code;
  readonly name: string;
  /** What the phone opens, as the end of “opens …”. */
  readonly opens: string;
}) {
  return (
    <figure class="qr">
      <svg
        viewBox={`0 0 ${props.code.size} ${props.code.size}`}
        role="img"
        aria-label={`Picture of code: a phone’s camera held on it opens ${props.opens}. The link below does the same.`}
        shape-rendering="crispEdges"
        width={wholePixels(props.code.size)}
      >
        <rect width={props.code.size} height={props.code.size} fill="#fff" />
        <path d={props.code.path} fill="#000" />
      </svg>
      <figcaption>{props.name}</figcaption>
    </figure>
  );
}
