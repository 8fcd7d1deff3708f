// What the handbook adds to Astro: client:needed and client:seen, see build/needed.ts and build/seen.ts.
/// <reference types="astro/client" />
import 'astro';

declare module 'astro' {
  interface AstroClientDirectives {
    'client:needed'?: boolean;
    'client:seen'?: boolean;
  }
}
