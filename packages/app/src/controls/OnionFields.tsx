import {
  type DayLengthClass,
  dayLengthClasses,
  longestNurseryDays,
  type StartMethod,
  startWays,
} from '@neckfall/engine';
import type { Asked } from '../address/address-form.ts';
import { noOnion } from '../address/no-onion.ts';
import { onion } from '../state/onion.ts';
import { goToOwn, isOwnChoice, type OwnChoice, ownChoices, ownChosen } from '../state/own-choices.ts';
import { asked, go } from '../state/route.ts';
import { voice } from '../state/settings.ts';
import { today } from '../state/today.ts';
import { ChoiceField } from './ChoiceField.tsx';
import { DayField } from './DayField.tsx';

/** As far back and ahead as the command line goes: two years, five years. */
const backDays = 731;
const aheadDays = 1826;

type OnionChoice = DayLengthClass | OwnChoice | 'named' | 'packet';

type Props = {
  /** What the fields show. */
  held: Pick<Asked, 'class' | 'plantOut'> & { start: StartMethod; date: number };
  /** What goes into the address with each change. */
  along: Partial<Asked>;
};

/** Which onion, started how and when. */
export function OnionFields({ held, along }: Props) {
  const { say } = voice.value;
  const { cultivar, starts } = onion.value;
  const { packetHours, packetDays } = asked.value;
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
          if (isOwnChoice(value)) goToOwn(value, along);
          else go({ ...along, ...noOnion, class: value });
        }}
      />
      <ChoiceField<StartMethod>
        label={say('app.season.start')}
        value={held.start}
        options={starts.map((value) => ({ value, label: say(`app.season.start.${value}`) }))}
        onValue={(start) => go({ ...along, start, plantOut: null })}
      />
      <DayField
        label={say(`app.season.date.${held.start}`)}
        value={held.date}
        min={today.value - backDays}
        max={today.value + aheadDays}
        onValue={(date) => {
          if (date === null) return;
          // what waits in trays moves along
          go({ ...along, date, plantOut: held.plantOut === null ? null : held.plantOut + date - held.date });
        }}
      />
      {startWays[held.start].standsInTrays && (
        <DayField
          label={say('app.season.plant-out')}
          hint={say('app.season.plant-out.hint')}
          value={held.plantOut}
          min={held.date + 1}
          max={held.date + longestNurseryDays}
          onValue={(day) => go({ ...along, plantOut: day })}
        />
      )}
    </>
  );
}
