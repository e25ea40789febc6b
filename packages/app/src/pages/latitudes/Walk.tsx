import { latitudeHeadline } from '@neckfall/answers';
import { type LatitudeClimates, latitudeSeed, latitudeYears, lowM, sowingYear } from '@neckfall/engine';
import { useMemo, useRef } from 'preact/hooks';
import { AnswerFoot } from '../../controls/AnswerFoot.tsx';
import { Fault } from '../../controls/Fault.tsx';
import { Working } from '../../controls/Working.tsx';
import { place } from '../../state/place.ts';
import { asked, hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import { InTurn } from '../../turns/InTurn.tsx';
import type { LatitudeReply } from '../../worker/latitude-season.ts';
import { BulbsFigure } from './BulbsFigure.tsx';
import { Grounds } from './Grounds.tsx';
import { LineFigure } from './LineFigure.tsx';
import { RidgeFigure } from './RidgeFigure.tsx';
import { Said } from './Said.tsx';
import { LatitudeSetting, OtherSettings } from './Settings.tsx';
import { addressOf, isSouth, settingOf } from './setting.ts';
import { useLiveLatitude } from './use-live-latitude.ts';
import { useMovedSetting } from './use-moved-setting.ts';
import { Zone } from './Zone.tsx';

/** The sliders, and all that follows them. */
export function Walk({ climates }: { climates: LatitudeClimates }) {
  const speaker = voice.value;
  const { say } = speaker;
  const { setting: resting, misread } = settingOf(asked.value, today.value, place.value?.latitudeDeg ?? null);
  const [setting, onMove] = useMovedSetting(resting);
  const { reply, isFresh, failed } = useLiveLatitude(climates, setting);
  const side = isSouth(setting.latitudeDeg) ? -1 : 1;
  const from = sowingYear(setting.startDay, setting.latitudeDeg);
  const zone = useMemo(
    () => <Zone climates={climates} side={side} from={from} />,
    [climates, side, from, speaker],
  );
  // tables are for reading: they follow once the hand rests
  const rested = useRef<LatitudeReply | null>(null);
  if (reply && (rested.current === null || (isFresh && setting === resting))) rested.current = reply;
  const read = rested.current;
  const at = useMemo(
    () => ({ latitudeDeg: resting.latitudeDeg, warmerC: resting.warmerC }),
    [resting.latitudeDeg, resting.warmerC],
  );
  const said = useMemo(() => reply && <Said reply={reply} isFresh={isFresh} />, [reply, isFresh, speaker]);
  const ridge = useMemo(
    () => reply && <RidgeFigure reply={reply} read={read ?? reply} {...at} />,
    [reply, read, at, speaker],
  );
  const bulbs = useMemo(
    () => (
      <section key="bulbs" aria-labelledby="bulbs">
        <h2 id="bulbs">{say('app.latitudes.bulbs')}</h2>
        {reply ? (
          <BulbsFigure
            title={say('app.latitudes.bulbs.table')}
            summaries={reply.kinds.map(({ summary }) => summary)}
            read={read?.kinds.map(({ summary }) => summary)}
            {...at}
          />
        ) : (
          <Working />
        )}
      </section>
    ),
    [reply, read, at, speaker],
  );
  const here = Math.abs(setting.latitudeDeg);
  const { warmerC } = resting;
  const line = useMemo(
    () => (
      <section key="line" aria-labelledby="line">
        <h2 id="line">{say('app.latitudes.line')}</h2>
        <LineFigure climates={climates} side={side} warmerC={warmerC} from={from} here={here} />
      </section>
    ),
    [climates, side, warmerC, from, here, speaker],
  );
  const grounds = useMemo(
    () => (
      <div key="grounds">
        <p>
          <a href={hrefTo('where')}>{say('app.latitudes.real')}</a>
        </p>
        <Grounds lowM={lowM} years={latitudeYears} seed={latitudeSeed} />
      </div>
    ),
    [speaker],
  );
  if (failed !== null) return <Fault reason={failed} />;
  return (
    <div class="latitudes" data-waiting={isFresh ? undefined : true}>
      <h1 class={reply ? 'answer' : 'unseen'}>
        {reply ? latitudeHeadline(reply, speaker) : say('app.page.latitudes')}
      </h1>
      {misread.map(({ what, value }) => (
        <p key={what} class="alarm" role="alert">
          {say('app.latitudes.misread', { what, value })}
        </p>
      ))}
      {/* what holds the sliders comes first, and at once; each further picture in a task of its own */}
      <InTurn>
        <div key="walk" class="walk">
          <LatitudeSetting setting={setting} onMove={onMove} />
          <section class="walk-ridge" aria-labelledby="ridge">
            <h2 id="ridge">{say('app.latitudes.year')}</h2>
            {reply ? ridge : <Working />}
          </section>
          <div class="walk-rest">
            <OtherSettings setting={setting} reply={reply} onMove={onMove} />
            {said}
          </div>
        </div>
        {bulbs}
        {line}
        {zone}
        {grounds}
        <AnswerFoot shown={addressOf(setting)} />
      </InTurn>
    </div>
  );
}
