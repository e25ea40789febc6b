import { packetHeadline } from '@neckfall/answers';
import type { Choice } from '@neckfall/engine';
import { AnswerHeading } from '../../controls/AnswerHeading.tsx';
import { AnswerLinks } from '../../controls/AnswerLinks.tsx';
import { onion } from '../../state/onion.ts';
import { placeName } from '../../state/place.ts';
import { asked, hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { startDayWords } from './start-day.ts';

/** Whether this onion suits, why, and where to go from it. */
export function PacketLead({ choices }: { choices: readonly Choice[] }) {
  const speaker = voice.value;
  const { say, reason } = speaker;
  const [best] = choices;
  const [name] = best.kind.names;
  const { cultivar, unknown } = onion.value;
  const isStranger = unknown !== null && !unknown.isOtherCrop;
  const typed = cultivar && otherNameTyped(name);
  const { start, startDay } = best.summary.plan;
  return (
    <>
      <AnswerHeading
        text={packetHeadline(choices, { place: placeName.value, date: startDayWords(startDay) }, speaker)}
      />
      <p class="because">{reason(best.summary.reason)}</p>
      {isStranger && <p>{say('app.which.packet.stranger', { name })}</p>}
      {typed !== null && <p>{say('app.which.packet.also-called', { typed, name })}</p>}
      <AnswerLinks
        links={[
          { href: hrefTo('when', { start, date: null, plantOut: null }), text: say('app.which.when') },
          {
            href: hrefTo('season', { start, date: startDay, plantOut: null }),
            text: say('app.which.season'),
          },
        ]}
      />
    </>
  );
}

/** What was typed, where the onion goes by another name here. */
function otherNameTyped(name: string): string | null {
  const { cultivar: typed } = asked.value;
  return typed === null || typed.toLowerCase() === name.toLowerCase() ? null : typed;
}
