export { StoreYear } from './store-year.tsx';
export { lotNames, storeTableOf, storeYearOf } from './store-year-of.ts';
