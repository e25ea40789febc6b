import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';

type Props = {
  label: string;
  /** The value in words, beside the label and for those who listen. */
  text: string;
  value: number;
  min: number;
  max: number;
  step: number;
  /** What Page Up and Page Down move by. */
  page: number;
  onValue: (value: number) => void;
  /** Ways to a value without dragging. */
  children?: ComponentChildren;
};

/** One thing that can be moved: by hand, by keys, and by the buttons under it. */
export function SettingSlider({ label, text, value, min, max, step, page, onValue, children }: Props) {
  const id = useId();
  const move = (event: KeyboardEvent & { currentTarget: HTMLInputElement }) => {
    const by = event.key === 'PageUp' ? page : event.key === 'PageDown' ? -page : 0;
    if (by === 0) return;
    event.preventDefault();
    // from where the slider stands, which a quick hand moves before the page has followed
    const slider = event.currentTarget;
    slider.valueAsNumber = Math.min(max, Math.max(min, slider.valueAsNumber + by));
    onValue(slider.valueAsNumber);
  };
  return (
    <div class="setting">
      <p class="setting-head">
        <label for={id}>{label}</label> <output for={id}>{text}</output>
      </p>
      <input
        id={id}
        type="range"
        min={min}
        max={max}
        step={step}
        value={value}
        aria-valuetext={text}
        onKeyDown={move}
        onInput={(event) => onValue(event.currentTarget.valueAsNumber)}
      />
      {children}
    </div>
  );
}
