import { gardenRanges } from '@neckfall/engine';
import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { MeasureField } from '../../controls/MeasureField.tsx';
import type { BedSaid } from '../../garden/beds.ts';
import { units, voice } from '../../state/settings.ts';
import { BedGround } from './BedGround.tsx';

/** Short enough to be said. */
const longestName = 80;

type Props = { before: BedSaid; onKeep: (said: BedSaid) => Promise<void>; onLeave: () => void };

/** A bed: name and size, and folded away all else that can be said of it. */
export function BedForm({ before, onKeep, onLeave }: Props) {
  const { say } = voice.value;
  const id = useId();
  const name = useRef<HTMLInputElement>(null);
  const [said, setSaid] = useState(before);
  const [isNameless, setNameless] = useState(false);
  const put = (changed: Partial<BedSaid>) => setSaid((now) => ({ ...now, ...changed }));
  useEffect(() => name.current?.focus(), []);

  function keep(form: HTMLFormElement): void {
    const clean = said.name.trim();
    setNameless(clean === '');
    // what was refused is not kept silently as it was
    const refused = form.querySelector<HTMLElement>('[aria-invalid="true"]');
    const first = clean === '' ? name.current : refused;
    if (first) {
      first.closest('details')?.setAttribute('open', '');
      first.focus();
    } else void onKeep({ ...said, name: clean });
  }

  const unit = units.value === 'us' ? 'feet' : 'metres';
  return (
    <form
      class="form bed"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        keep(event.currentTarget);
      }}
    >
      <div>
        <label for={id}>{say('app.garden.keep.name')}</label>
        <input
          id={id}
          ref={name}
          type="text"
          autocomplete="off"
          maxLength={longestName}
          value={said.name}
          aria-invalid={isNameless}
          aria-describedby={`${id}-hint`}
          onInput={(event) => {
            put({ name: event.currentTarget.value });
            setNameless(false);
          }}
        />
        <p
          id={`${id}-hint`}
          class={isNameless ? 'hint alarm' : 'hint'}
          role={isNameless ? 'alert' : undefined}
        >
          {say(isNameless ? 'app.bed.name.bad' : 'app.bed.name.hint')}
        </p>
      </div>
      <MeasureField
        label={say('app.bed.length', { unit })}
        hint={say('app.bed.length.hint')}
        measure="m"
        value={said.lengthM}
        range={gardenRanges.lengthM}
        onValue={(lengthM) => put({ lengthM })}
      />
      <MeasureField
        label={say('app.bed.width', { unit })}
        hint=""
        measure="m"
        value={said.widthM}
        range={gardenRanges.widthM}
        onValue={(widthM) => put({ widthM })}
      />
      <details class="wide">
        <summary>{say('app.bed.more')}</summary>
        <p class="hint">{say('app.bed.more.hint')}</p>
        <div class="form">
          <BedGround said={said} put={put} />
        </div>
      </details>
      <div class="wide row">
        <button type="submit">{say('app.bed.keep')}</button>
        <button type="button" onClick={onLeave}>
          {say('app.bed.leave')}
        </button>
      </div>
    </form>
  );
}
