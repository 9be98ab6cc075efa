import type { AstroConfig } from 'astro';
import type { Loader } from 'astro/loaders';
import { type CollectionName, type ContentSource, INTEGRATION, SOURCE_HOOK } from './collections.ts';

/**
 * Loader of one collection. The files are read, checked and rendered by the integration, once for all collections; here
 * the result is only put into Astro's store, and what is gone is taken out.
 */
export function collectionLoader(name: CollectionName): Loader {
  return {
    name: `${INTEGRATION}-${name}`,
    async load({ config, store }) {
      const entries = await sourceOf(config).entriesOf(name);
      if (entries === undefined) return;
      const gone = new Set(store.keys());
      for (const entry of entries) {
        gone.delete(entry.id);
        // The store takes up the images of what it is given anew, not of what it has kept from the last build.
        if (entry.assetImports !== undefined && entry.assetImports.length > 0) store.delete(entry.id);
        store.set(entry as Parameters<typeof store.set>[0]);
      }
      for (const id of gone) store.delete(id);
    },
  };
}

/*
 * Astro runs the collections' configuration apart from its own, so the two share no module. The integration's hooks are
 * what both can see.
 */
function sourceOf(config: AstroConfig): ContentSource {
  const hook = config.integrations.find(({ name }) => name === INTEGRATION)?.hooks[SOURCE_HOOK];
  if (hook === undefined)
    throw new Error(`The collections need the integration \`${INTEGRATION}()\` in astro.config.mjs.`);
  return hook();
}
