import { defineConfig } from 'vite';
import { withWeatherHost } from './with-weather-host.ts';
import { withoutCommandLine } from './without-command-line.ts';
import { withoutOrigins } from './without-origins.ts';

export default defineConfig({
  // any folder of any static host will do
  base: './',
  // the library is its sources
  resolve: { tsconfigPaths: true },
  build: {
    target: 'es2022',
    // one file in dist for each asset: inlined ones would need a wider content policy
    assetsInlineLimit: 0,
    modulePreload: {
      polyfill: false,
      // what copies of pictures stand on is mostly there by then, and its list would be part of the first answer
      resolveDependencies: (file, needed) => (file.includes('PictureCopies') ? [] : needed),
    },
    reportCompressedSize: false,
    rollupOptions: {
      // a language is named after its folder, so that the service worker knows it; English of later pages goes with them
      output: {
        chunkFileNames: ({ facadeModuleId }) => {
          const language = /words\/src\/(?!en-)([\w-]+)\/index\.ts$/.exec(facadeModuleId ?? '')?.[1];
          return `assets/${language ? `language-${language}` : '[name]'}-[hash].js`;
        },
      },
    },
  },
  plugins: [withoutCommandLine(), withoutOrigins(), withWeatherHost()],
  worker: {
    format: 'es',
    plugins: () => [withoutCommandLine(), withoutOrigins()],
    // what the first answer needs is one file; of the engine, learning comes with what asks for it
    rolldownOptions: {
      output: {
        codeSplitting: {
          includeDependenciesRecursively: false,
          groups: [{ name: 'learn', test: /engine\/src\/learn\// }],
        },
      },
    },
  },
  server: { host: '127.0.0.1' },
});
