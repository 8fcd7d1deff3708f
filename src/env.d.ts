// What the handbook adds to Astro: client:seen and client:held, see build/seen.ts and build/held.ts.
/// <reference types="astro/client" />
import 'astro';

declare module 'astro' {
  interface AstroClientDirectives {
    'client:seen'?: boolean;
    'client:held'?: boolean;
  }
}
