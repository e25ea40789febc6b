import { signal } from '@preact/signals';
import { useState } from 'preact/hooks';
import { askLong, cancelLong } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { HeadingToCome } from '../../controls/AnswerHeading.tsx';
import { Fault } from '../../controls/Fault.tsx';
import { gardenStanding, ownOnions } from '../../state/garden.ts';
import { household } from '../../state/kitchen.ts';
import { lookedAtHere } from '../../state/looked-at.ts';
import { country, site, siteKey } from '../../state/place.ts';
import { voice } from '../../state/settings.ts';
import { startOptions } from '../../state/start-options.ts';
import { today } from '../../state/today.ts';
import '../../look/keep.css';
import { KeepAnswer } from './KeepAnswer.tsx';
import { KitchenForm } from './KitchenForm.tsx';
import { useGardenKitchen } from './use-garden-kitchen.ts';

const progress = signal({ done: 0, total: 1 });

/** What to plant so that a kitchen has onions until the next crop, and its year in store. */
export function Keep() {
  useGardenKitchen();
  // what was stopped is asked again when the reader wants it
  const [stopped, stop] = useState<string | null>(null);
  const asked = {
    household: household.value,
    country: country.value,
    own: ownOnions.value,
    ...lookedAtHere(gardenStanding.value?.garden ?? null),
    options: startOptions.value,
    today: today.value,
  };
  const key = siteKey.value && JSON.stringify([siteKey.value, asked]);
  const { answer, isFresh, failed } = useAnswer(stopped === key ? null : key, () =>
    askLong(
      'keepYear',
      { site: site.value!, ...asked },
      {
        part: (part) => {
          progress.value = part;
        },
      },
    ),
  );
  if (failed !== null) return <Fault reason={failed} />;
  const halt = () => {
    cancelLong('keepYear');
    stop(key);
  };
  return (
    <div
      class={isFresh ? 'keep' : 'keep waiting'}
      data-waiting={isFresh || stopped === key ? undefined : true}
    >
      {!answer && <HeadingToCome />}
      {stopped === key ? <Stopped onGoOn={() => stop(null)} /> : !isFresh && <AtWork onStop={halt} />}
      {answer ? <KeepAnswer ahead={answer} /> : <KitchenForm />}
    </div>
  );
}

function AtWork({ onStop }: { onStop: () => void }) {
  const { say } = voice.value;
  const { done, total } = progress.value;
  return (
    <p class="at-work">
      {say('app.keep.working', { percent: Math.round((100 * done) / total) })}{' '}
      <button type="button" class="plain" onClick={onStop}>
        {say('app.keep.stop')}
      </button>
    </p>
  );
}

function Stopped({ onGoOn }: { onGoOn: () => void }) {
  const { say } = voice.value;
  return (
    <p role="status">
      {say('app.keep.stopped')}{' '}
      <button type="button" onClick={onGoOn}>
        {say('app.keep.go-on')}
      </button>
    </p>
  );
}
