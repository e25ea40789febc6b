import { latitudeName, warmthWords } from '@neckfall/answers';
import { lastLatitude, mostWarmerC, type OnionType, onionTypes, sowingYear } from '@neckfall/engine';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { voice } from '../../state/settings.ts';
import type { LatitudeReply } from '../../worker/latitude-season.ts';
import { SettingSlider } from './SettingSlider.tsx';
import { isSouth, latitudeOn, type Setting, turned } from './setting.ts';

type Props = {
  setting: Setting;
  /** What is known of it, or of one before. */
  reply: LatitudeReply | null;
  onMove: (setting: Setting) => void;
};

/** The tropics and the polar circles lie at 23.4° and 66.6°; the rest are where gardeners live. */
const stops = [
  { degrees: 0, words: 'app.latitudes.stop.equator' },
  { degrees: 23, words: 'app.latitudes.stop.tropic' },
  ...[30, 37, 45, 52, 60].map((degrees) => ({ degrees, words: 'app.latitudes.stop.degrees' }) as const),
  { degrees: 67, words: 'app.latitudes.stop.circle' },
] as const;
const warmths = [-5, 0, 5] as const;
const threeWeeks = 21;
const lastOfYear = 364;

/** How far from the equator, with stops on the way. */
export function LatitudeSetting({ setting, onMove }: Omit<Props, 'reply'>) {
  const speaker = voice.value;
  const { say } = speaker;
  const { latitudeDeg } = setting;
  const moveTo = (degrees: number) =>
    onMove({ ...setting, latitudeDeg: latitudeOn(isSouth(latitudeDeg) ? -1 : 1, degrees) });
  return (
    <form class="walk-latitude" onSubmit={(event) => event.preventDefault()}>
      <SettingSlider
        label={say('app.latitudes.latitude')}
        text={latitudeName(latitudeDeg, speaker)}
        value={Math.abs(latitudeDeg)}
        min={0}
        max={lastLatitude}
        step={1}
        page={5}
        onValue={moveTo}
      >
        <fieldset class="stops">
          <legend class="unseen">{say('app.latitudes.stops')}</legend>
          {stops.map(({ degrees, words }) => (
            <button
              key={degrees}
              type="button"
              aria-current={Math.abs(latitudeDeg) === degrees ? 'true' : undefined}
              onClick={() => moveTo(degrees)}
            >
              {say(words, { degrees })}
            </button>
          ))}
        </fieldset>
      </SettingSlider>
    </form>
  );
}

/** All else that can be moved. */
export function OtherSettings({ setting, reply, onMove }: Props) {
  const speaker = voice.value;
  const { say } = speaker;
  const { latitudeDeg, warmerC, startDay, type } = setting;
  const side = isSouth(latitudeDeg) ? -1 : 1;
  const from = sowingYear(startDay, latitudeDeg);
  const clamped = (day: number) => Math.max(from, Math.min(from + lastOfYear, day));
  return (
    <form class="walk-others" onSubmit={(event) => event.preventDefault()}>
      <SettingSlider
        label={say('app.latitudes.warmth')}
        text={
          reply
            ? say('app.latitudes.warmth.value', {
                warmth: warmthWords(warmerC, speaker),
                mean: speaker.quantity('temperature', reply.meanC),
                night: speaker.quantity('temperature', reply.coldestC),
              })
            : warmthWords(warmerC, speaker)
        }
        value={warmerC}
        min={-mostWarmerC}
        max={mostWarmerC}
        step={0.5}
        page={2}
        onValue={(warmer) => onMove({ ...setting, warmerC: warmer })}
      >
        <div class="stops">
          {warmths.map((warmer) => (
            <button
              key={warmer}
              type="button"
              aria-current={warmerC === warmer ? 'true' : undefined}
              onClick={() => onMove({ ...setting, warmerC: warmer })}
            >
              {warmthWords(warmer, speaker)}
            </button>
          ))}
        </div>
      </SettingSlider>
      <SettingSlider
        label={say('app.latitudes.sown')}
        text={speaker.day(startDay)}
        value={startDay}
        min={from}
        max={from + lastOfYear}
        step={1}
        page={7}
        onValue={(day) => onMove({ ...setting, startDay: day })}
      >
        <div class="stops">
          {[-threeWeeks, threeWeeks].map((by) => (
            <button
              key={by}
              type="button"
              onClick={() => onMove({ ...setting, startDay: clamped(startDay + by) })}
            >
              {say(by < 0 ? 'app.latitudes.earlier' : 'app.latitudes.later')}
            </button>
          ))}
        </div>
      </SettingSlider>
      <div class="setting-words">
        <ChoiceField<OnionType>
          label={say('app.latitudes.kind')}
          value={type}
          options={onionTypes.map((one) => ({ value: one, label: say(`type.${one}`) }))}
          onValue={(one) => onMove({ ...setting, type: one })}
        />
        <ChoiceField
          label={say('app.latitudes.side')}
          value={side < 0 ? 'south' : 'north'}
          options={(['north', 'south'] as const).map((one) => ({
            value: one,
            label: say(`app.latitudes.${one}`),
          }))}
          onValue={() => onMove(turned(setting))}
        />
      </div>
      <p class="hint">{say('app.latitudes.keys')}</p>
    </form>
  );
}
