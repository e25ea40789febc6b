import {
  classOfType,
  type DayLengthClass,
  dayLengthClasses,
  type OnionType,
  type StartMethod,
} from '@neckfall/engine';
import { noOnion } from '../../address/no-onion.ts';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { onion } from '../../state/onion.ts';
import { hrefOfList } from '../../state/onion-hrefs.ts';
import { goToOwn, isOwnChoice, type OwnChoice, ownChoices, ownChosen } from '../../state/own-choices.ts';
import { asked, go, hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';

type Props = {
  /** What the onion was taken as. */
  type: OnionType;
  start: StartMethod;
};

/** Which onion, and how it is started. */
export function OnionFields({ type, start }: Props) {
  const { say } = voice.value;
  const { starts } = onion.value;
  const own = ownChosen();
  const named = own === null ? namedOnion() : null;
  const options = [
    ...ownChoices(),
    ...dayLengthClasses.map((value) => ({ value, label: say(`class.${value}`) })),
  ];
  return (
    <>
      <div>
        <ChoiceField<DayLengthClass | OwnChoice | 'named'>
          label={say('app.when.onion')}
          value={own ?? (named === null ? classOfType[type] : 'named')}
          options={named === null ? options : [{ value: 'named', label: named }, ...options]}
          onValue={(value) => {
            if (isOwnChoice(value)) goToOwn(value);
            else if (value !== 'named') go({ ...noOnion, class: value });
          }}
        />
        <p class="hint">
          {say('app.when.onion.hint', { type: say(`type.${type}`) })}{' '}
          <a href={hrefOfList()}>{say('app.when.which')}</a>
        </p>
      </div>
      <ChoiceField
        label={say('app.when.start')}
        value={start}
        options={starts.map((value) => ({ value, label: say(`start.${value}`) }))}
        onValue={(value) => go({ start: value })}
      />
    </>
  );
}

/** The onion in hand, where it is told by more than its class. */
function namedOnion(): string | null {
  const { cultivar } = onion.value;
  if (cultivar) return cultivar.name;
  const { packetHours, packetDays, class: printed } = asked.value;
  const hasPacket = packetHours !== null || (packetDays !== null && printed !== null);
  return hasPacket ? voice.value.say('app.when.onion.packet') : null;
}

/** Said where the address names an onion that cannot be grown here. */
export function UnknownOnion() {
  const { say } = voice.value;
  const { unknown, own, crop } = onion.value;
  if (own && crop === null) return <p class="alarm">{say('app.garden.onion.unused', { name: own.name })}</p>;
  if (unknown === null) return null;
  const { name, nearest, isOtherCrop } = unknown;
  if (isOtherCrop) return <p class="alarm">{say('app.when.other-crop', { name })}</p>;
  if (crop && 'packet' in crop) return <p>{say('app.garden.onion.from-link', { name })}</p>;
  return (
    <p class="alarm">
      {say('app.when.no-cultivar', { name, near: nearest.length > 0 ? 'some' : 'none' })}{' '}
      {nearest.map((other) => (
        <>
          <a key={other} href={hrefTo('when', { cultivar: other })}>
            {other}
          </a>{' '}
        </>
      ))}
    </p>
  );
}
