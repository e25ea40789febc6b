import { comingDay, meanwhileSentence, packetHeadline } from '@neckfall/answers';
import type { Speaker } from '@neckfall/words';
import { AnswerHeading } from '../../controls/AnswerHeading.tsx';
import { AnswerLinks } from '../../controls/AnswerLinks.tsx';
import { startsHeld } from '../../state/held.ts';
import { onion } from '../../state/onion.ts';
import { placeName } from '../../state/place.ts';
import { asked, hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import type { WhichOnionReply } from '../../worker/which-onion.ts';

type Props = { reply: WhichOnionReply };

/** Whether this onion suits, and what to do with it today. */
export function PacketLead({ reply: { choices, now } }: Props) {
  const speaker = voice.value;
  const isHeld = startsHeld.value.length > 0;
  return (
    <>
      <AnswerHeading text={packetHeadline({ choices, now, isHeld }, placeName.value, today.value, speaker)} />
      <p class="today">
        {now ? inTimeWords(now.until, speaker) : meanwhileSentence(choices[0].summary, today.value, speaker)}
      </p>
    </>
  );
}

/** Why, what was made of it, and where to go from the answer. */
export function PacketOnward({ reply: { choices, now, taken } }: Props) {
  const { say, reason } = voice.value;
  const { kind, summary } = choices[now?.at ?? 0];
  const [name] = kind.names;
  const { cultivar, unknown } = onion.value;
  const isStranger = unknown !== null && !unknown.isOtherCrop;
  const typed = cultivar && otherNameTyped(name);
  const { start, startDay, type } = summary.plan;
  return (
    <>
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

function inTimeWords(until: number, speaker: Speaker): string {
  const isLast = until <= today.value;
  return speaker.say(isLast ? 'app.which.packet.this-week' : 'app.which.packet.in-time', {
    until: comingDay(until, today.value, speaker),
  });
}

/** What was typed, where the onion goes by another name here. */
function otherNameTyped(name: string): string | null {
  const { cultivar: typed } = asked.value;
  return typed === null || typed.toLowerCase() === name.toLowerCase() ? null : typed;
}
