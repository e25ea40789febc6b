import { type NamedStore, storedEatFirst, storedSentence } from '@neckfall/answers';
import {
  emptyGarden,
  type Garden,
  type GardenPlanting,
  gardenRanges,
  type Observation,
  parseDay,
  type Symptom,
} from '@neckfall/engine';
import { useState } from 'preact/hooks';
import { ask } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { Fold } from '../../controls/Fold.tsx';
import { GardenSteps } from '../../controls/GardenSteps.tsx';
import { NumberField } from '../../controls/NumberField.tsx';
import { askedOf } from '../../garden/asked-of.ts';
import { seenOf } from '../../garden/seen.ts';
import { gardenStanding } from '../../state/garden.ts';
import { household } from '../../state/kitchen.ts';
import { type CheckField, checkFields, isCheck, placesHere } from '../../state/looked-at.ts';
import { site, siteKey } from '../../state/place.ts';
import { hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import { liftedHere, noteCheck } from './store-checks.ts';

/** What was lifted here and lies in store, each with a place to note a look at it. */
export function InStore() {
  const garden = gardenStanding.value?.garden ?? null;
  if (!garden) return null;
  return <StoredHere garden={garden} />;
}

function StoredHere({ garden }: { garden: Garden }) {
  const speaker = voice.value;
  const { say } = speaker;
  const lifted = liftedHere(garden, today.value);
  const { cultivars, plantings, observations } = garden;
  const asked = {
    store: household.value.store,
    // what the answer hangs on
    garden: { ...emptyGarden(), cultivars, plantings, observations },
    places: placesHere(garden),
    today: today.value,
  };
  const key = siteKey.value && lifted.length > 0 ? JSON.stringify([siteKey.value, asked]) : null;
  const { answer } = useAnswer(key, () => ask('storedNow', { site: site.value!, ...asked }));
  const told = answer ?? [];
  const order = told.map(({ stored }) => stored.plantingId);
  // what is over by all that is known comes last
  const place = ({ planting: { id } }: (typeof lifted)[number]) =>
    order.includes(id) ? order.indexOf(id) : order.length;
  const stored = [...lifted].sort((a, b) => place(a) - place(b));
  return (
    <Fold id="in-store" title={say('app.keep.store-now')} open={stored.length > 0}>
      {stored.length === 0 && <p>{say('app.keep.store-now.none')}</p>}
      {stored.map(({ planting, liftedOn }) => (
        <Stored
          key={planting.id}
          planting={planting}
          liftedOn={liftedOn}
          checks={seenOf(garden, planting.id).filter(isCheck)}
          named={told.find(({ stored }) => stored.plantingId === planting.id) ?? null}
        />
      ))}
      {stored.length > 0 && <GardenSteps />}
    </Fold>
  );
}

type Props = {
  planting: GardenPlanting;
  liftedOn: number;
  checks: readonly Observation[];
  named: NamedStore | null;
};

function Stored({ planting, liftedOn, checks, named }: Props) {
  const speaker = voice.value;
  const { say, dayWithYear } = speaker;
  const [counts, put] = useState<Partial<Record<CheckField, number | null>>>({});
  const [told, tell] = useState<'nothing' | 'noted' | null>(null);
  // a field is emptied once its number is noted
  const [noted, count] = useState(0);

  async function note(): Promise<void> {
    if (checkFields.every((field) => counts[field] == null)) {
      tell('nothing');
      return;
    }
    if (!(await noteCheck(planting, counts, today.value))) return;
    put({});
    count(noted + 1);
    tell('noted');
  }

  return (
    <article class="lot">
      <h3>{say('app.keep.store-now.lifted', { name: planting.name, date: dayWithYear(liftedOn) })}</h3>
      {named && (
        <p>
          {storedSentence(named, today.value, speaker)}{' '}
          {storedEatFirst([named], today.value, speaker).join(' ')}
        </p>
      )}
      {checks.length > 0 && (
        <ul>
          {checks.map((check) => (
            <li key={check.id}>{checkWords(check)}</li>
          ))}
        </ul>
      )}
      <WhyBad planting={planting} checks={checks} />
      <form
        key={noted}
        class="form check"
        aria-label={`${say('app.keep.check')}: ${planting.name}`}
        onSubmit={(event) => {
          event.preventDefault();
          void note();
        }}
      >
        {checkFields.map((field) => (
          <NumberField
            key={field}
            label={say(`app.keep.check.${field}`)}
            hint=""
            value={counts[field] ?? null}
            min={gardenRanges[field][0]}
            max={gardenRanges[field][1]}
            onValue={(value) => put((before) => ({ ...before, [field]: value && Math.round(value) }))}
          />
        ))}
        <button type="submit">{say('app.keep.check.note')}</button>
      </form>
      <p role="status">
        {told === 'nothing' && say('app.keep.check.nothing')}
        {told === 'noted' && say('app.keep.check.noted', { name: planting.name })}
      </p>
    </article>
  );
}

/** The way to why they went bad, where the last look found some. */
function WhyBad({ planting, checks: [last] }: Pick<Props, 'planting' | 'checks'>) {
  const garden = gardenStanding.value?.garden;
  const symptoms = last ? seenInStore(last) : [];
  if (!garden || !last || symptoms.length === 0) return null;
  const changes = {
    ...askedOf(garden, planting),
    symptoms,
    noticed: parseDay(last.date),
    answers: null,
  };
  return (
    <p>
      <a href={hrefTo('why', changes)}>{voice.value.say('app.why.link.store')}</a>
    </p>
  );
}

function seenInStore({ sproutedCount = 0, rottenCount = 0 }: Observation): Symptom[] {
  return [
    ...(sproutedCount > 0 ? (['sprouted'] as const) : []),
    ...(rottenCount > 0 ? (['rotted-in-store'] as const) : []),
  ];
}

function checkWords({ date, soundCount, sproutedCount, rottenCount }: Observation): string {
  const { say, number, dayWithYear } = voice.value;
  const told = (count: number | undefined) => (count === undefined ? '–' : number(count));
  return say('app.keep.check.is', {
    date: dayWithYear(parseDay(date) ?? 0),
    sound: told(soundCount),
    sprouted: told(sproutedCount),
    rotten: told(rottenCount),
  });
}
