// The schema of a house's file, made when the site is built.
import { houseSchema } from '../house/schema.ts';

export const GET = (): Response => new Response(JSON.stringify(houseSchema, null, 2));
