import type { Say } from '@neckfall/words';

/** An invented garden with invented people, at a real point: a slope above the Wye in the Welsh borders. */
export const demoGarden = {
  at: '52.08,-3.13,160',
  sunHours: 14,
  plan: ['--start', 'raised-seedlings', '--class', 'long', '--date', '02-20', '--soil', 'silt-loam'],
} as const;

export function demoLines(say: Say): string[] {
  return [say('demo.title'), say('demo.people'), say('demo.own')];
}
