/** What every face of Neckfall says of an answer: places, facts, jobs and whole sentences, without any layout. */
export * from './calendar/index.ts';
export * from './facts/index.ts';
export * from './handout/index.ts';
export * from './place/index.ts';
export * from './sentences/index.ts';
