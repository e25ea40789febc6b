import {
  type DayLengthClass,
  dayLengthClasses,
  longestNurseryDays,
  type Plan,
  type StartMethod,
  startWays,
} from '@neckfall/engine';
import { noOnion } from '../../address/no-onion.ts';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { DayField } from '../../controls/DayField.tsx';
import { onion } from '../../state/onion.ts';
import { goToOwn, isOwnChoice, type OwnChoice, ownChoices, ownChosen } from '../../state/own-choices.ts';
import { asked, go } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import { pinned } from './pinned.ts';

/** As far back and ahead as the command line goes: two years, five years. */
const backDays = 731;
const aheadDays = 1826;

type OnionChoice = DayLengthClass | OwnChoice | 'named' | 'packet';

/** Which onion, started how and when. What was chosen for the reader is pinned as soon as one of them is changed. */
export function OnionFields({ plan }: { plan: Plan }) {
  const { say } = voice.value;
  const { cultivar, starts } = onion.value;
  const { packetHours, packetDays } = asked.value;
  const held = pinned({ plan });
  const own = ownChosen();
  const isPacket = cultivar === null && own === null && (packetHours !== null || packetDays !== null);
  const known: { value: OnionChoice; label: string }[] = [
    ...(cultivar
      ? [{ value: 'named' as const, label: say('app.season.onion.named', { name: cultivar.name }) }]
      : []),
    ...(isPacket ? [{ value: 'packet' as const, label: say('app.season.onion.packet') }] : []),
    ...ownChoices(),
  ];

  return (
    <>
      <ChoiceField<OnionChoice>
        label={say('app.season.onion')}
        value={own ?? (cultivar ? 'named' : isPacket ? 'packet' : (held.class ?? 'long'))}
        options={[...known, ...dayLengthClasses.map((value) => ({ value, label: say(`class.${value}`) }))]}
        onValue={(value) => {
          if (value === 'named' || value === 'packet') return;
          if (isOwnChoice(value)) goToOwn(value, held);
          else go({ ...held, ...noOnion, class: value });
        }}
      />
      <ChoiceField<StartMethod>
        label={say('app.season.start')}
        value={held.start}
        options={starts.map((value) => ({ value, label: say(`app.season.start.${value}`) }))}
        onValue={(start) => go({ ...held, start, plantOut: null })}
      />
      <DayField
        label={say(`app.season.date.${held.start}`)}
        value={held.date}
        min={today.value - backDays}
        max={today.value + aheadDays}
        onValue={(date) => {
          if (date === null) return;
          // what waits in trays moves along
          go({ ...held, date, plantOut: held.plantOut === null ? null : held.plantOut + date - held.date });
        }}
      />
      {startWays[held.start].standsInTrays && (
        <DayField
          label={say('app.season.plant-out')}
          hint={say('app.season.plant-out.hint')}
          value={held.plantOut}
          min={held.date + 1}
          max={held.date + longestNurseryDays}
          onValue={(day) => go({ ...held, plantOut: day })}
        />
      )}
    </>
  );
}
