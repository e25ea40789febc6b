import { type Colour, colours } from '@neckfall/data';
import { type DayLengthClass, dayLengthClasses, type StartMethod, startMethods } from '@neckfall/engine';
import { useId } from 'preact/hooks';
import type { Asked } from '../../address/address-form.ts';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { NumberField } from '../../controls/NumberField.tsx';
import { go } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import type { Filters, Wanted } from './wanted.ts';

const unfiltered = {
  onlyClass: null,
  colour: null,
  keeps: null,
  mild: null,
  onlyStart: null,
  have: null,
} as const;

/** What the grower wants of an onion, in a form that says in a sentence what it does. */
export function Narrow({ filters, wanted }: { filters: Filters; wanted: Wanted }) {
  const { say, all, any } = voice.value;
  const list = inWords(filters);
  return (
    <>
      <details class="narrow">
        <summary>
          {list.length > 0 ? say('app.which.narrow.among', { list: all(list) }) : say('app.which.narrow.is')}{' '}
          {say('app.which.narrow.change')}
        </summary>
        <Form filters={filters} />
        {list.length > 0 && (
          <p>
            <button type="button" onClick={() => change(unfiltered)}>
              {say('app.which.narrow.clear')}
            </button>
          </p>
        )}
      </details>
      {wanted.unknown.map(({ name, nearest }) => (
        <p key={name} role="alert" class="alarm">
          {say('app.which.narrow.have-unknown', {
            name,
            near: nearest.length,
            nearest: any(nearest),
          })}
        </p>
      ))}
      {wanted.kinds.length === 0 && (
        <p role="alert" class="alarm">
          {say('app.which.nothing', { list: all(list) })}
        </p>
      )}
    </>
  );
}

function Form({ filters }: { filters: Filters }) {
  const { say } = voice.value;
  const id = useId();
  const any = { value: '' as const, label: say('app.which.narrow.any') };
  return (
    <form class="form" onSubmit={(event) => event.preventDefault()}>
      <ChoiceField<Colour | ''>
        label={say('app.which.narrow.colour')}
        value={filters.colour ?? ''}
        options={[any, ...colours.map((value) => ({ value, label: say(`colour.${value}`) }))]}
        onValue={(colour) => change({ colour: colour === '' ? null : colour })}
      />
      <NumberField
        label={say('app.which.narrow.keeps')}
        hint={say('app.which.narrow.keeps.hint')}
        value={filters.keeps}
        min={1}
        max={12}
        onValue={(keeps) => change({ keeps })}
      />
      <ChoiceField<StartMethod | ''>
        label={say('app.which.narrow.start')}
        value={filters.onlyStart ?? ''}
        options={[any, ...startMethods.map((value) => ({ value, label: say(`start.${value}`) }))]}
        onValue={(start) => change({ onlyStart: start === '' ? null : start })}
      />
      <ChoiceField<DayLengthClass | ''>
        label={say('app.which.narrow.day')}
        value={filters.onlyClass ?? ''}
        options={[any, ...dayLengthClasses.map((value) => ({ value, label: say(`class.${value}`) }))]}
        onValue={(printed) => change({ onlyClass: printed === '' ? null : printed })}
      />
      <div>
        <label for={id}>{say('app.which.narrow.have')}</label>
        <input
          id={id}
          type="text"
          autocomplete="off"
          aria-describedby={`${id}-hint`}
          value={filters.have?.join(', ') ?? ''}
          onChange={(event) => change({ have: namesIn(event.currentTarget.value) })}
        />
        <p id={`${id}-hint`} class="hint">
          {say('app.which.narrow.have.hint')}
        </p>
      </div>
      <label>
        <input
          type="checkbox"
          checked={filters.mild === true}
          onChange={(event) => change({ mild: event.currentTarget.checked || null })}
        />
        {say('app.which.narrow.mild')}
      </label>
    </form>
  );
}

/** Each change is no step of its own: back leads to the page before. */
function change(changes: Partial<Asked>): void {
  go(changes, { replace: true });
}

function namesIn(text: string): string[] | null {
  const names = text
    .split(/[,;]/)
    .map((name) => name.trim())
    .filter((name) => name !== '');
  return names.length > 0 ? names : null;
}

/** What was asked, as the rest of "Only: …". */
function inWords({ onlyClass, colour, keeps, mild, onlyStart, have }: Filters): string[] {
  const { say, any } = voice.value;
  return [
    ...(colour === null ? [] : [say(`colour.${colour}`)]),
    ...(mild === null ? [] : [say('app.which.narrow.mild-is')]),
    ...(keeps === null ? [] : [say('app.which.narrow.keeps-is', { months: keeps })]),
    ...(onlyClass === null ? [] : [say(`class.${onlyClass}`)]),
    ...(onlyStart === null ? [] : [say(`start.${onlyStart}`)]),
    ...(have === null ? [] : [any(have)]),
  ];
}
