// The text of a file that the reader opens: of a size that is asked before it is read, in UTF-8, or in UTF-16 where its first bytes say so.
import { quotedGiven } from '../core/quoted-given.ts';

export type FileRead = { readonly text: string } | { readonly problem: string };

function encodingOf([first, second]: Uint8Array): string {
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  return first === 0xfe && second === 0xff ? 'utf-16be' : 'utf-8';
}

/** Reads a file of at most so many bytes; `what` names in the refusal what was wanted. */
export async function textOfFile(file: File, most: number, what: string): Promise<FileRead> {
  const name = quotedGiven(file.name);
  if (file.size > most)
    return {
      problem: `${name} is ${Math.round(file.size / 1000)} kB; ${what} has at most ${most / 1000} kB. Nothing was changed.`,
    };
  try {
    const bytes = new Uint8Array(await file.arrayBuffer());
    return { text: new TextDecoder(encodingOf(bytes)).decode(bytes) };
  } catch {
    return { problem: `${name} could not be read from where it is. Nothing was changed.` };
  }
}
