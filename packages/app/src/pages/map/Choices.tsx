import { atlasRegionNames } from '@neckfall/answers';
import { dayLengthClasses, startMethods } from '@neckfall/engine';
import { mapShows } from '@neckfall/pictures';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { asked, go } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { showsAsked, type ViewName, viewAsked, viewText } from './map-asked.ts';

/** What is shown, of which onions, and where: nothing of it is worked out anew but for another part of the Earth. */
export function Choices() {
  const { say } = voice.value;
  const { onlyClass, onlyStart, at } = asked.value;
  const shows = showsAsked();
  const { view, cross } = viewAsked();
  const views: ViewName[] = [...(at ? (['here'] as const) : []), ...atlasRegionNames];
  return (
    <form class="atlas-choices" onSubmit={(event) => event.preventDefault()}>
      <fieldset>
        <legend>{say('app.atlas.shows')}</legend>
        <div class="row">
          {mapShows.map((one) => (
            <label key={one}>
              <input
                type="radio"
                name="shows"
                checked={one === shows}
                onChange={() => go({ shows: one === 'kind' ? null : one }, { replace: true })}
              />
              {say(`app.atlas.shows.${one}`)}
            </label>
          ))}
        </div>
      </fieldset>
      <div class="form">
        <ChoiceField
          label={say('app.atlas.view')}
          value={view}
          options={views.map((value) => ({ value, label: say(`app.atlas.view.${value}`) }))}
          onValue={(value) => go({ view: viewText(value, cross) })}
        />
        <ChoiceField
          label={say('app.atlas.kind')}
          value={onlyClass ?? 'any'}
          options={(['any', ...dayLengthClasses] as const).map((value) => ({
            value,
            label: value === 'any' ? say('app.atlas.kind.any') : say(`class.${value}`),
          }))}
          onValue={(value) => go({ onlyClass: value === 'any' ? null : value }, { replace: true })}
        />
        <ChoiceField
          label={say('app.atlas.way')}
          value={onlyStart ?? 'any'}
          options={(['any', ...startMethods] as const).map((value) => ({
            value,
            label: value === 'any' ? say('app.atlas.way.any') : say(`start.${value}`),
          }))}
          onValue={(value) => go({ onlyStart: value === 'any' ? null : value }, { replace: true })}
        />
      </div>
    </form>
  );
}
