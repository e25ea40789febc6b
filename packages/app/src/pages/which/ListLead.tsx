import { alikeSentence, choiceWhy, namesOf, whichHeadline } from '@neckfall/answers';
import type { Choice } from '@neckfall/engine';
import { placeName } from '../../state/place.ts';
import { voice } from '../../state/settings.ts';

const namesAhead = 6;

/** What to get in one sentence, its names, why, and what is as good. */
export function ListLead({ choices }: { choices: readonly Choice[] }) {
  const speaker = voice.value;
  const { say } = speaker;
  const [best] = choices;
  const alike = alikeSentence(choices, speaker);
  return (
    <>
      <h1 class="answer">{whichHeadline(best, placeName.value, speaker)}</h1>
      <p class="because">
        {say(best.kind.names.length > 1 ? 'which.names' : 'which.name', {
          names: namesOf(best, speaker, namesAhead),
        })}{' '}
        {choiceWhy(best, speaker)}
      </p>
      {alike !== null && <p>{alike}</p>}
    </>
  );
}
