import { useId, useState } from 'preact/hooks';
import { useTyped } from '../../controls/use-typed.ts';

type Props = {
  label: string;
  hint: string;
  value: string;
  /** Why a text won't do; null where it does. */
  bad?: (text: string) => string | null;
  onValue: (text: string) => void;
};

/** Words of the reader's own, taken when the field is left. */
export function TextField({ label, hint, value, bad = () => null, onValue }: Props) {
  const id = useId();
  const [text, setText] = useTyped(value);
  const [why, setWhy] = useState<string | null>(null);

  function take(text: string): void {
    const typed = text.trim();
    const refused = bad(typed);
    setWhy(refused);
    if (refused === null) onValue(typed);
  }

  return (
    <div>
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        autocomplete="off"
        maxLength={200}
        value={text}
        aria-invalid={why !== null}
        aria-describedby={`${id}-hint`}
        onInput={(event) => setText(event.currentTarget.value)}
        onChange={(event) => take(event.currentTarget.value)}
      />
      <p
        id={`${id}-hint`}
        class={why === null ? 'hint' : 'hint alarm'}
        role={why === null ? undefined : 'alert'}
      >
        {why ?? hint}
      </p>
    </div>
  );
}
