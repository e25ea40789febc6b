import { toJsonSchema } from '@valibot/to-json-schema';
import { answersSchema } from '../src/documents/answers-schema.ts';
import { atlasSchema } from '../src/documents/atlas-schema.ts';
import { cultivarsSchema } from '../src/documents/cultivars-schema.ts';
import { feedSchema } from '../src/documents/feed-schema.ts';
import { gardenSchema } from '../src/documents/garden-schema.ts';
import { handoutSchema } from '../src/documents/handout-schema.ts';
import { jobsSchema } from '../src/documents/jobs-schema.ts';
import { keepSchema } from '../src/documents/keep-schema.ts';
import { answersLineSchema, seasonLineSchema, whereLineSchema } from '../src/documents/line-schema.ts';
import { recordSchema } from '../src/documents/record-schema.ts';
import { seasonSchema } from '../src/documents/season-schema.ts';
import { waterSchema } from '../src/documents/water-schema.ts';
import { weatherSchema } from '../src/documents/weather-schema.ts';
import { whenSchema } from '../src/documents/when-schema.ts';
import { whereSchema } from '../src/documents/where-schema.ts';
import { whichSchema } from '../src/documents/which-schema.ts';
import { whySchema } from '../src/documents/why-schema.ts';

/** JSON Schemas of the documents, by the name in their `schema` field. */
export const publishedSchemas = {
  where: toJsonSchema(whereSchema),
  season: toJsonSchema(seasonSchema),
  when: toJsonSchema(whenSchema),
  which: toJsonSchema(whichSchema),
  weather: toJsonSchema(weatherSchema),
  water: toJsonSchema(waterSchema),
  cultivars: toJsonSchema(cultivarsSchema),
  garden: toJsonSchema(gardenSchema),
  feed: toJsonSchema(feedSchema),
  record: toJsonSchema(recordSchema),
  jobs: toJsonSchema(jobsSchema),
  keep: toJsonSchema(keepSchema),
  why: toJsonSchema(whySchema),
  atlas: toJsonSchema(atlasSchema),
  handout: toJsonSchema(handoutSchema),
  answers: toJsonSchema(answersSchema),
  'answers-line': toJsonSchema(answersLineSchema),
  'season-line': toJsonSchema(seasonLineSchema),
  'where-line': toJsonSchema(whereLineSchema),
};
