// A house's text made short enough for a picture that a phone reads: only what differs from the list, packed.
import { deflateSync } from 'fflate';
import { toBase64url } from './base64url.ts';
import { LONGEST_HOUSE_LINK, SHORT_LINK_MARK } from './link.ts';
import { dictionary, shortList } from './short-list.ts';

/** The part of an address that carries a house, from the text that keeps it; `textOfShortLink` reads it. */
export function shortLinkOf(text: string): string {
  const { version, name, figures, parts } = JSON.parse(text) as {
    readonly version: number;
    readonly name: string;
    readonly figures: Readonly<Record<string, unknown>>;
    readonly parts?: object;
  };
  const differing = shortList.flatMap(([figure, value], place) =>
    figures[figure] === undefined || figures[figure] === value ? [] : [place, figures[figure]],
  );
  const short = JSON.stringify([version, name, differing, ...(parts ? [parts] : [])]);
  return `${SHORT_LINK_MARK}${toBase64url(deflateSync(new TextEncoder().encode(short), { level: 9, dictionary }))}`;
}

/** The same, where it is not too long to be read again. */
export function linkIfItFits(text: string): string | undefined {
  const link = shortLinkOf(text);
  return link.length <= LONGEST_HOUSE_LINK ? link : undefined;
}
