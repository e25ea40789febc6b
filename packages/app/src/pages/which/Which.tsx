import { placeName, site } from '../../state/place.ts';
import { voice } from '../../state/settings.ts';

/** Helper G builds this page. */
export function Which() {
  return site.value && <h1>{`${voice.value.say('app.page.which')}: ${placeName.value}`}</h1>;
}
