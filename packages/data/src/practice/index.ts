export { type KitchenUse, type UseSource, usualGramsPerWeek } from './kitchen-use.ts';
export { type PublishedPractice, practiceNear } from './published-practice.ts';
