// Questions of a trainer's own sheet whose numbers are kept, and what that means where the sheet is sealed.
import type { OwnSheet } from './own-sheet.ts';

/** How many they are, on a sheet that is drawn. */
export const pinnedIn = ({ items, notes }: Pick<OwnSheet, 'items' | 'notes'>): number =>
  notes ? items.filter(({ kept }) => kept !== undefined).length : 0;

/** The warning before such a sheet is sealed; empty where it is drawn anew. A kept draw hangs on the sheet's name, so the others stay with it. */
export function pinnedWarning(sheet: Pick<OwnSheet, 'items' | 'notes'>): string {
  const [kept, of] = [pinnedIn(sheet), sheet.items.length];
  if (kept === 0) return '';
  const which = kept < of ? `${kept} of its ${of} questions ${kept === 1 ? 'has a draw that was' : 'have draws that were'} kept` : 'Its draws were kept'; // prettier-ignore
  return `${which}, so this sheet is not drawn anew: all its numbers stay as they are. Whoever has seen it printed, or open, knows the questions. To have it drawn anew, let those draws go at the desk of your own sheets first.`;
}
