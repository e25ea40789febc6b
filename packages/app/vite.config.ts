import { defineConfig } from 'vite';
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
  plugins: [withoutOrigins()],
  worker: { format: 'es', plugins: () => [withoutOrigins()] },
  server: { host: '127.0.0.1' },
});
