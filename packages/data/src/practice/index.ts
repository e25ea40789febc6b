export { type PublishedPractice, practiceNear } from './published-practice.ts';
