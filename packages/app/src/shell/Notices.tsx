import { elsewhere, takeUpdate, updateReady } from '../offline/updates.ts';
import { gardenStanding } from '../state/garden.ts';
import { address, go } from '../state/route.ts';
import { voice } from '../state/settings.ts';

/** What the reader should know before the answer: values of a link left out, another day, a new version. */
export function Notices() {
  const { say, dayWithYear } = voice.value;
  const { misread, asked } = address.value;
  const { unkept = null, garden = null } = gardenStanding.value ?? {};
  return (
    <div class="notice" role="status">
      {misread.map(({ key, value, expects }) => (
        <p key={key}>{say('app.misread', { key, value, expects })}</p>
      ))}
      {asked.today !== null && (
        <p>
          {say('app.other-today', { date: dayWithYear(asked.today) })}{' '}
          <button type="button" class="plain" onClick={() => go({ today: null }, { replace: true })}>
            {say('app.real-today')}
          </button>
        </p>
      )}
      {updateReady.value && (
        <p>
          {say('app.update')}{' '}
          <button type="button" class="plain" onClick={takeUpdate}>
            {say('app.update.now')}
          </button>
        </p>
      )}
      {unkept !== null && unkept !== 'refused' && <p>{say('app.garden.unkept', { why: unkept })}</p>}
      {unkept !== null && garden && <p>{say('app.garden.not-kept')}</p>}
      {elsewhere.value && <p>{say('app.update.elsewhere')}</p>}
    </div>
  );
}
