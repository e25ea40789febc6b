/** What runs anywhere; reading files is Node's part (`@neckfall/data/node`). */
export * from './catalogue/index.ts';
export * from './live/index.ts';
export * from './places/index.ts';
export * from './practice/index.ts';
export * from './site/index.ts';
export * from './weather-files/index.ts';
