import type { CauseTrial, Saying } from './trials.ts';
import { changed } from './trials.ts';

/** How often a bed that nobody told of goes dry, is crowded or stands in shade; how often one that is said to be watered goes dry (memory). */
const unsaid = { dry: 0.1, saidWatered: 0.03, crowded: 0.08, shaded: 0.06 } as const;
/** Spacing at which bulbs are not crowded; that from which they are (seen: about 75 plants per m² suits ordinary bulbs); that of a bed that nobody thinned, plants per m² (common practice, no source). */
const usualPerM2 = 40;
const crowdedFromPerM2 = 75;
const unthinnedPerM2 = 140;
/** Sun under which a bed is in shade, and that of one that is, h at midsummer (common practice, no source: six hours). */
const shadeUnderH = 8;
const shadedH = 3.5;

/** What a bed gives its crop: water, room and sun. */
export function bedTrials({ trial, said }: Saying): CauseTrial[] {
  const { plan } = trial;
  return [
    plan.water === 'rain'
      ? {
          cause: 'thirst',
          prior: 1,
          told: true,
          without: [{ trial: changed(trial, { water: 'watered' }), change: { code: 'watered' } }],
        }
      : {
          cause: 'thirst',
          prior: said.has('water') ? unsaid.saidWatered : unsaid.dry,
          told: false,
          within: [changed(trial, { water: 'rain' })],
          change: { code: 'watered' },
        },
    ...crowding({ trial, said }),
    ...shade({ trial, said }),
  ];
}

function crowding({ trial, said }: Saying): CauseTrial[] {
  const { densityPerM2 } = trial.plan;
  const change = { code: 'wider', perM2: usualPerM2 } as const;
  if (densityPerM2 > crowdedFromPerM2)
    return [
      {
        cause: 'crowding',
        prior: 1,
        told: true,
        without: [{ trial: changed(trial, { densityPerM2: usualPerM2 }), change }],
      },
    ];
  if (said.has('densityPerM2')) return [];
  const within = [changed(trial, { densityPerM2: unthinnedPerM2 })];
  return [{ cause: 'crowding', prior: unsaid.crowded, told: false, within, change }];
}

function shade({ trial, said }: Saying): CauseTrial[] {
  const { sunHours } = trial.plan;
  const change = { code: 'in-sun' } as const;
  if (sunHours !== null && sunHours < shadeUnderH)
    return [
      {
        cause: 'shade',
        prior: 1,
        told: true,
        without: [{ trial: changed(trial, { sunHours: null }), change }],
      },
    ];
  if (said.has('sunHours')) return [];
  const within = [changed(trial, { sunHours: shadedH })];
  return [{ cause: 'shade', prior: unsaid.shaded, told: false, within, change }];
}
