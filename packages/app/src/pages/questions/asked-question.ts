import { type CommonQuestion, commonQuestions } from '@neckfall/engine';
import { computed } from '@preact/signals';
import { asked } from '../../state/route.ts';

/** The question that is opened; the first where the address names none. */
export const opened = computed<CommonQuestion>(
  () => commonQuestions.find((question) => question === asked.value.shows) ?? commonQuestions[0],
);
