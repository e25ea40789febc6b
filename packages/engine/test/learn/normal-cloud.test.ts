import { describe, expect, test } from 'vitest';
import { densityAt, drawFrom, fitCloud, standardCloud } from '../../src/learn/normal-cloud.ts';
import { mean, randomSource, standardDeviation } from '../../src/math/index.ts';

describe('a normal cloud', () => {
  test('standard, has the product of standard densities without the powers of 2π', () => {
    const point = Float64Array.of(0.3, -1.2, 2);
    const squares = 0.3 ** 2 + 1.2 ** 2 + 2 ** 2;
    expect(densityAt(standardCloud(3), point)).toBeCloseTo(Math.exp(-squares / 2), 12);
  });

  test('fitted to points with one weight has their mean, and a third more than their variance', () => {
    const random = randomSource(3);
    const points = Array.from({ length: 4000 }, () => {
      const a = random.normal();
      return Float64Array.of(2 + a, -1 + 0.5 * a + 0.2 * random.normal());
    });
    const cloud = fitCloud(points, new Float64Array(points.length).fill(1), 0.01);
    const drawn = Array.from({ length: 4000 }, () => drawFrom(cloud, random));
    const column = (of: readonly Float64Array[], at: number) => Float64Array.from(of, (point) => point[at]);
    for (const at of [0, 1]) {
      expect(mean(column(drawn, at))).toBeCloseTo(mean(column(points, at)), 1);
      const ratio = standardDeviation(column(drawn, at)) / standardDeviation(column(points, at));
      expect(ratio ** 2).toBeGreaterThan(1.2);
      expect(ratio ** 2).toBeLessThan(1.4);
    }
    // they hang together as the points do
    const slope = (of: readonly Float64Array[]) => {
      const [xs, ys] = [column(of, 0), column(of, 1)];
      const [mx, my] = [mean(xs), mean(ys)];
      let xy = 0;
      let xx = 0;
      xs.forEach((x, i) => {
        xy += (x - mx) * (ys[i] - my);
        xx += (x - mx) ** 2;
      });
      return xy / xx;
    };
    expect(slope(drawn)).toBeCloseTo(slope(points), 1);
  });

  test('never gets narrower than asked', () => {
    const same = Array.from({ length: 50 }, () => Float64Array.of(1, 1));
    const cloud = fitCloud(same, new Float64Array(50).fill(1), 0.05);
    expect(cloud.root[0][0]).toBeCloseTo(0.05, 12);
    expect(cloud.root[1][1]).toBeCloseTo(0.05, 12);
  });
});
