import { liftTold } from '@neckfall/answers';
import { useState } from 'preact/hooks';
import { ask } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { Fault } from '../../controls/Fault.tsx';
import { Fold } from '../../controls/Fold.tsx';
import { Working } from '../../controls/Working.tsx';
import { isPrinting } from '../../device/printing.ts';
import { cropAsked } from '../../state/crop-asked.ts';
import { ground } from '../../state/ground.ts';
import { grownSite, grownSiteKey } from '../../state/grown-site.ts';
import { planOptions } from '../../state/plan-asked.ts';
import { seen } from '../../state/planting.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import type { SeasonAhead } from '../../worker/season-ahead.ts';

/** Five weeks before the first tops, and after lifting while bulbs dry, days. */
const shownDays = 35;

/** Whether to lift, and how long bulbs dry: told near the time. Worked out once it is looked at. */
export function Lift({ ahead }: { ahead: SeasonAhead }) {
  const [isOpen, open] = useState(false);
  if (!isNear(ahead)) return null;
  return (
    <Fold class="lift" id="lift" title={voice.value.say('lift.title')} onToggle={open}>
      {(isOpen || isPrinting.value) && <Asked />}
    </Fold>
  );
}

function isNear({ summary, learnt }: SeasonAhead): boolean {
  const liftedOn = learnt?.season.liftedOn ?? null;
  if (liftedOn !== null) return today.value - liftedOn <= shownDays;
  const { days, share } = summary.neckFall;
  return days !== null && share >= 0.5 && today.value >= days.p10 - shownDays;
}

function Asked() {
  const request = {
    ...cropAsked.value,
    options: planOptions.value,
    today: today.value,
    seen: [...seen.value].reverse(),
    ground: ground.value,
  };
  const key = grownSiteKey.value && JSON.stringify(['lift', grownSiteKey.value, request]);
  const { answer, isFresh, failed } = useAnswer(key, () =>
    ask('liftAhead', { site: grownSite.value!, ...request }),
  );
  if (failed !== null) return <Fault reason={failed} />;
  if (!answer) return <Working />;
  if (!answer.advice) return null;
  const { headline, lines } = liftTold(voice.value, answer.advice, answer);
  return (
    <div class={isFresh ? '' : 'waiting'} data-waiting={isFresh ? undefined : true}>
      <p>
        <strong>{headline}</strong>
      </p>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  );
}
