import { placeName, site } from '../../state/place.ts';
import { voice } from '../../state/settings.ts';

/** Helper F builds this page. */
export function When() {
  return site.value && <h1>{`${voice.value.say('app.page.when')}: ${placeName.value}`}</h1>;
}
