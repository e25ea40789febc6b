/** Coastlines, each a closed ring of longitude and latitude in turn, degrees. */
export type LandOutline = readonly Float32Array[];

/** Reads the asset: rings of differences from point to point in steps of a degree. */
export function readLandOutline(text: string): LandOutline {
  const { stepsPerDegree, rings } = JSON.parse(text) as { stepsPerDegree: number; rings: number[][] };
  return rings.map((differences) => {
    const ring = new Float32Array(differences.length);
    let [x, y] = [0, 0];
    for (let at = 0; at < differences.length; at += 2) {
      x += differences[at];
      y += differences[at + 1];
      ring[at] = x / stepsPerDegree;
      ring[at + 1] = y / stepsPerDegree;
    }
    return ring;
  });
}
