// The words of every kind of question, for the search on the page of one's own sheet.
import { getCollection } from 'astro:content';
import type { APIRoute } from 'astro';
import { wordsOfKinds } from '../../../build/words-of-kinds.ts';
import { questionKinds } from '../../../exercises/kinds/index.ts';

export const GET: APIRoute = async () => {
  const asked = (await getCollection('searchWords')).map(({ id, data }) => [id, data.asked] as const);
  return new Response(JSON.stringify(wordsOfKinds(questionKinds, Object.fromEntries(asked))));
};
