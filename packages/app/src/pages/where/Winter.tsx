import type { PlaceFacts } from '@neckfall/answers';
import { ask } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { practice, site, siteKey } from '../../state/place.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';

/** Losses of plants that matter to a grower: hardly any, and too many. */
const few = 0.1;
const many = 0.5;

/** Whether plants sown in autumn stand the winter. */
export function Winter({ facts }: { facts: PlaceFacts }) {
  const { say, plants } = voice.value;
  const isAsked = facts.frost.lastSpring.share >= few;
  const key = isAsked ? JSON.stringify([siteKey.value, practice.value, today.value]) : null;
  const { answer, isFresh } = useAnswer(key, () =>
    ask('winterStand', { site: site.value!, today: today.value, options: practice.value }),
  );
  if (!isAsked) return null;
  return (
    <section aria-labelledby="winter" data-waiting={isFresh ? undefined : true}>
      <h2 id="winter">{say('app.where.winter')}</h2>
      {answer && (
        <p>
          {say(`app.where.winter.${kindOf(answer)}`, {
            lost: plants(answer.lost),
            hard: plants(answer.lostInHardWinter),
            fleece: plants(answer.lostUnderFleece),
          })}
        </p>
      )}
    </section>
  );
}

type Losses = { lost: number; lostInHardWinter: number; lostUnderFleece: number };

function kindOf({ lost, lostInHardWinter, lostUnderFleece }: Losses) {
  if (lost < few && lostInHardWinter < few) return 'mild';
  if (lost < many) return 'some';
  return lostUnderFleece < many ? 'fleece' : 'no';
}
