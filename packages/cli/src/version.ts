import { engineVersion } from '@neckfall/engine';

/** All packages share one version. */
export const version: string = engineVersion;
