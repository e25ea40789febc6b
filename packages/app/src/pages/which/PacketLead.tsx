import { comingDay, meanwhileSentence, packetHeadline } from '@neckfall/answers';
import { AnswerHeading } from '../../controls/AnswerHeading.tsx';
import { AnswerLinks } from '../../controls/AnswerLinks.tsx';
import { startsHeld } from '../../state/held.ts';
import { onion } from '../../state/onion.ts';
import { placeName } from '../../state/place.ts';
import { asked, hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import type { WhichOnionReply } from '../../worker/which-onion.ts';

/** Whether this onion suits, why, and where to go from it. */
export function PacketLead({ reply: { choices, now, taken } }: { reply: WhichOnionReply }) {
  const speaker = voice.value;
  const { say, reason } = speaker;
  const { kind } = choices[now?.at ?? 0];
  const summary = now?.summary ?? choices[0].summary;
  const [name] = kind.names;
  const { cultivar, unknown } = onion.value;
  const isHeld = startsHeld.value.length > 0;
  const isStranger = unknown !== null && !unknown.isOtherCrop;
  const typed = cultivar && otherNameTyped(name);
  const { start, startDay, type } = summary.plan;
  return (
    <>
      <AnswerHeading text={packetHeadline({ choices, now, isHeld }, placeName.value, today.value, speaker)} />
      <p class="today">
        {now
          ? say('app.which.packet.in-time', { until: comingDay(now.until, today.value, speaker) })
          : meanwhileSentence(summary, today.value, speaker)}
      </p>
      <p class="because">{reason(summary.reason)}</p>
      {taken !== null && <p>{say('app.which.packet.taken', { type: say(`type.${type}`) })}</p>}
      {isStranger && taken === null && <p>{say('app.which.packet.stranger', { name })}</p>}
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
