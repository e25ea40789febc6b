import { type Ground, gardenRanges, type WateringWay, wateringWays } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { parseChoice } from '../values/choice.ts';
import { parseNumber } from '../values/number.ts';

/** What may be said of the bed and its water, as commander gives it. */
export type RawWaterOptions = {
  bedM2?: string;
  watering?: string;
  flow?: string;
  efficiency?: string;
  salt?: string;
};

/** Sizes of a bed, m²: from a tub to a field. */
const areas = [0.01, 1_000_000] as const;
/** Shares of the water let out that may come to the roots. */
export const efficiencies = [0.1, 1] as const;

export type WaterAsked = {
  /** What is said, and nothing of what is not. */
  ground: Partial<Pick<Ground, 'areaM2' | 'watering' | 'flowLPerH' | 'waterSaltDsPerM'>>;
  efficiency: number | null;
};

export function readWaterOptions(raw: RawWaterOptions, speaker: Speaker): WaterAsked {
  const number = (
    text: string | undefined,
    field: string,
    [min, max]: readonly [number, number],
    unit?: string,
  ) => (text === undefined ? undefined : parseNumber(text, { field, min, max, ...(unit && { unit }) }));
  const said = {
    areaM2: number(raw.bedM2, '--bed-m2', areas, 'm²'),
    watering: wayOf(raw.watering, speaker),
    flowLPerH: number(raw.flow, '--flow', gardenRanges.flowLPerH, 'l/h'),
    waterSaltDsPerM: number(raw.salt, '--salt', gardenRanges.waterSaltDsPerM, 'dS/m'),
  };
  return {
    ground: Object.fromEntries(Object.entries(said).filter(([, value]) => value !== undefined)),
    efficiency: number(raw.efficiency, '--efficiency', efficiencies) ?? null,
  };
}

function wayOf(text: string | undefined, speaker: Speaker): WateringWay | undefined {
  return text === undefined ? undefined : parseChoice(text, '--watering', wateringWays, speaker);
}
