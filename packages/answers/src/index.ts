/** What every face of Neckfall says of an answer: places, facts and whole sentences, without any layout. */
export * from './facts/index.ts';
export * from './place/index.ts';
export * from './sentences/index.ts';
