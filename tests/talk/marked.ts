// A talk with its figures marked where they stand, [[words|value|unit|label]], as the text and its key.
import type { Answer, Script } from './scripts.ts';

const mark = /\[\[([^[\]|]+)\|([^[\]|]*)\|([^[\]|]*)\|([^[\]|]*)\]\]/g;

/** The value of a mark: one number, or the two ends of a range. */
function valueOf(said: string): Pick<Answer, 'value' | 'range'> {
  const ends = said.split('..').map(Number);
  if (said.trim() === '' || ends.length > 2 || !ends.every(Number.isFinite))
    throw new Error(`“${said}” is no value.`);
  return ends.length === 2 ? { range: [ends[0]!, ends[1]!] } : { value: ends[0]! };
}

/** Reads a marked talk: a head of `name: what` lines, a line `---`, then the talk. A label with a hyphen before it is none of the house’s figures, and says why. */
export function unmark(file: string, name: string): Script {
  const head = /^---\r?\n/m.exec(file);
  if (!head) throw new Error(`${name} has no line --- behind its head.`);
  const author = /^author:\s*(.*?)\s*$/m.exec(file.slice(0, head.index))?.[1] ?? 'unknown';
  const talk = file.slice(head.index + head[0].length);
  const answers: Answer[] = [];
  let text = '';
  let from = 0;
  for (const found of talk.matchAll(mark)) {
    const [whole, words, value, unit, label] = found as unknown as [string, string, string, string, string];
    text += talk.slice(from, found.index);
    from = found.index + whole.length;
    answers.push({
      at: text.length,
      text: words,
      ...valueOf(value),
      unit: unit.trim(),
      label: label.trim(),
      ...(label.trim().startsWith('-') ? {} : { figure: label.trim() }),
    });
    text += words;
  }
  text += talk.slice(from);
  if (text.includes('[[') || text.includes(']]')) throw new Error(`${name} has a mark that is not whole.`);
  return { name, author, text, answers };
}
