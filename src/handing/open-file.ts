// A file that a reader opens, as what it is: a plain house, or a release whose signature was checked, or a sentence why not.
import { decodeHouse } from '../house/codec.ts';
import { SIGNED_FORMAT, readSigned, saysFormat, type Signed } from './envelope.ts';
import { SIGNING_KEY_FORMAT } from './own-key.ts';
import { canSign, keyFingerprint, signatureFits } from './signing.ts';

export type OpenedFile =
  | { readonly plain: string }
  | { readonly signed: Signed; readonly digits: string }
  | { readonly problem: string };

const SHEET = /^#sheet=[\w.~&=/-]{1,60000}$/; // what the page of sheets then reads in full

/** Reads a file's text and checks what it is signed with. A sheet is read in full by its own page. */
export async function openFile(text: string): Promise<OpenedFile> {
  if (!saysFormat(text, SIGNED_FORMAT))
    return saysFormat(text, SIGNING_KEY_FORMAT)
      ? { problem: 'This is somebody’s key, not a house. Open your own under “Your key on another machine”.' }
      : { plain: text };
  const reading = readSigned(text);
  if ('problem' in reading) return reading;
  if (!canSign())
    return {
      problem: 'The signature cannot be checked: browsers do that only on a page from an address that begins with https.', // prettier-ignore
    };
  const { signed } = reading;
  if (!(await signatureFits(signed)))
    return { problem: 'The signature does not fit: this file was changed after it was signed.' };
  const house = signed.kind === 'house' ? decodeHouse(signed.text) : undefined;
  if (house && !house.isHouse)
    return { problem: `The signature fits, but the house cannot be read. ${house.problems.join(' ')}` };
  if (signed.kind === 'sheet' && !SHEET.test(signed.text))
    return { problem: 'The signature fits, but there is no sheet in the file.' };
  return { signed, digits: await keyFingerprint(signed.key) };
}
