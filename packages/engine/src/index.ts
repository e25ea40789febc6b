/** The engine: numbers in, numbers out. No files, no clock, no screen. */
export * from './atlas/index.ts';
export * from './bed/index.ts';
export * from './calendar/index.ts';
export * from './choice/index.ts';
export * from './climate/index.ts';
export * from './garden/index.ts';
export * from './jobs/index.ts';
export * from './keep/index.ts';
export * from './learn/index.ts';
export * from './limits/index.ts';
export * from './math/index.ts';
export * from './plant/index.ts';
export * from './questions/index.ts';
export * from './season/index.ts';
export * from './sky/index.ts';
export * from './stand/index.ts';
export * from './tend/index.ts';
export * from './units/index.ts';
export * from './weather/index.ts';
export * from './why/index.ts';

/** Version of engine and data, which go together. */
export const engineVersion = '0.1.0';
