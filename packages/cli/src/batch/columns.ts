import { planFields } from '@neckfall/engine';
import type { RawSeason } from '../answer/season-answer.ts';

type PlanColumn = { flag: string; option: keyof RawSeason };

const planColumns = {
  class: { flag: '--class', option: 'class' },
  cultivar: { flag: '--cultivar', option: 'cultivar' },
  start: { flag: '--start', option: 'start' },
  date: { flag: '--date', option: 'date' },
  plant_out: { flag: '--plant-out', option: 'plantOut' },
  density_per_m2: { flag: `--${planFields.densityPerM2.name}`, option: 'density' },
  set_size_mm: { flag: `--${planFields.setSizeMm.name}`, option: 'setSize' },
  set_store: { flag: `--${planFields.setStore.name}`, option: 'setStore' },
  cover: { flag: `--${planFields.cover.name}`, option: 'cover' },
  sun_hours: { flag: '--sun', option: 'sun' },
  water: { flag: `--${planFields.water.name}`, option: 'water' },
} as const satisfies Record<string, PlanColumn>;

/** Columns of a batch that stand for an option of the command. */
export const optionColumns = Object.entries(planColumns) as [keyof typeof planColumns, PlanColumn][];

const sheetColumns = ['place', 'name', 'heading', 'note', 'paper', 'units', 'lang'] as const;

export type Column =
  | 'id'
  | 'latitude'
  | 'longitude'
  | 'elevation_m'
  | keyof typeof planColumns
  | (typeof sheetColumns)[number];

const placeColumns: readonly Column[] = ['id', 'latitude', 'longitude', 'elevation_m'];

export type BatchCommand = 'season' | 'where' | 'handout' | 'answer';

export const columnsOf: Record<BatchCommand, readonly Column[]> = {
  where: placeColumns,
  answer: placeColumns,
  handout: [...placeColumns, ...sheetColumns],
  season: [...placeColumns, ...optionColumns.map(([column]) => column)],
};

const columnOfFlag = new Map<string, string>([
  ...optionColumns.map(([column, { flag }]): [string, string] => [flag, column]),
  ['--units', 'units'],
  ['--lang', 'lang'],
]);

/** What an option is called in a table; anything else keeps its name. */
export function columnName(flag: string): string {
  return flag === '--at' ? 'latitude, longitude' : (columnOfFlag.get(flag) ?? flag);
}
