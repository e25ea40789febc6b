import { placeName, site } from '../../state/place.ts';
import { voice } from '../../state/settings.ts';

/** Helper F builds this page. */
export function Season() {
  return site.value && <h1>{`${voice.value.say('app.page.season')}: ${placeName.value}`}</h1>;
}
