import { useId, useState } from 'preact/hooks';
import { forms } from '../address/address-form.ts';
import { voice } from '../state/settings.ts';

type Point = { latitudeDeg: number; longitudeDeg: number };

/** Latitude and longitude as text, decimal commas too where a semicolon parts the two, and a name for the place. */
export function CoordinatesField({ onPoint }: { onPoint: (point: Point, name: string | null) => void }) {
  const { say } = voice.value;
  const id = useId();
  const [text, setText] = useState('');
  const [name, setName] = useState('');
  const [bad, setBad] = useState<string | null>(null);

  function take(event: Event): void {
    event.preventDefault();
    const point = forms.at.read(text.includes(';') ? text.replaceAll(',', '.').replace(';', ',') : text);
    if (point === undefined) setBad(text);
    else onPoint(point, forms.name.read(name) ?? null);
  }

  return (
    <form onSubmit={take} class="search" novalidate>
      <label for={`${id}-at`}>{say('app.coordinates')}</label>
      <input
        id={`${id}-at`}
        type="text"
        autocomplete="off"
        value={text}
        aria-invalid={bad !== null}
        aria-describedby={`${id}-hint`}
        onInput={(event) => setText(event.currentTarget.value)}
      />
      <p
        id={`${id}-hint`}
        class={bad === null ? 'hint' : 'hint alarm'}
        role={bad === null ? undefined : 'alert'}
      >
        {bad === null ? say('app.coordinates.hint') : say('app.coordinates.bad', { value: bad })}
      </p>
      <label for={`${id}-name`}>{say('app.coordinates.name')}</label>
      <input
        id={`${id}-name`}
        type="text"
        autocomplete="off"
        value={name}
        onInput={(event) => setName(event.currentTarget.value)}
      />
      <div class="row">
        <button type="submit">{say('app.coordinates.go')}</button>
      </div>
    </form>
  );
}
