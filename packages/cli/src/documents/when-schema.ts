import * as v from 'valibot';
import {
  dateRange,
  dayLengthClass,
  head,
  monthDay,
  onionType,
  practice,
  range,
  seasonShares,
  startMethod,
  verdict,
} from './schema-parts.ts';

export const whenSchema = v.object({
  schema: v.literal('neckfall/when@1'),
  ...head,
  plan: v.object({
    class: dayLengthClass,
    type: onionType,
    cultivar: v.nullable(v.string()),
    start: startMethod,
    ...practice,
  }),
  starts: v.pipe(
    v.array(
      v.object({
        date: monthDay,
        dayOfYear: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(358)),
        seasonShares,
        outcome: verdict,
        gamble: v.boolean(),
        onset: dateRange,
        neckFall: dateRange,
        bulbDiameterMm: range,
        leavesMadeAtOnset: range,
        boltedPlantsShare: range,
      }),
    ),
    v.length(52),
  ),
  windows: v.array(v.object({ from: monthDay, to: monthDay, best: monthDay })),
  reason: v.string(),
});

export type WhenDocument = v.InferOutput<typeof whenSchema>;
