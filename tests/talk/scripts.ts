// The labelled talks, each with its key.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { unmark } from './marked.ts';

export interface Answer {
  readonly at: number;
  readonly text: string;
  /** As said, in the unit that was said. */
  readonly value?: number;
  readonly range?: readonly [number, number];
  readonly unit: string;
  /** The figure of the speaker’s own house, or a hyphen and why it is none. */
  readonly label: string;
  readonly figure?: string;
}
export interface Script {
  readonly name: string;
  readonly author: string;
  readonly text: string;
  readonly answers: readonly Answer[];
}

const folder = join(import.meta.dirname, 'talks');

/** Every talk of a folder of authors, by author and name. */
export function scripts(from = folder): Script[] {
  return readdirSync(from, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.talk'))
    .sort()
    .map((file) => unmark(readFileSync(join(from, file), 'utf8'), file.replace(/^.*[/\\]|\.talk$/g, '')));
}

/** The talk of a name. */
export const scriptOf = (name: string): Script => scripts().find((each) => each.name === name)!;
