import { handoutLimits, measuredOwn } from '@neckfall/answers';
import type { Paper } from '@neckfall/pictures';
import { useId } from 'preact/hooks';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { useTyped } from '../../controls/use-typed.ts';
import { placeName } from '../../state/place.ts';
import { asked, go } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { paperSaid, papersHad } from './paper-said.ts';

/** The teacher's own words and paper; they stay in the link. */
export function OwnWords() {
  const { say } = voice.value;
  return (
    <section aria-labelledby="own">
      <h2 id="own">{say('app.sheet.own')}</h2>
      <form class="form" onSubmit={(event) => event.preventDefault()}>
        <OwnField
          field="heading"
          hint={say('app.sheet.heading.hint', { usual: say('handout.heading', { place: placeName.value }) })}
        />
        <OwnField field="note" hint={say('app.sheet.note.hint')} />
        <ChoiceField<Paper>
          label={say('app.sheet.paper')}
          value={paperSaid()}
          options={papersHad.map((value) => ({ value, label: say(`app.sheet.paper.${value}`) }))}
          onValue={(paper) => go({ paper }, { replace: true })}
        />
      </form>
    </section>
  );
}

function OwnField({ field, hint }: { field: 'heading' | 'note'; hint: string }) {
  const { say } = voice.value;
  const id = useId();
  const [text, setText] = useTyped(asked.value[field] ?? '');
  const { words, characters, isTooLong } = measuredOwn(field, text);
  const most = handoutLimits[field];
  const take = (typed: string) => {
    setText(typed);
    go({ [field]: typed === '' ? null : typed }, { replace: true });
  };
  const shared = {
    id,
    value: text,
    maxLength: 3 * most.characters,
    'aria-invalid': isTooLong,
    'aria-describedby': `${id}-hint`,
  };
  return (
    <div class={`own-${field}`}>
      <label for={id}>{say(`app.sheet.${field}`)}</label>
      {field === 'heading' ? (
        <input
          type="text"
          autocomplete="off"
          {...shared}
          onInput={(event) => take(event.currentTarget.value)}
        />
      ) : (
        <textarea rows={4} {...shared} onInput={(event) => take(event.currentTarget.value)} />
      )}
      <p id={`${id}-hint`} class={isTooLong ? 'hint alarm' : 'hint'} role={isTooLong ? 'alert' : undefined}>
        {isTooLong
          ? say('app.sheet.too-long', {
              words,
              characters,
              most: most.words,
              mostCharacters: most.characters,
            })
          : `${hint} ${say('app.sheet.count', { words, most: most.words })}`}
      </p>
    </div>
  );
}
