import { type Advice, adviceOfList } from '@neckfall/answers';
import { type Choice, groupKinds } from '@neckfall/engine';
import { ask } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { site } from '../../state/place.ts';
import { startOptions } from '../../state/start-options.ts';
import { today } from '../../state/today.ts';

type Found<Answer> = { answer: Answer | null; failed: string | null };

/** The advice of the place, from the same survey as on Where; a null key asks nothing. */
export function usePlaceAdvice(key: string | null): Found<Advice> {
  const { answer, isFresh, failed } = useAnswer(key, () =>
    ask('where', { site: site.value!, today: today.value, options: startOptions.value }),
  );
  return { answer: isFresh ? answer : null, failed };
}

/** The advice of a list that was narrowed, its choices in order. */
export function useListAdvice(key: string | null, choices: readonly Choice[] | null): Found<Advice> {
  const { answer, isFresh, failed } = useAnswer(choices && key, () =>
    ask('whichNow', {
      site: site.value!,
      kinds: groupKinds(choices ?? []).map(({ choices: [{ kind }] }) => kind),
      today: today.value,
      options: startOptions.value,
    }),
  );
  return { answer: choices && isFresh ? adviceOfList(choices, answer?.summary ?? null) : null, failed };
}
