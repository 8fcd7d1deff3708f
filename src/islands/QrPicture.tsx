// A picture of code with its name beside it: dark on white in either colour scheme, on screen and on paper.
import type { Code } from './qr.ts';

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
      >
        <rect width={props.code.size} height={props.code.size} fill="#fff" />
        <path d={props.code.path} fill="#000" />
      </svg>
      <figcaption>{props.name}</figcaption>
    </figure>
  );
}
