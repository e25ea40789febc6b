import { causeAdvice, leadOf, nextYearSentence } from '@neckfall/answers';
import { civilDate, classOfType, emptyGarden, plantOutDayOf, type WhyAnswer } from '@neckfall/engine';
import { useState } from 'preact/hooks';
import { AnswerLinks } from '../../controls/AnswerLinks.tsx';
import { withPlan } from '../../garden/planting-of.ts';
import { changeGarden, gardenFault, gardenHolder } from '../../state/garden.ts';
import { hrefOfList } from '../../state/onion-hrefs.ts';
import { placeName } from '../../state/place.ts';
import { asked, hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import type { WhyAhead } from '../../worker/why-ahead.ts';
import { askedOfNext, type Next, onionNameOf } from './next-asked.ts';

/** What to do otherwise, and the plan of next year by one press. */
export function NextYear({ ahead, answer }: { ahead: WhyAhead; answer: WhyAnswer }) {
  const speaker = voice.value;
  const { say, dayWithYear } = speaker;
  const { plan } = answer.nextYear;
  const lead = leadOf(answer);
  const next: Next = { plan, isSameOnion: plan.type === ahead.plan.type, isOfClass: ahead.isNextOfClass };
  const changes = askedOfNext(next);
  const words = {
    onion: onionNameOf(next) ?? say(`type.${plan.type}`),
    start: say(`start.${plan.start}`),
    date: dayWithYear(plan.startDay),
  };
  return (
    <section class="next-year" aria-labelledby="next">
      <h2 id="next">{say('app.why.next')}</h2>
      {lead && <p>{causeAdvice(lead.cause, speaker)}</p>}
      <p>{nextYearSentence(answer.nextYear, speaker)}</p>
      <AnswerLinks
        links={[
          { href: hrefTo('season', changes), text: say('app.why.next.plan', words) },
          { href: hrefTo('when', changes), text: say('app.why.next.when') },
          { href: hrefOfList(), text: say('app.why.next.which') },
        ]}
      >
        <KeepIt next={next} />
      </AnswerLinks>
    </section>
  );
}

/** Puts next year's plan among those of the garden. */
function KeepIt({ next }: { next: Next }) {
  const { say } = voice.value;
  const { plan } = next;
  const [kept, tell] = useState<{ of: string; name: string } | null>(null);
  const key = JSON.stringify(plan);
  const name = say('app.why.next.name', {
    onion: onionNameOf(next) ?? say(`type.${plan.type}`),
    start: say(`start.${plan.start}`),
    year: String(civilDate(plan.startDay).year),
  });

  async function keep(): Promise<void> {
    const isDone = await changeGarden(
      { code: 'added', name },
      (now) =>
        withPlan(now ?? emptyGarden(), null, {
          asked: { ...asked.value, ...askedOfNext(next) },
          plan: { start: plan.start, startDay: plan.startDay, plantOutDay: plantOutDayOf(plan) },
          class: classOfType[plan.type],
          placeName: asked.value.name ?? placeName.value,
          name,
        }).garden,
    );
    if (isDone) tell({ of: key, name });
  }

  const isKept = kept?.of === key;
  return (
    <>
      {!isKept && (
        <button type="button" onClick={() => void keep()}>
          {say('app.why.next.keep', { holder: gardenHolder.value })}
        </button>
      )}
      <p role="status">{isKept && say('app.why.next.kept', { name: kept.name })}</p>
      {gardenFault.value !== null && (
        <p role="alert" class="alarm">
          {say('app.garden.fault', { reason: gardenFault.value })}
        </p>
      )}
    </>
  );
}
