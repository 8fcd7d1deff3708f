// What the walk's part on those who come fetches once it is opened: pieces that may be added, and the trade's words.
import { getCollection } from 'astro:content';
import type { Suggestion, WalkAbroad } from '../walk/audience-pieces.ts';
import { tradeWord } from '../walk/audience-words.ts';

export async function GET(): Promise<Response> {
  const pieces = (await getCollection('walkPieces')).map(({ id, data }): Suggestion => ({ id, ...data }));
  const words = (await getCollection('wordsAbroad'))
    .sort((a, b) => a.data.place - b.data.place)
    .map(({ id, data }) => tradeWord(id, data.word))
    .map(({ english, stage }) => ({ english, stage }));
  return new Response(JSON.stringify({ pieces, words } satisfies WalkAbroad));
}
