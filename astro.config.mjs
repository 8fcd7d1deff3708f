// The site: MDX chapters, Solid islands, formulas set at build time, no inline script or style, addresses that any folder can hold.
import { satteri } from '@astrojs/markdown-satteri';
import mdx from '@astrojs/mdx';
import { defineConfig } from 'astro/config';
import { finish } from './src/build/finish.ts';
import { gathering } from './src/build/gather.ts';
import { formulas } from './src/build/katex.ts';
import { islands } from './src/build/solid.ts';
import { scripts } from './src/build/scripts.ts';
import { spaces } from './src/build/spaces.ts';
import { stampOf } from './src/build/stamp.ts';
import { terms } from './src/build/terms.ts';
import { tables } from './src/build/tables.ts';

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
  integrations: [gathering(), islands(), mdx(), finish()],
  vite: {
    define: { __BOOK__: JSON.stringify(stampOf()) },
    plugins: [scripts()],
    // A script asks for a file beside itself, wherever the site stands; addresses in pages become relative at the end.
    experimental: {
      renderBuiltUrl: (_file, { hostType, ssr }) =>
        hostType === 'js' && !ssr ? { relative: true } : undefined,
    },
    build: {
      assetsInlineLimit: 0,
      rolldownOptions: { checks: { moduleLevelDirective: false } },
    },
  },
});
