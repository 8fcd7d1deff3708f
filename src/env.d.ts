// What the handbook adds to Astro: client:needed, client:seen and client:held, see build/needed.ts, build/seen.ts and build/held.ts.
/// <reference types="astro/client" />
import 'astro';

declare module 'astro' {
  interface AstroClientDirectives {
    'client:needed'?: boolean;
    'client:seen'?: boolean;
    'client:held'?: boolean;
  }
}
