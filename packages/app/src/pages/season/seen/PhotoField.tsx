import { useId } from 'preact/hooks';
import { voice } from '../../../state/settings.ts';

/** A photo from the camera or the device, to go with an entry. */
export function PhotoField({ onPhoto }: { onPhoto: (photo: File | null) => void }) {
  const { say } = voice.value;
  const id = useId();
  return (
    <div class="wide">
      <label for={id}>{say('app.seen.photo')}</label>
      <input
        id={id}
        type="file"
        accept="image/*"
        aria-describedby={`${id}-hint`}
        onChange={(event) => onPhoto(event.currentTarget.files?.[0] ?? null)}
      />
      <p id={`${id}-hint`} class="hint">
        {say('app.seen.photo.hint')}
      </p>
    </div>
  );
}
