import { alikeSentence, choiceWhy, namesOf, whichHeadline } from '@neckfall/answers';
import { type Choice, groupKinds } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { placeName } from '../../state/place.ts';
import { voice } from '../../state/settings.ts';
import { FarOff } from './FarOff.tsx';

const namesAhead = 6;

/** What to get in one sentence, its names, why, and what is as good. */
export function ListLead({ choices }: { choices: readonly Choice[] }) {
  const speaker = voice.value;
  const [best] = choices;
  const alike = alikeSentence(choices, speaker);
  return (
    <>
      <h1 class="answer">{whichHeadline(best, placeName.value, speaker)}</h1>
      <p class="because">
        {bestNames(choices, speaker)} {choiceWhy(best, speaker, choices)}
      </p>
      {alike !== null && <p>{alike}</p>}
      <FarOff choices={choices} />
    </>
  );
}

/** The names to look for: those of the leading kind that the years can't tell from its first. */
function bestNames(choices: readonly Choice[], speaker: Speaker): string {
  const { say } = speaker;
  const [best] = choices;
  const [group] = groupKinds(choices);
  const level = group.choices.filter(({ rank }) => rank === best.rank);
  const names = [...new Set(level.flatMap(({ kind }) => kind.names))];
  const words = namesOf({ ...best, kind: { ...best.kind, names } }, speaker, namesAhead);
  if (level.length > 1) return say('app.which.names-level', { names: words, years: best.summary.years });
  return say(names.length > 1 ? 'which.names' : 'which.name', { names: words });
}
