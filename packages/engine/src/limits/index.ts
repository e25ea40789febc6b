export {
  batchBytes,
  batchLines,
  dailyLines,
  gardenBytes,
  gardenEntries,
  longestCell,
  longestRecord,
  weatherBytes,
  weatherColumns,
  weatherLines,
} from './file-limits.ts';
