import { useId, useState } from 'preact/hooks';
import { voice } from '../../state/settings.ts';

type Props = {
  onFiles: (files: File[]) => void;
};

/** Files chosen, or dropped on the field. */
export function ChooseFiles({ onFiles }: Props) {
  const { say } = voice.value;
  const id = useId();
  const [isOver, setOver] = useState(false);

  function take(input: HTMLInputElement): void {
    const files = [...(input.files ?? [])];
    // the same file may be chosen again, once it is mended
    input.value = '';
    if (files.length > 0) onFiles(files);
  }

  function drop(event: DragEvent): void {
    event.preventDefault();
    setOver(false);
    const files = [...(event.dataTransfer?.files ?? [])];
    if (files.length > 0) onFiles(files);
  }

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping is one more way; the field in it takes keys
    <div
      class={isOver ? 'open drop over' : 'open drop'}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={drop}
    >
      <label for={id}>{say('app.weather.choose.label')}</label>
      <input
        id={id}
        type="file"
        multiple
        aria-describedby={`${id}-hint`}
        onChange={(event) => take(event.currentTarget)}
      />
      <p id={`${id}-hint`} class="hint">
        {say('app.weather.choose.hint')}
      </p>
    </div>
  );
}
