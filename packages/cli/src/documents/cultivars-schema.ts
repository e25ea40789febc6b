import { colours, cropKinds, cultivarUses, maturities, shapes, typeReasons } from '@neckfall/data';
import * as v from 'valibot';
import { dayLengthClass, head, onionType, positive, share, startMethod } from './schema-parts.ts';

const number = v.nullable(v.number());
const sentence = v.pipe(v.string(), v.minLength(1));

export const cultivarsSchema = v.object({
  schema: v.literal('neckfall/cultivars@1'),
  engine: head.engine,
  place: v.null(),
  assumed: head.assumed,
  warnings: head.warnings,
  sources: head.sources,
  asked: v.object({
    name: v.nullable(v.string()),
    find: v.nullable(v.string()),
    class: v.nullable(dayLengthClass),
    colour: v.nullable(v.picklist(colours)),
  }),
  cultivars: v.array(
    v.object({
      id: v.pipe(v.string(), v.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/)),
      name: sentence,
      aliases: v.array(sentence),
      kind: v.picklist(cropKinds),
      class: dayLengthClass,
      type: onionType,
      argued: v.array(v.picklist(typeReasons)),
      need: v.nullable(
        v.object({
          fromH: positive,
          toH: positive,
          light: v.picklist(['sun-up', 'twilight', 'lamps', 'onset-seen']),
          latitudeDeg: number,
        }),
      ),
      colour: v.nullable(v.picklist(colours)),
      shape: v.nullable(v.picklist(shapes)),
      uses: v.array(v.picklist(cultivarUses)),
      mild: v.nullable(v.boolean()),
      maturity: v.nullable(v.picklist(maturities)),
      daysToMaturity: v.nullable(
        v.object({
          fromDays: positive,
          toDays: positive,
          since: v.picklist(['sowing', 'transplanting', 'set-planting']),
        }),
      ),
      hybrid: v.nullable(v.boolean()),
      bolting: v.nullable(v.picklist(['slow', 'ready'])),
      keepsMonths: v.pipe(v.array(positive), v.length(2)),
      keepsFrom: v.picklist(['cultivar', 'type']),
      dryMatterShare: v.nullable(share),
      regions: v.array(sentence),
      /** ISO 3166-1 alpha-2 codes. */
      soldIn: v.array(v.pipe(v.string(), v.regex(/^[A-Z]{2}$/))),
      starts: v.array(startMethod),
      /** What it does otherwise than its type when a season is tried. */
      traits: v.object({
        criticalPhotoperiodH: number,
        ripeningFactor: number,
        boltingFactor: number,
        dryMatterShare: number,
      }),
      /** For each field that is known the key of a source below, or "memory". */
      origins: v.record(v.string(), sentence),
    }),
  ),
  sourcesByKey: v.record(v.string(), v.object({ title: sentence, url: sentence })),
});

export type CultivarsDocument = v.InferOutput<typeof cultivarsSchema>;
export type CultivarsAsked = CultivarsDocument['asked'];
