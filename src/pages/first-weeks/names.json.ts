// What the steps of the first weeks are called, for the line that says on other pages what comes next.
import type { APIRoute } from 'astro';
import { namesOfPath } from '../../build/path-names.ts';

export const GET: APIRoute = () => new Response(JSON.stringify(namesOfPath()));
