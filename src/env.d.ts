// What the handbook adds to Astro: client:seen, see build/seen.ts.
/// <reference types="astro/client" />
import 'astro';

declare module 'astro' {
  interface AstroClientDirectives {
    'client:seen'?: boolean;
  }
}
