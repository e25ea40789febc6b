import type { PlaceFacts } from '@neckfall/answers';
import { voice } from '../../state/settings.ts';
import type { WinterStand } from '../../worker/winter-stand.ts';

/** Losses of plants that matter to a grower: hardly any, and too many. */
const few = 0.1;
const many = 0.5;

/** Whether plants sown in autumn stand the winter. */
export function Winter({ winter, facts }: { winter: WinterStand; facts: PlaceFacts }) {
  const { say, plants } = voice.value;
  if (facts.frost.lastSpring.share < few) return null;
  const { lost, lostInHardWinter, lostUnderFleece } = winter;
  const kind =
    lost < few && lostInHardWinter < few
      ? 'mild'
      : lost < many
        ? 'some'
        : lostUnderFleece < many
          ? 'fleece'
          : 'no';
  return (
    <section aria-labelledby="winter">
      <h2 id="winter">{say('app.where.winter')}</h2>
      <p>
        {say(`app.where.winter.${kind}`, {
          lost: plants(lost),
          hard: plants(lostInHardWinter),
          fleece: plants(lostUnderFleece),
        })}
      </p>
    </section>
  );
}
