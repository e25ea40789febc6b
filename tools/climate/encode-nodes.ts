import {
  type ClimateField,
  type ClimateFileHead,
  climateFields,
  climateFileHeadStart,
  climateFileMagic,
  climateFileVersion,
} from '../../packages/engine/src/climate/index.ts';
import { type NodePositions, positionSteps } from './place-nodes.ts';
import { principalComponents } from './principal-components.ts';

/**
 * What rounding a field may cost, root mean square over nodes and months, in the field's unit (√mm for rain): once
 * for the components left out, once for the scores' steps.
 */
const roundingError: Record<ClimateField, number> = {
  tempMeanC: 0.05,
  tempRangeC: 0.05,
  rainMm: 0.05,
  wetDays: 0.06,
  relativeHumidityPct: 0.2,
  sunshinePct: 0.2,
  wind10mMs: 0.025,
  frostNights: 0.04,
};

/** The climate file, unzipped; its form is described at `decodeClimateNodes`. */
export function encodeNodes(
  positions: NodePositions,
  values: Record<ClimateField, Float64Array>,
): Uint8Array {
  const nodes = positions.latitudeDeg.length;
  const columns: Uint8Array[] = [
    column(positions.latitudeDeg, positionSteps.latitudeStep),
    column(positions.longitudeDeg, positionSteps.longitudeStep),
    column(positions.elevationM, positionSteps.elevationStep),
  ];
  const fields = {} as ClimateFileHead['fields'];
  for (const field of climateFields) {
    const rows = values[field];
    const { mean, components, variances } = principalComponents(rows, 12);
    const error = roundingError[field];
    let kept = 12;
    for (let left = 0; kept > 1; kept--) {
      left += variances[kept - 1];
      if (left > 12 * error * error) break;
    }
    // a step rounds a score by step/√12; `kept` of them over 12 months give a root mean square of step·√kept/12
    const step = Number(((error * 12) / Math.sqrt(kept)).toPrecision(3));
    const shown = components
      .slice(0, kept)
      .map((component) => component.map((value) => Number(value.toFixed(5))));
    fields[field] = { step, mean: mean.map((value) => Number(value.toFixed(3))), components: shown };
    for (const component of shown) {
      const scores = new Float64Array(nodes);
      for (let i = 0; i < nodes; i++) {
        for (let m = 0; m < 12; m++) scores[i] = scores[i] + (rows[i * 12 + m] - mean[m]) * component[m];
      }
      columns.push(column(scores, step));
    }
  }
  const head: ClimateFileHead = { nodes, ...positionSteps, fields };
  return file(new TextEncoder().encode(JSON.stringify(head)), columns);
}

function column(values: Float64Array, step: number): Uint8Array {
  const count = values.length;
  const bytes = new Uint8Array(count * 2);
  let before = 0;
  for (let i = 0; i < count; i++) {
    const units = Math.round(values[i] / step);
    if (units < -32768 || units > 32767)
      throw new RangeError(`climate file: ${values[i]} does not fit into 16 bits of ${step}`);
    const difference = ((units - before) << 16) >> 16;
    const zigzag = ((difference << 1) ^ (difference >> 15)) & 0xffff;
    bytes[i] = zigzag & 0xff;
    bytes[count + i] = zigzag >> 8;
    before = units;
  }
  return bytes;
}

function file(head: Uint8Array, columns: Uint8Array[]): Uint8Array {
  const length = columns.reduce((sum, bytes) => sum + bytes.length, climateFileHeadStart + head.length);
  const bytes = new Uint8Array(length);
  bytes.set(new TextEncoder().encode(climateFileMagic));
  bytes[4] = climateFileVersion;
  new DataView(bytes.buffer).setUint32(5, head.length, true);
  bytes.set(head, climateFileHeadStart);
  let offset = climateFileHeadStart + head.length;
  for (const part of columns) {
    bytes.set(part, offset);
    offset += part.length;
  }
  return bytes;
}
