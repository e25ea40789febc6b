import { shown } from '@neckfall/words';
import { useMemo } from 'preact/hooks';
import type { Asked } from '../../address/address-form.ts';
import { ask } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { Fault } from '../../controls/Fault.tsx';
import { Working } from '../../controls/Working.tsx';
import { startsHeld } from '../../state/held.ts';
import { onion } from '../../state/onion.ts';
import { site, siteKey } from '../../state/place.ts';
import { asked } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { startOptions } from '../../state/start-options.ts';
import { today } from '../../state/today.ts';
import { PacketForm } from './PacketForm.tsx';
import { PacketLead, PacketOnward } from './PacketLead.tsx';
import { PacketRest } from './PacketRest.tsx';
import { packetOnion } from './packet-onion.ts';
import { SaveOnion } from './SaveOnion.tsx';
import { SetsUsed } from './SetsUsed.tsx';
import { StartsDrawn } from './Starts.tsx';

/** The onion in the grower's hand: what is on it, whether it suits, and how to start it. */
export function PacketPage() {
  const { say } = voice.value;
  const { cultivar, own, unknown } = onion.value;
  const { class: printed, packetHours, packetDays } = packetSaid();
  const stranger = unknown && !unknown.isOtherCrop ? unknown.name : null;
  const name = onion.value.name ?? stranger ?? say('app.which.packet.this');
  const keepsMonths = own?.keepsMonths ?? null;
  const held = useMemo(
    () =>
      packetOnion(
        cultivar,
        { class: printed, hours: packetHours, days: packetDays },
        name,
        startsHeld.value,
        keepsMonths,
      ),
    [cultivar, printed, packetHours, packetDays, name, startsHeld.value, keepsMonths],
  );
  const key = held && siteKey.value && JSON.stringify([siteKey.value, startOptions.value, today.value, held]);
  const { answer, isFresh, failed } = useAnswer(key, () =>
    ask('whichOnion', {
      site: site.value!,
      onion: held!,
      firstDay: today.value,
      options: startOptions.value,
    }),
  );
  if (failed !== null) return <Fault reason={failed} />;
  const choices = answer?.choices ?? null;
  const isWaiting = held !== null && !isFresh;
  return (
    <div class={isWaiting && answer ? 'waiting' : ''} data-waiting={isWaiting ? true : undefined}>
      <div key="spread" class="spread">
        <div key="said" class="said">
          {held === null ? <Ask /> : answer ? <PacketLead reply={answer} /> : <Wait name={name} />}
        </div>
        {held !== null && (
          <div key="seen" class="seen">
            {choices && <StartsDrawn choices={choices} />}
          </div>
        )}
        <div key="rest" class="rest">
          {held !== null && answer && <PacketOnward key="onward" reply={answer} />}
          <PacketForm key="form" isKnown={held !== null} />
          {held !== null && cultivar === null && own === null && <SaveOnion key="save" named={stranger} />}
          {held !== null && choices && <SetsUsed key="sets" choices={choices} />}
        </div>
      </div>
      {held !== null && answer && choices && (
        <PacketRest key="rest" reply={answer} choices={choices} cultivar={cultivar} isFresh={isFresh} />
      )}
    </div>
  );
}

/** Of an onion of the grower's own, what the garden says where the address does not. */
function packetSaid(): Pick<Asked, 'class' | 'packetHours' | 'packetDays'> {
  const { class: printed, packetHours, packetDays } = asked.value;
  const { own } = onion.value;
  return own && printed === null && packetHours === null ? own : { class: printed, packetHours, packetDays };
}

function Ask() {
  const { say } = voice.value;
  const { unknown } = onion.value;
  const isStranger = unknown !== null && !unknown.isOtherCrop;
  return (
    <>
      <h1>
        {isStranger
          ? say('app.which.packet.ask-unknown', { name: unknown.name })
          : say('app.which.packet.ask')}
      </h1>
      <p>{say(isStranger ? 'app.which.packet.lead-unknown' : 'app.which.packet.lead')}</p>
      {asked.value.packetDays !== null && <p>{say('app.which.packet.lead-days')}</p>}
    </>
  );
}

function Wait({ name }: { name: string }) {
  return (
    <>
      <h1>{shown(name)}</h1>
      <Working />
    </>
  );
}
