import { describe, expect, it } from 'vitest';
import { climateFields, decodeClimateNodes } from '../../src/climate/index.ts';

/** A file of two nodes written by hand: one component a field, every step 1. */
function smallFile(change: (head: Record<string, unknown>) => void = () => {}): Uint8Array {
  const field = { step: 1, mean: new Array(12).fill(10), components: [new Array(12).fill(0.5)] };
  const head: Record<string, unknown> = {
    nodes: 2,
    latitudeStep: 0.001,
    longitudeStep: 0.01,
    elevationStep: 5,
    fields: Object.fromEntries(climateFields.map((name) => [name, field])),
  };
  change(head);
  const text = new TextEncoder().encode(JSON.stringify(head));
  // zigzag differences, low bytes of both nodes, then high bytes
  const latitude = [20000 & 0xff, 1, 20000 >> 8, 0]; // +10,000 steps, then −1
  const longitude = [3, 0, 0, 0]; // −2 steps, then 0
  const elevation = [200, 2, 0, 0]; // +100 steps, then +1
  const scores = climateFields.flatMap(() => [4, 1, 0, 0]); // +2, then −1
  return Uint8Array.from([
    ...new TextEncoder().encode('NFCL'),
    1,
    text.length & 0xff,
    text.length >> 8,
    0,
    0,
    ...text,
    ...latitude,
    ...longitude,
    ...elevation,
    ...scores,
  ]);
}

describe('climate file', () => {
  it('is read column by column', () => {
    const nodes = decodeClimateNodes(smallFile());
    expect(nodes.count).toBe(2);
    expect(nodes.latitudeDeg[0]).toBeCloseTo(10, 9);
    expect(nodes.latitudeDeg[1]).toBeCloseTo(9.999, 9);
    expect([...nodes.longitudeDeg]).toEqual([-0.02, -0.02]);
    expect([...nodes.elevationM]).toEqual([500, 505]);
    expect([...nodes.fields.rainMm.scores]).toEqual([2, 1]);
    expect(nodes.fields.rainMm.mean[11]).toBe(10);
  });

  it.each<[string, Uint8Array, string]>([
    ['another file', new TextEncoder().encode('PNG and so on, long enough'), 'does not begin with NFCL'],
    ['nothing', new Uint8Array(0), 'does not begin with NFCL'],
    ['a later version', smallFile().map((byte, i) => (i === 4 ? 9 : byte)), 'version 9'],
    ['a file cut short', smallFile().subarray(0, -3), 'where its head announces'],
    ['a broken head', smallFile().map((byte, i) => (i === 9 ? 0 : byte)), 'head is not JSON'],
    [
      'a head without a field',
      smallFile((head) => delete (head.fields as Record<string, unknown>).rainMm),
      'no rainMm',
    ],
    [
      'no nodes',
      smallFile((head) => {
        head.nodes = 0;
      }),
      'announces 0 nodes',
    ],
  ])('refuses %s, saying why', (_, bytes, message) => {
    expect(() => decodeClimateNodes(bytes)).toThrow(message);
  });
});
