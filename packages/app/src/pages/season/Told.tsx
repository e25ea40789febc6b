import { gardenFault, gardenStanding } from '../../state/garden.ts';
import { planting } from '../../state/planting.ts';
import { voice } from '../../state/settings.ts';
import { type ToldAt, takeBack, told, triedAt } from './told.ts';

const stepsAt = { entry: 'seen', list: 'seen', week: 'work', work: 'work' } as const;

type Props = {
  at: ToldAt;
  /** The button that takes back goes with it: what to go on from. */
  onTakenBack?: () => void;
};

/** What was just noted, changed or removed, with the way back while it is the last step. */
export function Told({ at, onTakenBack }: Props) {
  const { say } = voice.value;
  const { value } = told;
  const isHere = value?.at === at && value.of === planting.value?.id;
  const undo = gardenStanding.value?.undo;
  const canGoBack = isHere && undo?.isElsewhere === false && undo.code.startsWith(stepsAt[at]);
  return (
    <>
      <p role="status" class="noted-told">
        {isHere && value.words}
      </p>
      {canGoBack && (
        <button
          type="button"
          onClick={async () => {
            if (await takeBack()) onTakenBack?.();
          }}
        >
          {say('app.seen.take-back')}
        </button>
      )}
      {at === triedAt.value && gardenFault.value !== null && (
        <p role="alert" class="alarm">
          {say('app.garden.fault', { reason: gardenFault.value })}
        </p>
      )}
    </>
  );
}
