// The site: MDX chapters, Solid islands, formulas set at build time, no inline styles and one hashed inline script.
import { createHash } from 'node:crypto';
import { satteri } from '@astrojs/markdown-satteri';
import mdx from '@astrojs/mdx';
import solid from '@astrojs/solid-js';
import { defineConfig } from 'astro/config';
import { generateHydrationScript } from 'solid-js/web';
import { formulas } from './src/build/katex.ts';
import { spaces } from './src/build/spaces.ts';
import { terms } from './src/build/terms.ts';
import { tables } from './src/build/tables.ts';

// Solid's integration puts this script on every page with an island; the policy allows it by its hash.
const hydration = generateHydrationScript().match(/<script[^>]*>([\s\S]*?)<\/script>/)?.[1] ?? '';
const hydrationHash = `sha256-${createHash('sha256').update(hydration).digest('base64')}`;

export default defineConfig({
  site: 'https://handbook.invalid',
  trailingSlash: 'always',
  devToolbar: { enabled: false },
  build: { inlineStylesheets: 'never' },
  security: {
    csp: {
      directives: [
        "default-src 'self'",
        "img-src 'self' data:",
        "object-src 'none'",
        "base-uri 'none'",
        "form-action 'none'",
      ],
      scriptDirective: { hashes: [hydrationHash] },
    },
  },
  markdown: {
    syntaxHighlight: false,
    processor: satteri({
      features: { math: true },
      mdastPlugins: [formulas, terms, spaces],
      hastPlugins: [tables],
    }),
  },
  integrations: [solid(), mdx()],
  vite: {
    build: { assetsInlineLimit: 0, rolldownOptions: { checks: { moduleLevelDirective: false } } },
  },
});
