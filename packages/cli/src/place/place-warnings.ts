import { elevationIsUnsure, type Place, townLabel } from '@neckfall/answers';
import { nearbyLarger, type Town } from '@neckfall/data';
import { elevationSpreadKm, elevationSpreadWarningM } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { PlaceOptions } from '../options/place-options.ts';
import type { Assets } from './assets.ts';

const othersNamed = 4;

export function placeWarnings(
  place: Place,
  options: PlaceOptions,
  assets: Assets,
  speaker: Speaker,
): string[] {
  const warnings: string[] = [];
  const { say, all, any, quantity, number } = speaker;
  if (place.town && place.others.length > 0 && 'town' in options.asked) {
    const named = place.others.slice(0, othersNamed).map((town) => labelApart(town, assets, speaker));
    const more = place.others.length - named.length;
    warnings.push(
      say('warning.ambiguous', {
        asked: options.asked.town,
        taken: townLabel(place.town, speaker),
        others: more > 0 ? all([...named, say('warning.more-places', { more: number(more) })]) : any(named),
      }),
    );
  }
  if (elevationIsUnsure(place)) {
    warnings.push(
      say('warning.hilly', {
        elevation: quantity('elevation', place.elevationM),
        spread: quantity('elevation', elevationSpreadWarningM),
        reach: quantity('distance', elevationSpreadKm),
      }),
    );
  }
  return warnings;
}

/** Towns of one name told apart by country, state and the nearest larger town. */
function labelApart(town: Town, assets: Assets, speaker: Speaker): string {
  const label = townLabel(town, speaker);
  const larger = nearbyLarger(assets.gazetteer(), town);
  return larger ? speaker.say('place.other', { town: label, larger: larger.name }) : label;
}
