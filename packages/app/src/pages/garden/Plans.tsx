import { type Garden, type GardenPlace, type GardenPlanting, parseDay } from '@neckfall/engine';
import { shown } from '@neckfall/words';
import { useMemo, useRef } from 'preact/hooks';
import { nothingAsked, writeAddress } from '../../address/address.ts';
import { askedOf, askedOfPlace } from '../../garden/asked-of.ts';
import { byPlace } from '../../garden/by-place.ts';
import { type KeptSeen, type KeptWeather, seenByPlanting, weatherByPlace } from '../../garden/kept-of.ts';
import { isAt } from '../../garden/near.ts';
import { changeGarden } from '../../state/garden.ts';
import { placeName } from '../../state/place.ts';
import { asked } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { Beds } from './Beds.tsx';

/** All plans, under the place where they grow; each leads to its season. */
export function Plans({ garden }: { garden: Garden }) {
  const { say } = voice.value;
  const list = useRef<HTMLDivElement>(null);
  const { at } = asked.value;
  const { placed, lost } = byPlace(garden, at);
  const isElsewhere = at !== null && !garden.places.some((place) => isAt(place, at));
  const seen = useMemo(() => seenByPlanting(garden.observations), [garden.observations]);
  const weather = useMemo(() => weatherByPlace(garden.weather), [garden.weather]);

  async function remove({ id, name }: GardenPlanting): Promise<void> {
    // what was seen of it and done to it goes along, and comes back with it
    await changeGarden({ code: 'removed', name }, (now) =>
      now
        ? {
            ...now,
            plantings: now.plantings.filter((planting) => planting.id !== id),
            observations: now.observations.filter(({ plantingId }) => plantingId !== id),
            jobs: now.jobs.filter(({ plantingId }) => plantingId !== id),
          }
        : now,
    );
    // the button is gone: go on from the list
    list.current?.focus();
  }

  const listOf = (plantings: readonly GardenPlanting[], places: Garden['places']) => (
    <ul>
      {plantings.map((planting) => (
        <li key={planting.id}>
          <a href={hrefOf({ ...garden, places }, planting)}>{shown(planting.name)}</a>{' '}
          <span>{inWords(planting)}</span> <Seen of={seen.get(planting.id)} />{' '}
          <button
            type="button"
            class="plain"
            aria-label={say('app.garden.plan.remove-of', { name: planting.name })}
            onClick={() => void remove(planting)}
          >
            {say('app.garden.plan.remove')}
          </button>
        </li>
      ))}
    </ul>
  );

  return (
    <div ref={list} tabIndex={-1}>
      {placed.map(({ place, plantings, beds }) => (
        <section key={place.id}>
          <h2>{shown(place.name)}</h2>
          <Weather of={weather.get(place.id)} at={place} />
          {plantings.length > 0 && listOf(plantings, [place])}
          <Beds garden={garden} beds={beds} place={place} />
        </section>
      ))}
      {isElsewhere && (
        <section>
          <h2>{shown(asked.value.name ?? placeName.value)}</h2>
          <Beds garden={garden} beds={[]} place={null} />
        </section>
      )}
      {(lost.plantings.length > 0 || lost.beds.length > 0) && (
        <section>
          <h2>{say('app.garden.no-place')}</h2>
          {lost.plantings.length > 0 && (
            <>
              <p>{say('app.garden.no-place.how')}</p>
              {listOf(lost.plantings, [])}
            </>
          )}
          {lost.beds.length > 0 && <Beds garden={garden} beds={lost.beds} place="lost" />}
        </section>
      )}
    </div>
  );
}

function Seen({ of }: { of: KeptSeen | undefined }) {
  const { say, dayWithYear } = voice.value;
  return of ? (
    <span class="hint">{say('app.garden.seen', { count: of.count, date: dayWithYear(of.lastDay) })}</span>
  ) : null;
}

/** The weather kept of a place, with the way to it. */
function Weather({ of, at }: { of: KeptWeather | undefined; at: GardenPlace }) {
  const { say, dayWithYear } = voice.value;
  if (!of) return null;
  const { fromDay, toDay, measuredDays } = of;
  const values = { from: dayWithYear(fromDay), to: dayWithYear(toDay), days: measuredDays };
  const { today } = asked.value;
  const href = writeAddress('weather', { ...nothingAsked, ...askedOfPlace(at), today });
  return (
    <p>
      <a href={href}>{say('app.garden.weather', values)}</a>
    </p>
  );
}

/** Nothing that was asked before goes along but the day of looking; and the place, where a plan has none. */
function hrefOf(garden: Garden, planting: GardenPlanting): string {
  const { at, name, elevation, sun, hollow, today } = asked.value;
  const here = { at, name, elevation, sun, hollow, today };
  const plan = askedOf(garden, planting);
  return writeAddress('season', { ...nothingAsked, ...here, ...plan });
}

/** What its name does not say already. */
function inWords({ name, cultivar, class: printed, start, startDate }: GardenPlanting): string {
  const { say, dayWithYear } = voice.value;
  const day = startDate === null ? null : parseDay(startDate);
  const known = [cultivar ?? (printed && say(`class.${printed}`)), start && say(`start.${start}`)];
  const parts = known.flatMap((words) => (words === null || name.includes(words) ? [] : [words]));
  if (day !== null) parts.push(dayWithYear(day));
  if (parts.length === 0) return '';
  return parts.reduceRight((rest, first) => say('app.garden.plan', { first, rest }));
}
