// A sheet that was made for a house, held against the house as it is: which of the figures that it carries are others now.
import type { House } from '../core/line/house.ts';
import { givenOtherwise } from '../house/changes.ts';
import { builtInHouse, builtInName } from '../house/figures.ts';
import type { HouseVersion } from '../house/parts/dates.ts';
import { readSheetLink, sheetLink } from './sheet-link.ts';
import { sheetMark } from './worksheet.ts';

const MARK = /#sheet=.*$/s;
const NO_SHEET = 'This is no link to a sheet: it has “#sheet=” in it.';

/** What is said of a sheet’s link; `isTouched` when the sheet carries figures that the house no longer has. */
export interface Touched {
  readonly says: string;
  readonly isTouched: boolean;
}

/** Reads a sheet’s link, whole address or its end, and says how its figures lie to those of a house. */
export function sheetTouched(
  link: string,
  name: string,
  house: House,
  versions: readonly HouseVersion[] = [],
): Touched {
  const reading = readSheetLink(MARK.exec(link.trim())?.[0] ?? '');
  if (reading === undefined) return { says: NO_SHEET, isTouched: false };
  if ('problem' in reading) return { says: reading.problem, isTouched: false };
  const { sheet } = reading;
  const what = `Sheet ${sheetMark(sheetLink(sheet))}`;
  if (sheet.house === 'random')
    return { says: `${what} invents its houses: nothing of ${name} is in it.`, isTouched: false };
  const of = sheet.house === 'built-in' ? { name: builtInName, house: builtInHouse } : sheet.house;
  const whose = of.name === name ? '' : ` It was made for ${of.name}.`;
  const others = givenOtherwise(of.house, house);
  if (others.length === 0) return { says: `${what} has the figures of ${name} as they are.${whose}`, isTouched: false };
  const then = versions.find(({ figures }) => givenOtherwise(figures, of.house).length === 0);
  const since = then ? ` It has the figures of “${then.name}”.` : '';
  const list = others.map((label) => label[0]!.toLowerCase() + label.slice(1)).join(', ');
  return {
    says: `${what} speaks of other figures than ${name} has: ${list}.${since}${whose} Its answers hold for the figures that it prints; make it again for the house as it is.`,
    isTouched: true,
  };
} // prettier-ignore
