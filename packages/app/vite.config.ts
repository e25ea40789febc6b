import { defineConfig } from 'vite';
import { withoutCommandLine } from './without-command-line.ts';
import { withoutOrigins } from './without-origins.ts';

export default defineConfig({
  // any folder of any static host will do
  base: './',
  build: {
    target: 'es2022',
    // one file in dist for each asset: inlined ones would need a wider content policy
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    reportCompressedSize: false,
  },
  plugins: [withoutCommandLine(), withoutOrigins()],
  worker: { format: 'es', plugins: () => [withoutCommandLine(), withoutOrigins()] },
  server: { host: '127.0.0.1' },
});
