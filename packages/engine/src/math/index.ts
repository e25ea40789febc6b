export { evenNormals, shuffled } from './even-normals.ts';
export { normalCdf, normalQuantile } from './normal.ts';
export { type RandomSource, randomSource } from './random.ts';
export { mean, quantileSorted, standardDeviation } from './sample.ts';
export { acosClamped, asinClamped, clamp, clamp01, degreesToRadians, lerp } from './scalar.ts';
