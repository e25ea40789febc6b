/** A point of the map's plane, in radii of the Earth: x to the right, y up. */
type PlanePoint = readonly [x: number, y: number];

/** An equal-area picture of the Earth: any two shapes of one area on the ground have one area on it. Degrees. */
export type Projection = {
  toPlane: (latitudeDeg: number, longitudeDeg: number) => PlanePoint;
  /** Null where no ground lies. */
  toGround: (x: number, y: number) => { latitudeDeg: number; longitudeDeg: number } | null;
};

const radians = (degrees: number) => (degrees * Math.PI) / 180;
const degrees = (angle: number) => (angle * 180) / Math.PI;

/** Turned so that it lies within half a turn of a meridian, degrees. */
export function besideMeridian(longitudeDeg: number, meridianDeg: number): number {
  return longitudeDeg - 360 * Math.round((longitudeDeg - meridianDeg) / 360);
}

const [a1, a2, a3, a4] = [1.340264, -0.081106, 0.000893, 0.003796];
const root3 = Math.sqrt(3);

/** Of the Earth as a whole. Source: Šavrič, Patterson & Jenny 2018, The Equal Earth map projection, eq. 1–5. */
export function equalEarth(meridianDeg: number): Projection {
  const height = (t: number, t2 = t * t, t6 = t2 ** 3) => t * (a1 + a2 * t2 + t6 * (a3 + a4 * t2));
  const slope = (t: number, t2 = t * t, t6 = t2 ** 3) => a1 + 3 * a2 * t2 + t6 * (7 * a3 + 9 * a4 * t2);
  return {
    toPlane(latitudeDeg, longitudeDeg) {
      const t = Math.asin((root3 / 2) * Math.sin(radians(latitudeDeg)));
      const east = radians(longitudeDeg - meridianDeg);
      return [(2 * root3 * east * Math.cos(t)) / (3 * slope(t)), height(t)];
    },
    toGround(x, y) {
      let t = y / a1;
      // Newton's steps; the fifth changes nothing that a screen shows
      for (let step = 0; step < 8; step++) t -= (height(t) - y) / slope(t);
      const sine = (2 * Math.sin(t)) / root3;
      if (!(Math.abs(sine) <= 1)) return null;
      const east = degrees((3 * x * slope(t)) / (2 * root3 * Math.cos(t)));
      if (Math.abs(east) > 180) return null;
      return { latitudeDeg: degrees(Math.asin(sine)), longitudeDeg: besideMeridian(meridianDeg + east, 0) };
    },
  };
}

/** Of a part of it, true at its middle. Source: Snyder 1987, USGS Professional Paper 1395, eq. 22-4, 24-2, 20-14, 20-15. */
export function lambertEqualArea(middleDeg: number, meridianDeg: number): Projection {
  const [sin1, cos1] = [Math.sin(radians(middleDeg)), Math.cos(radians(middleDeg))];
  return {
    toPlane(latitudeDeg, longitudeDeg) {
      const [sin, cos] = [Math.sin(radians(latitudeDeg)), Math.cos(radians(latitudeDeg))];
      const east = radians(longitudeDeg - meridianDeg);
      const k = Math.sqrt(2 / (1 + sin1 * sin + cos1 * cos * Math.cos(east)));
      return [k * cos * Math.sin(east), k * (cos1 * sin - sin1 * cos * Math.cos(east))];
    },
    toGround(x, y) {
      const far = Math.hypot(x, y);
      if (far > 2) return null;
      if (far === 0) return { latitudeDeg: middleDeg, longitudeDeg: besideMeridian(meridianDeg, 0) };
      const c = 2 * Math.asin(far / 2);
      const [sinC, cosC] = [Math.sin(c), Math.cos(c)];
      const north = Math.asin(Math.min(1, Math.max(-1, cosC * sin1 + (y * sinC * cos1) / far)));
      const east = Math.atan2(x * sinC, far * cos1 * cosC - y * sin1 * sinC);
      return {
        latitudeDeg: degrees(north),
        longitudeDeg: besideMeridian(meridianDeg + degrees(east), 0),
      };
    },
  };
}
