import type { FittedClimate } from './monthly-climate.ts';
import type { Sites } from './sites.ts';

/** A quantity of the climatology that is fitted and stored. */
export type ClimateField = Exclude<keyof FittedClimate, 'latitudeDeg' | 'longitudeDeg' | 'elevationM'>;

/** Cooling with height that the fit takes out of mean temperature before nodes are blended, °C per m (`model.md` §1: 5.5 °C/km). */
export const lapseCPerM = 0.0055;

/**
 * How each field is held in the nodes: `sea-level` mean temperature is brought to sea level by
 * {@link lapseCPerM}; `root` holds the square root, so that dry places keep their small figures.
 */
export const fieldForms: Record<ClimateField, 'plain' | 'root' | 'sea-level'> = {
  tempMeanC: 'sea-level',
  tempRangeC: 'plain',
  rainMm: 'root',
  wetDays: 'plain',
  relativeHumidityPct: 'plain',
  sunshinePct: 'plain',
  wind10mMs: 'plain',
  frostNights: 'plain',
};

/** The quantities, in the order in which they are stored. */
export const climateFields = Object.keys(fieldForms) as ClimateField[];

/** A field's year at every node: mean + Σ score × component, twelve months each. */
export type FieldColumns = {
  mean: Float64Array;
  /** Principal components of the year, most important first. */
  components: Float64Array[];
  /** One score a component, node after node. */
  scores: Float32Array;
};

/** The fitted climatology: points of our own, each smoothed from the stations around it. */
export type ClimateNodes = Sites & {
  latitudeDeg: Float64Array;
  longitudeDeg: Float64Array;
  fields: Record<ClimateField, FieldColumns>;
};
