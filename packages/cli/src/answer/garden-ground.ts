import {
  type DailyRecord,
  frostHollowC,
  type Garden,
  type GardenPlace,
  type GardenWeather,
  inFrostHollow,
  joinRecords,
  openSite,
  parseDay,
  weatherMet,
  weatherNear,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { WeatherFile } from '../files/weather-file.ts';
import { type Frame, openFrame, openGround, siteOptionsOf } from '../frame/frame.ts';
import { type PlaceOptions, type RawPlaceOptions, readSetting } from '../options/place-options.ts';
import { ownAssets } from '../place/assets.ts';

/** The weather a garden keeps, under that of a file. */
function keptFile(
  path: string,
  kept: GardenWeather,
  met: DailyRecord,
  given: WeatherFile | null,
): WeatherFile {
  const record = given ? joinRecords(met, given.record) : met;
  const forecastFrom = kept.forecastFrom === null ? null : parseDay(kept.forecastFrom);
  const isAhead = forecastFrom !== null && forecastFrom < met.firstDay + met.days;
  const file: WeatherFile = {
    path: given ? `${path}, ${given.path}` : path,
    named: given ? `${path}, ${given.named}` : path,
    reading: given?.reading ?? null,
    record,
    // a file that was given reaches as far as it was measured
    forecastFrom: isAhead
      ? Math.max(forecastFrom, given ? given.record.firstDay + given.record.days : 0)
      : null,
    at: () => file,
  };
  return file;
}

/** A place of a garden: with the weather that its garden keeps of it, and without. */
export function gardenGround(
  { path, garden, place }: { path: string; garden: Garden; place: GardenPlace },
  raw: RawPlaceOptions,
  speaker: Speaker,
) {
  const { latitudeDeg, longitudeDeg, elevationM, sunHours } = place;
  const setting = readSetting(raw);
  const options: PlaceOptions = {
    ...setting,
    asked: { at: `${latitudeDeg},${longitudeDeg}`, point: { latitudeDeg, longitudeDeg, elevationM } },
    sunHours,
  };
  const ground = openGround(options, speaker, ownAssets);
  if (place.frostHollow) ground.place = { ...ground.place, climate: inFrostHollow(ground.place.climate) };
  const frameWith = (weather: WeatherFile | null): Frame => {
    const site = openSite(siteOptionsOf({ ...ground, options: { ...options, weather } }));
    const frame = openFrame({ ...options, weather }, speaker, ownAssets, { ...ground, site, weather });
    if (place.frostHollow)
      frame.assumed.push(
        speaker.say('app.how.hollow', { colder: speaker.quantity('temperatureDifference', frostHollowC) }),
      );
    return { ...frame, label: place.name };
  };
  const kept = weatherNear(garden, place);
  const record = kept && weatherMet(kept, setting.today);
  let usual: Frame | null = null;
  let met: Frame | null = null;
  const asUsual = () => {
    usual ??= frameWith(ground.weather);
    return usual;
  };
  const asMet = () => {
    met ??= kept && record ? frameWith(keptFile(path, kept, record, ground.weather)) : asUsual();
    return met;
  };
  return { options, usual: asUsual, met: asMet };
}
