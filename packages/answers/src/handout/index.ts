export type { Handout, HandoutLine, HandoutOwn, HandoutWhen, HandoutWork } from './handout.ts';
export { type HandoutFacts, handoutFacts } from './handout-facts.ts';
export { type HandoutGround, handoutOf } from './handout-of.ts';
export { handoutLimits, measuredOwn } from './handout-own.ts';
