export { acosClamped, asinClamped, clamp, clamp01, degreesToRadians, lerp } from './scalar.ts';
export { mean, quantileSorted, standardDeviation } from './sample.ts';
export { normalCdf, normalQuantile } from './normal.ts';
export { randomSource, type RandomSource } from './random.ts';
