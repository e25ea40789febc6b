export {
  batchBytes,
  batchLines,
  gardenBytes,
  gardenEntries,
  longestCell,
  longestRecord,
  weatherBytes,
  weatherColumns,
  weatherLines,
} from './file-limits.ts';
