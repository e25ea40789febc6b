import { gardenFault, gardenStanding } from '../../../state/garden.ts';
import { planting } from '../../../state/planting.ts';
import { voice } from '../../../state/settings.ts';
import { takeBack, told } from './note.ts';

/** What was just noted, changed or removed, with the way back while it is the last step. */
export function Told({ at }: { at: 'entry' | 'list' }) {
  const { say } = voice.value;
  const { value } = told;
  const isHere = value?.at === at && value.of === planting.value?.id;
  const undo = gardenStanding.value?.undo;
  const canGoBack = isHere && undo?.isElsewhere === false && undo.code.startsWith('seen');
  return (
    <>
      <p role="status" class="noted-told">
        {isHere && value.words}
      </p>
      {canGoBack && (
        <button type="button" onClick={() => void takeBack()}>
          {say('app.seen.take-back')}
        </button>
      )}
      {at === 'entry' && gardenFault.value !== null && (
        <p role="alert" class="alarm">
          {say('app.garden.fault', { reason: gardenFault.value })}
        </p>
      )}
    </>
  );
}
