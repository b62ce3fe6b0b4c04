import path from 'node:path';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { finishPages } from './src/cli/finish-pages.ts';
import { licences } from './src/cli/licences.ts';

/** The folder of the built site that holds its scripts, style sheets and fonts. */
const ASSETS = '_astro';

export default defineConfig({
  output: 'static',
  outDir: process.env.SITE_OUT ?? './dist',
  trailingSlash: 'always',
  devToolbar: { enabled: false },
  integrations: [mdx(), preact(), finishPages()],
  // Highlighting writes style attributes, which the policy below forbids.
  markdown: { syntaxHighlight: false },
  build: {
    assets: ASSETS,
    // A style sheet put into the page would lose its way to the fonts.
    inlineStylesheets: 'never',
  },
  security: {
    csp: {
      directives: [
        "default-src 'self'",
        "img-src 'self'",
        "connect-src 'self'",
        "object-src 'none'",
        "base-uri 'none'",
        "form-action 'none'",
      ],
    },
  },
  vite: {
    plugins: [licences(import.meta.dirname)],
    build: {
      assetsInlineLimit: 0,
      rolldownOptions: {
        checks: {
          // Astro marks the lessons with one of its own, and takes it out again.
          moduleLevelDirective: false,
        },
      },
    },
    experimental: {
      // Scripts and style sheets find their parts wherever the site lies; pages are seen to by finishPages.
      renderBuiltUrl: (file, { hostType, ssr }) => {
        if (hostType === 'css') return path.posix.relative(ASSETS, file);
        return ssr ? undefined : { relative: true };
      },
    },
  },
});
