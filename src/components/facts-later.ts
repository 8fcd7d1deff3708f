// Fetches what keeps facts of the house right only where the text says one.
if (document.querySelector('[data-fact]')) void import('../house/facts-store.ts').catch(() => undefined); // without it, the text stays
