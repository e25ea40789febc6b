import { xoroshiro128plusFromState } from 'pure-rand/generator/xoroshiro128plus';

/** Numbers by chance that are the same for the same seed. */
export type RandomSource = {
  /** Uniform in the open interval (0, 1). */
  uniform(): number;
  /** Standard normal. */
  normal(): number;
};

/**
 * Deterministic random numbers from a whole-number seed: same seed, same sequence, on every machine.
 * Neighbouring seeds give unrelated sequences, so years can be seeded one after the other.
 */
export function randomSource(seed: number): RandomSource {
  const generator = xoroshiro128plusFromState([1, 2, 3, 4].map((word) => scrambled(seed, word)));
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

/**
 * A word of the generator's first state. Seeded with the bare number, the generator starts with several draws
 * near 1 and neighbouring seeds run side by side; the final mix of MurmurHash3 (Appleby, public domain;
 * constants from memory) breaks that up.
 */
function scrambled(seed: number, word: number): number {
  const folded = (seed | 0) + Math.imul(Math.floor(seed / 4294967296), 0x27d4eb2f);
  let h = folded + Math.imul(word, 0x9e3779b9);
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return h ^ (h >>> 16);
}
