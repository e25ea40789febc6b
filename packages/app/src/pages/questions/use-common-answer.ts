import type { CommonAnswer } from '@neckfall/engine';
import { ask, askLong } from '../../ask/ask.ts';
import { type Known, useAnswer } from '../../ask/use-answer.ts';
import { gardenStanding, ownOnions } from '../../state/garden.ts';
import { household } from '../../state/kitchen.ts';
import { lookedAtHere } from '../../state/looked-at.ts';
import { country, site, siteKey } from '../../state/place.ts';
import { startOptions } from '../../state/start-options.ts';
import { today } from '../../state/today.ts';
import { opened } from './asked-question.ts';

/** The opened question answered for the place; a kitchen's year as the Keep page has it. */
export function useCommonAnswer(): Known<CommonAnswer> {
  const question = opened.value;
  const isKitchen = question === 'how-many';
  const asked = { today: today.value, options: startOptions.value };
  const kitchen = {
    ...asked,
    household: household.value,
    country: country.value,
    own: ownOnions.value,
    ...lookedAtHere(gardenStanding.value?.garden ?? null),
  };
  const keyOf = (of: boolean, what: unknown) =>
    of && siteKey.value ? JSON.stringify([siteKey.value, question, what]) : null;
  const grown = useAnswer(keyOf(!isKitchen, asked), () =>
    // another question is never at work here
    ask('commonAnswer', {
      site: site.value!,
      question: question as Exclude<typeof question, 'how-many'>,
      ...asked,
    }),
  );
  const kept = useAnswer(keyOf(isKitchen, kitchen), () =>
    askLong('keepYear', { site: site.value!, ...kitchen }),
  );
  if (!isKitchen) return grown;
  return {
    ...kept,
    answer: kept.answer && { question: 'how-many', year: kept.answer.year },
  };
}
