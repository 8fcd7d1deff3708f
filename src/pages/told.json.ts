// The figures of the built-in house as this book tells them: a page that tells of nothing else need not reckon them.
import type { APIRoute } from 'astro';
import { rememberedFigures } from '../house/corrected.ts';
import { builtInLine } from '../house/line-of.ts';

export const GET: APIRoute = () => new Response(JSON.stringify(rememberedFigures(builtInLine())));
