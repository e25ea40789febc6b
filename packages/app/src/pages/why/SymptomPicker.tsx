import { symptomLabel, symptomNote, symptomsLike } from '@neckfall/answers';
import { mostSymptoms, type Symptom, type SymptomTime, symptoms, symptomTimes } from '@neckfall/engine';
import { SymptomDrawing } from '@neckfall/pictures';
import type { ComponentChildren } from 'preact';
import { useId, useState } from 'preact/hooks';
import { voice } from '../../state/settings.ts';
import { InTurn } from '../../turns/InTurn.tsx';
import '../../look/symptoms.css';

const times = ['growing', 'lifting', 'store'] as const satisfies readonly SymptomTime[];

type Props = {
  chosen: readonly Symptom[];
  onChoose: (chosen: readonly Symptom[]) => void;
  onSee: () => void;
  /** The crop in a line. */
  line: ComponentChildren;
};

/** All that may be seen of a crop, to be pressed; found by words of one's own too. */
export function SymptomPicker({ chosen, onChoose, onSee, line }: Props) {
  const { say } = voice.value;
  const [query, ask] = useState('');
  const [isFull, setFull] = useState(false);

  function press(symptom: Symptom): void {
    const isOn = chosen.includes(symptom);
    setFull(!isOn && chosen.length >= mostSymptoms);
    if (isOn) onChoose(chosen.filter((other) => other !== symptom));
    else if (chosen.length < mostSymptoms) onChoose([...chosen, symptom]);
  }

  const group = (title: string, of: readonly Symptom[]) => (
    <Group key={title} title={title} of={of} chosen={chosen} onPress={press} />
  );
  const typed = query.trim();
  const like = typed === '' ? null : symptomsLike(typed, voice.value);
  return (
    <>
      <form
        class="symptoms"
        onSubmit={(event) => {
          event.preventDefault();
          if (chosen.length > 0) onSee();
        }}
      >
        <Search query={query} found={like?.length ?? null} onQuery={ask} />
        <InTurn live>
          {like === null || like.length === 0
            ? times.map((time) =>
                group(
                  say(`app.why.time.${time}`),
                  symptoms.filter((symptom) => symptomTimes[symptom] === time),
                ),
              )
            : group(say('app.why.search.like', { query: typed }), like)}
        </InTurn>
        <div class="see-why">
          <p role="status">
            {isFull
              ? say('app.why.most', { most: mostSymptoms })
              : say('app.why.chosen', { count: chosen.length })}
          </p>
          <button type="submit" disabled={chosen.length === 0}>
            {say('app.why.see')}
          </button>
        </div>
      </form>
      {line}
    </>
  );
}

type SearchProps = { query: string; found: number | null; onQuery: (query: string) => void };

function Search({ query, found, onQuery }: SearchProps) {
  const { say } = voice.value;
  const id = useId();
  return (
    <div class="search">
      <label for={id}>{say('app.why.search')}</label>
      <input
        id={id}
        type="search"
        autocomplete="off"
        value={query}
        placeholder={say('app.why.search.hint')}
        aria-describedby={`${id}-hint`}
        onInput={(event) => onQuery(event.currentTarget.value)}
      />
      <p id={`${id}-hint`} class="hint" role="status">
        {found !== null && say('app.why.search.found', { count: found, query: query.trim() })}
      </p>
    </div>
  );
}

type GroupProps = {
  title: string;
  of: readonly Symptom[];
  chosen: readonly Symptom[];
  onPress: (symptom: Symptom) => void;
};

function Group({ title, of, chosen, onPress }: GroupProps) {
  const id = useId();
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      <ul class="tiles">
        {of.map((symptom) => (
          <li key={symptom}>
            <button
              type="button"
              class="tile"
              aria-pressed={chosen.includes(symptom)}
              onClick={() => onPress(symptom)}
            >
              <SymptomDrawing of={symptom} />
              <span>{symptomLabel(symptom, voice.value)}</span>
            </button>
            {chosen.includes(symptom) && <p class="hint">{symptomNote(symptom, voice.value)}</p>}
          </li>
        ))}
      </ul>
    </section>
  );
}
