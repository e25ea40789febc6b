import {
  fertilities,
  gardenRanges,
  gardenSchemaName,
  jobMarkStates,
  likes,
  longestNote,
  mostWeatherDays,
  type ObservedNumber,
  observedNumbers,
  planFields,
  soilTextures,
  storePlaces,
  wateringWays,
} from '@neckfall/engine';
import * as v from 'valibot';
import { dayLengthClass, fullDate, startMethod } from './schema-parts.ts';

const id = v.pipe(v.string(), v.minLength(1));
const name = v.pipe(v.string(), v.minLength(1));
const numberIn = ([low, high]: readonly [number, number]) =>
  v.pipe(v.number(), v.minValue(low), v.maxValue(high));
const orNull = (range: readonly [number, number]) => v.nullable(numberIn(range));
const optionalNumber = (range: readonly [number, number]) => v.optional(numberIn(range));
/** A value a day, null where none was measured. */
const days = (range: readonly [number, number]) =>
  v.pipe(v.array(orNull(range)), v.minLength(1), v.maxLength(mostWeatherDays));
/** N-P-K as bags print it. */
const npk = /^\d{1,3}(\.\d{1,2})?-\d{1,3}(\.\d{1,2})?-\d{1,3}(\.\d{1,2})?$/;
const r = gardenRanges;

/** What was seen of a planting on a day; only what was noted is there. */
export const observationSchema = v.looseObject({
  id,
  plantingId: v.nullable(v.string()),
  date: fullDate,
  ...(Object.fromEntries(observedNumbers.map((field) => [field, optionalNumber(r[field])])) as Record<
    ObservedNumber,
    ReturnType<typeof optionalNumber>
  >),
  fedProduct: v.optional(v.pipe(v.string(), v.regex(npk))),
  lifted: v.optional(v.literal(true)),
  note: v.optional(v.pipe(v.string(), v.minLength(1), v.maxLength(longestNote))),
});

/** A garden as it is after restoring. Fields not named here may stand beside these, and stay. */
export const gardenSchema = v.looseObject({
  schema: v.literal(gardenSchemaName),
  places: v.array(
    v.looseObject({
      id,
      name,
      latitudeDeg: numberIn(r.latitudeDeg),
      longitudeDeg: numberIn(r.longitudeDeg),
      elevationM: orNull(r.elevationM),
      sunHours: orNull(r.sunHours),
      frostHollow: v.nullable(v.boolean()),
    }),
  ),
  beds: v.array(
    v.looseObject({
      id,
      name,
      placeId: v.nullable(name),
      lengthM: orNull(r.lengthM),
      widthM: orNull(r.widthM),
      soil: v.nullable(v.picklist(soilTextures)),
      sunHours: orNull(r.sunHours),
      cover: v.nullable(v.picklist(planFields.cover.words)),
      water: v.nullable(v.picklist(planFields.water.words)),
      watering: v.nullable(v.picklist(wateringWays)),
      flowLPerH: orNull(r.flowLPerH),
      waterSaltDsPerM: orNull(r.waterSaltDsPerM),
      fertility: v.nullable(v.picklist(fertilities)),
      compostKgPerM2: orNull(r.compostKgPerM2),
      afterLegume: v.nullable(v.boolean()),
      soilPh: orNull(r.soilPh),
      feedProduct: v.nullable(name),
      alliumYears: v.array(v.pipe(numberIn(r.allium), v.integer())),
      whiteRot: v.nullable(v.boolean()),
    }),
  ),
  cultivars: v.array(
    v.looseObject({
      id,
      name,
      class: v.nullable(dayLengthClass),
      packetHours: orNull(r.packetHours),
      packetDays: orNull(r.packetDays),
      /** Shortest and longest. */
      keepsMonths: v.nullable(v.pipe(v.array(numberIn(r.keepsMonths)), v.length(2))),
    }),
  ),
  plantings: v.array(
    v.looseObject({
      id,
      name,
      placeId: v.nullable(name),
      bedId: v.nullable(name),
      cultivar: v.nullable(name),
      class: v.nullable(dayLengthClass),
      packetHours: orNull(r.packetHours),
      packetDays: orNull(r.packetDays),
      start: v.nullable(startMethod),
      startDate: v.nullable(fullDate),
      plantOutDate: v.nullable(fullDate),
      rowDistanceCm: orNull(r.rowDistanceCm),
      plantDistanceCm: orNull(r.plantDistanceCm),
      plants: orNull(r.plants),
      plantsPerStation: orNull(r.plantsPerStation),
      setSizeMm: orNull(r.setSizeMm),
      setStore: v.nullable(v.picklist(planFields.setStore.words)),
      cover: v.nullable(v.picklist(planFields.cover.words)),
      water: v.nullable(v.picklist(planFields.water.words)),
      soil: v.nullable(v.picklist(soilTextures)),
      nurseryTempC: orNull(r.nurseryTempC),
      lampHours: orNull(r.lampHours),
      learntFrom: v.nullable(name),
    }),
  ),
  observations: v.array(observationSchema),
  jobs: v.array(
    v.looseObject({
      id,
      plantingId: v.nullable(v.string()),
      job: name,
      state: v.picklist(jobMarkStates),
      date: fullDate,
      /** Where it was put off. */
      until: v.optional(fullDate),
    }),
  ),
  weather: v.array(
    v.looseObject({
      id,
      placeId: v.nullable(v.string()),
      firstDate: fullDate,
      tempMinC: days(r.tempMinC),
      tempMaxC: days(r.tempMaxC),
      rainMm: days(r.rainMm),
      solarMJ: days(r.solarMJ),
      forecastFrom: v.nullable(fullDate),
      sources: v.array(
        v.looseObject({ name: v.string(), format: v.nullable(v.string()), from: fullDate, to: fullDate }),
      ),
    }),
  ),
  /** The household that is to be kept in onions. */
  kitchen: v.nullable(
    v.looseObject({
      people: orNull(r.people),
      gramsPerWeek: orNull(r.gramsPerWeek),
      store: v.nullable(v.picklist(storePlaces)),
      storeTempC: orNull(r.storeTempC),
      storeHumidityPct: orNull(r.storeHumidityPct),
      storeReadings: v.array(
        v.looseObject({
          date: fullDate,
          store: v.picklist(storePlaces),
          tempC: numberIn(r.storeTempC),
          humidityPct: orNull(r.humidityPct),
        }),
      ),
      likes: v.array(v.picklist(likes)),
    }),
  ),
});
