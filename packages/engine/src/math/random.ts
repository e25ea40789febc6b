import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

export type RandomSource = {
  /** Uniform in the open interval (0, 1). */
  uniform(): number;
  /** Standard normal. */
  normal(): number;
};

/** Deterministic random numbers from a whole-number seed: same seed, same sequence, on every machine. */
export function randomSource(seed: number): RandomSource {
  const generator = xoroshiro128plus(seed);
  let spare = Number.NaN;
  const uniform = () => ((generator.next() >>> 0) + 0.5) / 4294967296;
  return {
    uniform,
    normal() {
      if (!Number.isNaN(spare)) {
        const value = spare;
        spare = Number.NaN;
        return value;
      }
      // Marsaglia's polar method: no trigonometry, so results do not hang on the platform's sine.
      for (;;) {
        const u = 2 * uniform() - 1;
        const v = 2 * uniform() - 1;
        const s = u * u + v * v;
        if (s > 0 && s < 1) {
          const factor = Math.sqrt((-2 * Math.log(s)) / s);
          spare = v * factor;
          return u * factor;
        }
      }
    },
  };
}
