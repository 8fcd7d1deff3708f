// Solid for the islands, which the handbook takes over in a way of its own: islands never change their props, and may need more than a script.
import solid from '@astrojs/solid-js';
import type { AstroIntegration } from 'astro';

export function islands(): AstroIntegration {
  const whole = solid();
  return {
    ...whole,
    hooks: {
      ...whole.hooks,
      'astro:config:setup': (options) =>
        whole.hooks['astro:config:setup']?.({
          ...options,
          addRenderer: (renderer) =>
            options.addRenderer({ ...renderer, clientEntrypoint: '/src/build/island.ts' }),
        }),
    },
  };
}
