import { type Colour, colours, cultivars, findCultivar } from '@neckfall/data';
import { type DayLengthClass, dayLengthClasses, gardenRanges } from '@neckfall/engine';
import { useId, useState } from 'preact/hooks';
import type { Asked } from '../../address/address-form.ts';
import { noOnion } from '../../address/no-onion.ts';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { NumberField } from '../../controls/NumberField.tsx';
import { askedOfOwn, findOwn } from '../../garden/own-onion.ts';
import { ownOnions } from '../../state/garden.ts';
import { onion } from '../../state/onion.ts';
import { asked, go } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';

type Holds = NonNullable<Asked['holds']>;
const holdings: readonly Holds[] = ['seed', 'plants', 'sets'];
const [leastHours, mostHours] = gardenRanges.packetHours;
const [leastDays, mostDays] = gardenRanges.packetDays;

/**
 * What stands on a packet: its name, or the day length it is for and what else is printed. Folded away where the
 * address had it already; one who is filling it in keeps it open.
 */
export function PacketForm({ isKnown }: { isKnown: boolean }) {
  // a name that may be misspelt is to be seen, with names like it
  const [wasKnown] = useState(isKnown && onion.value.unknown === null);
  const { say, all } = voice.value;
  if (!wasKnown) return <Fields />;
  return (
    <details>
      <summary>
        {isKnown && say('app.which.packet.is', { list: all(inWords()) })} {say('app.which.packet.change')}
      </summary>
      <Fields />
    </details>
  );
}

function Fields() {
  const { say } = voice.value;
  const { class: printed, packetHours, packetDays, holds, skin } = asked.value;
  return (
    <form class="form packet" onSubmit={toAnswer}>
      <ChoiceField<Holds | ''>
        label={say('app.which.packet.holds')}
        value={holds ?? ''}
        options={[
          { value: '', label: say('app.which.packet.holds-none') },
          ...holdings.map((value) => ({ value, label: say(`app.which.packet.holds.${value}`) })),
        ]}
        onValue={(value) => told({ holds: value === '' ? null : value })}
      />
      <NameField />
      <button type="submit">{say('app.which.packet.ask-it')}</button>
      <details open={printed !== null || packetHours !== null || packetDays !== null || skin !== null}>
        <summary>{say('app.which.packet.more')}</summary>
        <div class="form">
          <ChoiceField<DayLengthClass | ''>
            label={say('app.which.packet.day')}
            value={printed ?? ''}
            options={[
              { value: '', label: say('app.which.packet.day-none') },
              ...dayLengthClasses.map((value) => ({ value, label: say(`class.${value}`) })),
            ]}
            onValue={(value) => change({ class: value === '' ? null : value })}
          />
          <NumberField
            label={say('app.which.packet.hours')}
            hint={say('app.which.packet.hours-hint')}
            value={packetHours}
            min={leastHours}
            max={mostHours}
            digits={2}
            onValue={(hours) => change({ packetHours: hours })}
          />
          <NumberField
            label={say('app.which.packet.days')}
            hint={say('app.which.packet.days-hint')}
            value={packetDays}
            min={leastDays}
            max={mostDays}
            onValue={(days) => change({ packetDays: days })}
          />
          <ChoiceField<Colour | ''>
            label={say('app.which.packet.colour')}
            value={skin ?? ''}
            options={[
              { value: '', label: say('app.which.packet.day-none') },
              ...colours.map((value) => ({ value, label: say(`colour.${value}`) })),
            ]}
            onValue={(value) => told({ skin: value === '' ? null : value })}
          />
        </div>
      </details>
    </form>
  );
}

/** What is known of any onion is kept, whatever it is called. */
function told(changes: Partial<Asked>): void {
  go({ packet: true, ...changes }, { replace: true });
}

/** The answer stands above: whoever has filled the form in is taken there. */
function toAnswer(event: Event): void {
  event.preventDefault();
  const heading = document.querySelector<HTMLElement>('main h1');
  heading?.setAttribute('tabindex', '-1');
  heading?.focus();
}

/** A name of the list says all the rest; one that is not in it is told with names like it. */
function NameField() {
  const { say } = voice.value;
  const id = useId();
  const { unknown, crop } = onion.value;
  const hint = `${id}-hint`;
  return (
    <div>
      <label for={id}>{say('app.which.packet.name-field')}</label>
      <input
        id={id}
        type="text"
        list={`${id}-list`}
        autocomplete="off"
        autocapitalize="words"
        spellcheck={false}
        aria-invalid={unknown !== null}
        aria-describedby={hint}
        value={asked.value.cultivar ?? ''}
        onChange={(event) => takeName(event.currentTarget.value.trim())}
      />
      <datalist id={`${id}-list`}>
        {[...ownOnions.value, ...cultivars].map(({ id: key, name }) => (
          <option key={key} value={name} />
        ))}
      </datalist>
      {unknown === null ? (
        <p id={hint} class="hint">
          {say('app.which.packet.name-hint')}
        </p>
      ) : crop !== null && !unknown.isOtherCrop ? (
        <div id={hint}>
          {say('app.garden.onion.from-link', { name: unknown.name })} <NamesLike names={unknown.nearest} />
        </div>
      ) : (
        <div id={hint} role="alert" class="alarm">
          {say(unknown.isOtherCrop ? 'app.which.packet.other-crop' : 'app.which.packet.unknown', {
            name: unknown.name,
          })}{' '}
          <NamesLike names={unknown.nearest} />
        </div>
      )}
    </div>
  );
}

function NamesLike({ names }: { names: readonly string[] }) {
  return (
    <>
      {names.map((name) => (
        <button key={name} type="button" class="plain" onClick={() => takeName(name)}>
          {voice.value.say('app.which.packet.like', { name })}
        </button>
      ))}
    </>
  );
}

/** What is in the hand stays in it; day length and days on the packet would only gainsay a name that is known. */
function takeName(name: string): void {
  const own = findOwn(ownOnions.value, name);
  const named = own ? askedOfOwn(own) : { cultivar: name === '' ? null : name };
  const { holds, skin, ...printed } = asked.value;
  const isKnown = own !== undefined || findCultivar(name).match !== null;
  const kept = isKnown
    ? {}
    : { class: printed.class, packetHours: printed.packetHours, packetDays: printed.packetDays };
  go({ ...noOnion, holds, skin, ...kept, packet: true, ...named }, { replace: true });
}

/** What a packet says is the packet's, whatever it is called; but a name that is known would gainsay it. */
function change(changes: Partial<Asked>): void {
  const { unknown } = onion.value;
  const cultivar = unknown && !unknown.isOtherCrop ? asked.value.cultivar : null;
  go({ cultivar, packet: true, ...changes }, { replace: true });
}

function inWords(): string[] {
  const { say, dayLength } = voice.value;
  const { class: printed, packetHours, packetDays, holds, skin } = asked.value;
  const { cultivar, own, unknown } = onion.value;
  const held = holds === null ? [] : [say(`app.which.packet.holds.${holds}`)];
  if (cultivar) return [cultivar.name, ...held];
  return [
    ...(own ? [own.name] : []),
    ...(unknown ? [unknown.name] : []),
    ...held,
    ...(printed === null ? [] : [say(`class.${printed}`)]),
    ...(packetHours === null ? [] : [say('app.which.packet.hours-is', { hours: dayLength(packetHours) })]),
    ...(packetDays === null ? [] : [say('app.which.packet.days-is', { days: packetDays })]),
    ...(skin === null ? [] : [say('app.which.packet.skin-is', { colour: say(`colour.${skin}`) })]),
  ];
}
