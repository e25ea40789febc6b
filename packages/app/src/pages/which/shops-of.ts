import { computed } from '@preact/signals';
import { country } from '../../state/place.ts';
import { asked } from '../../state/route.ts';

/** The country in whose shops names are looked for; null where the reader has said which names they can get. */
export const shopsOf = computed(() => (asked.value.have === null ? country.value : null));
