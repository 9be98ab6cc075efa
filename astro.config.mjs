import { defineConfig } from 'astro/config';
import { creasewright } from './plugins/astro/index.ts';

export default defineConfig({
  srcDir: './site',
  publicDir: './public',
  outDir: './dist',
  cacheDir: './.cache/astro',
  // Files of a project lie beside its page: /projects/<slug>/index.html, template-letter.pdf, project.json.
  trailingSlash: 'always',
  build: {
    format: 'directory',
    // Pages must work under `style-src 'self'; script-src 'self'`: nothing is written into them.
    inlineStylesheets: 'never',
    concurrency: 4,
  },
  vite: { build: { assetsInlineLimit: 0 } },
  devToolbar: { enabled: false },
  integrations: [creasewright()],
});
