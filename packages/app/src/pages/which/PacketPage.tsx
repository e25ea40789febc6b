import { useMemo } from 'preact/hooks';
import { ask } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { Fault } from '../../controls/Fault.tsx';
import { Working } from '../../controls/Working.tsx';
import { onion } from '../../state/onion.ts';
import { site, siteKey } from '../../state/place.ts';
import { asked } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import { startOptions } from '../when/start-options.ts';
import { PacketForm } from './PacketForm.tsx';
import { PacketLead } from './PacketLead.tsx';
import { PacketRest } from './PacketRest.tsx';
import { packetOnion } from './packet-onion.ts';
import { SetsUsed } from './SetsUsed.tsx';

/** The onion in the grower's hand: what is on it, whether it suits, and how to start it. */
export function PacketPage() {
  const { say } = voice.value;
  const { class: printed, packetHours, packetDays } = asked.value;
  const { cultivar } = onion.value;
  const name = cultivar?.name ?? say('app.which.packet.this');
  const held = useMemo(
    () => packetOnion(cultivar, { class: printed, hours: packetHours, days: packetDays }, name),
    [cultivar, printed, packetHours, packetDays, name],
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
  const isWaiting = held !== null && !isFresh;
  return (
    <div class={isWaiting && answer ? 'waiting' : ''} data-waiting={isWaiting ? true : undefined}>
      <div key="lead">
        {held === null ? <Ask /> : answer ? <PacketLead choices={answer.choices} /> : <Wait name={name} />}
      </div>
      <PacketForm key="form" isKnown={held !== null} />
      {held !== null && answer && <SetsUsed key="sets" choices={answer.choices} />}
      {held !== null && answer && (
        <PacketRest key="rest" reply={answer} cultivar={cultivar} isFresh={isFresh} />
      )}
    </div>
  );
}

function Ask() {
  const { say } = voice.value;
  return (
    <>
      <h1>{say('app.which.packet.ask')}</h1>
      <p>{say('app.which.packet.lead')}</p>
    </>
  );
}

function Wait({ name }: { name: string }) {
  return (
    <>
      <h1>{name}</h1>
      <Working />
    </>
  );
}
