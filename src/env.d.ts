// What the handbook adds to Astro: client:needed, see build/needed.ts.
/// <reference types="astro/client" />
import 'astro';

declare module 'astro' {
  interface AstroClientDirectives {
    'client:needed'?: boolean;
  }
}
