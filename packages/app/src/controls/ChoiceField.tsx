import { useId } from 'preact/hooks';

type Props<Value extends string> = {
  label: string;
  value: Value;
  options: readonly { value: Value; label: string }[];
  onValue: (value: Value) => void;
};

/** One of a few words. */
export function ChoiceField<Value extends string>({ label, value, options, onValue }: Props<Value>) {
  const id = useId();
  return (
    <div>
      <label for={id}>{label}</label>
      <select id={id} value={value} onChange={(event) => onValue(event.currentTarget.value as Value)}>
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
    </div>
  );
}
