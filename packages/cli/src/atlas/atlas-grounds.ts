import { sizesAssumption, sourceNames } from '@neckfall/answers';
import { landWarmingSinceNormalsC, planDefaults } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { AtlasSettings } from './settings.ts';

/** What a map rests on, in sentences. */
export type AtlasGrounds = { assumed: string[]; sources: string[] };

export function atlasGrounds(settings: AtlasSettings, speaker: Speaker): AtlasGrounds {
  const { say, number, quantity, dayLength } = speaker;
  const { stepDeg, years, seed, sunHours, warmerC } = settings;
  const warmer = quantity('temperatureDifference', Math.abs(warmerC ?? landWarmingSinceNormalsC));
  const way = warmerC === null || warmerC === 0 ? 'same' : warmerC > 0 ? 'warmer' : 'cooler';
  return {
    assumed: [
      say('mapping.points', { step: number(stepDeg, 3) }),
      say('mapping.years', { years, seed }),
      warmerC === null ? say('assumed.warmer', { warmer }) : say('assumed.warmer-given', { warmer, way }),
      sunHours === null ? say('assumed.open') : say('assumed.sun', { hours: dayLength(sunHours) }),
      sizesAssumption(planDefaults.water, speaker),
      say('mapping.sure'),
    ],
    sources: sourceNames(speaker),
  };
}
