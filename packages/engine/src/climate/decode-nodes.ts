import { type ClimateField, type ClimateNodes, climateFields, type FieldColumns } from './climate-nodes.ts';
import { sitesAt } from './sites.ts';

/**
 * The climate file, once unzipped. All numbers little-endian.
 *
 *     bytes 0–3   "NFCL"
 *     byte  4     version (1)
 *     bytes 5–8   length of the head, uint32
 *     head        JSON, see {@link ClimateFileHead}
 *     columns     latitude, longitude, elevation, then each field's scores; a column is `nodes` low bytes, then
 *                 `nodes` high bytes of 16-bit differences to the node before, zigzag-coded, wrapping at 65,536
 */
export const climateFileMagic = 'NFCL';
/** The one version there is. */
export const climateFileVersion = 1;
/** Byte at which the head begins. */
export const climateFileHeadStart = 9;

/** The head of a climate file: what its columns are to be read by. */
export type ClimateFileHead = {
  nodes: number;
  /** Size of one unit in the position columns: degrees, degrees, m. */
  latitudeStep: number;
  longitudeStep: number;
  elevationStep: number;
  fields: Record<ClimateField, { step: number; mean: number[]; components: number[][] }>;
};

/** Reads an unzipped climate file. Throws an Error that says what is wrong with it. */
export function decodeClimateNodes(bytes: Uint8Array): ClimateNodes {
  const head = readHead(bytes);
  let offset = climateFileHeadStart + new DataView(bytes.buffer, bytes.byteOffset).getUint32(5, true);
  const columns = 3 + climateFields.reduce((sum, field) => sum + head.fields[field].components.length, 0);
  if (bytes.length !== offset + columns * 2 * head.nodes) {
    throw damaged(
      `it has ${bytes.length} bytes where its head announces ${offset + columns * 2 * head.nodes}`,
    );
  }
  const next = (step: number, out: Float64Array | Float32Array, first = 0, stride = 1) => {
    readColumn(bytes, offset, head.nodes, step, out, first, stride);
    offset += 2 * head.nodes;
  };
  const latitudeDeg = new Float64Array(head.nodes);
  const longitudeDeg = new Float64Array(head.nodes);
  const elevationM = new Float64Array(head.nodes);
  next(head.latitudeStep, latitudeDeg);
  next(head.longitudeStep, longitudeDeg);
  next(head.elevationStep, elevationM);
  const fields = {} as Record<ClimateField, FieldColumns>;
  for (const field of climateFields) {
    const { step, mean, components } = head.fields[field];
    const scores = new Float32Array(head.nodes * components.length);
    for (let c = 0; c < components.length; c++) next(step, scores, c, components.length);
    fields[field] = {
      mean: Float64Array.from(mean),
      components: components.map((component) => Float64Array.from(component)),
      scores,
    };
  }
  return { ...sitesAt(latitudeDeg, longitudeDeg, elevationM), latitudeDeg, longitudeDeg, fields };
}

function damaged(what: string): Error {
  return new Error(`climate file: ${what}; build it again with tools/climate/build.ts`);
}

function readHead(bytes: Uint8Array): ClimateFileHead {
  const magic = String.fromCharCode(...bytes.subarray(0, 4));
  if (bytes.length < climateFileHeadStart || magic !== climateFileMagic) {
    throw damaged(`it does not begin with ${climateFileMagic} (is it still zipped, or another file?)`);
  }
  if (bytes[4] !== climateFileVersion) {
    throw damaged(`it has version ${bytes[4]}, this program reads version ${climateFileVersion}`);
  }
  const length = new DataView(bytes.buffer, bytes.byteOffset).getUint32(5, true);
  let head: ClimateFileHead;
  try {
    head = JSON.parse(
      new TextDecoder().decode(bytes.subarray(climateFileHeadStart, climateFileHeadStart + length)),
    );
  } catch {
    throw damaged('its head is not JSON');
  }
  const missing = climateFields.filter((field) => !head.fields?.[field]);
  if (missing.length > 0) throw damaged(`its head has no ${missing.join(', ')}`);
  if (!Number.isInteger(head.nodes) || head.nodes < 1) throw damaged(`it announces ${head.nodes} nodes`);
  return head;
}

function readColumn(
  bytes: Uint8Array,
  offset: number,
  count: number,
  step: number,
  out: Float64Array | Float32Array,
  first: number,
  stride: number,
): void {
  let value = 0;
  for (let i = 0; i < count; i++) {
    const zigzag = bytes[offset + i] | (bytes[offset + count + i] << 8);
    const difference = (zigzag >>> 1) ^ -(zigzag & 1);
    value = ((value + difference) << 16) >> 16;
    out[first + i * stride] = value * step;
  }
}
