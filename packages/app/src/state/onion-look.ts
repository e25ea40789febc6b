import type { OnionLook } from '@neckfall/pictures';
import { computed } from '@preact/signals';
import { onion } from './onion.ts';
import { asked } from './route.ts';

/** What the onion of the page is drawn with. */
export const onionLook = computed<OnionLook>(() => {
  const { cultivar } = onion.value;
  return {
    colour: cultivar?.colour ?? asked.value.skin ?? 'yellow',
    shape: cultivar?.shape ?? 'globe',
  };
});
