// The text of a small sealed sheet as its file has it, made with a key of its own.
import { toBase64url } from '../../src/house/base64url.ts';
import { aboutSource, sealedText } from '../../src/exercises/sealed/sealed-sheet.ts';
import { makeSealKey, sealedTo } from '../../src/handing/sealing.ts';
import { publicOf } from '../../src/handing/signing.ts';

export async function sealedSheetFile(): Promise<string> {
  const to = publicOf(await makeSealKey());
  const id = 'abcdef012345';
  const seal = toBase64url(await sealedTo(to, aboutSource(id), new TextEncoder().encode('nothing')));
  const questions = [
    { form: 'number', prompt: 'What is 2 + 2?', ask: 'Answer, to the whole number.', marks: 1 },
    { form: 'choice', prompt: 'Which is a stage?', ask: 'Answer with one letter.', marks: 2, lines: ['Milling', 'Sailing'] },
    { form: 'order', prompt: 'Put them in order.', ask: 'Answer with the letters in order.', marks: 1, lines: ['Milling', 'Malting'] },
  ] as const; // prettier-ignore
  return sealedText({ id, title: 'Sealed', minutes: 20, to, seal, versions: [{ version: 1, questions }] });
}
