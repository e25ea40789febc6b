import { type DayLengthClass, dayLengthClasses, type StartMethod, startMethods } from '../plant/index.ts';
import { type PlanForm, planFields } from '../season/index.ts';
import { isDate } from './observation.ts';
import {
  nameAndId,
  numberOrNull,
  type RestoreEntry,
  textOrNull,
  type Unknown,
  wordOrNull,
} from './restoring.ts';

/** A crop as planned or grown; null where nothing was said and the usual holds. */
export type GardenPlanting = Unknown & {
  id: string;
  name: string;
  /** Id of a place of the same garden. */
  placeId: string | null;
  /** Id of a bed of the same garden. */
  bedId: string | null;
  /** An onion by its name, of the garden's own or of the catalogue. */
  cultivar: string | null;
  class: DayLengthClass | null;
  packetHours: number | null;
  packetDays: number | null;
  start: StartMethod | null;
  /** ISO dates. */
  startDate: string | null;
  plantOutDate: string | null;
  /** Distances from row to row and from plant to plant in the row. */
  rowDistanceCm: number | null;
  plantDistanceCm: number | null;
  plants: number | null;
  /** Plants that stand together at each distance: a clump, or a cell sown with several seeds; null: one. */
  plantsPerStation: number | null;
  setSizeMm: number | null;
  setStore: PlanForm['setStore'] | null;
  cover: PlanForm['cover'] | null;
  water: PlanForm['water'] | null;
  soil: PlanForm['soil'] | null;
  nurseryTempC: number | null;
  lampHours: number | null;
  /** Id of an earlier planting of the same onion and place, whose season says what to expect of this one. */
  learntFrom: string | null;
};

export const restorePlanting: RestoreEntry<GardenPlanting> = (found, path, tell, at) => {
  const number = (field: Parameters<typeof numberOrNull>[1]) => numberOrNull(found, field, path, tell);
  const word = <Word extends string>(field: string, words: readonly Word[]) =>
    wordOrNull(found, field, words, path, tell);
  const text = (field: string, isFit?: (text: string) => boolean) =>
    textOrNull(found, field, path, tell, isFit);
  return {
    ...found,
    ...nameAndId(found, path, tell, at),
    placeId: text('placeId'),
    bedId: text('bedId'),
    cultivar: text('cultivar'),
    class: word('class', dayLengthClasses),
    packetHours: number('packetHours'),
    packetDays: number('packetDays'),
    start: word('start', startMethods),
    startDate: text('startDate', isDate),
    plantOutDate: text('plantOutDate', isDate),
    rowDistanceCm: number('rowDistanceCm'),
    plantDistanceCm: number('plantDistanceCm'),
    plants: number('plants'),
    plantsPerStation: number('plantsPerStation'),
    setSizeMm: number('setSizeMm'),
    setStore: word('setStore', planFields.setStore.words),
    cover: word('cover', planFields.cover.words),
    water: word('water', planFields.water.words),
    soil: word('soil', planFields.soil.words),
    nurseryTempC: number('nurseryTempC'),
    lampHours: number('lampHours'),
    learntFrom: text('learntFrom'),
  };
};
