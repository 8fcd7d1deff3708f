// A text as one line of what can be seen.
import { UNSEEN } from '../../core/quoted-given.ts';

/** Text on one line, of characters that can be seen. */
export const oneLine = (text: string): string =>
  text.replace(/\s+/g, ' ').replace(UNSEEN, '').replace(/ +/g, ' ').trim();
