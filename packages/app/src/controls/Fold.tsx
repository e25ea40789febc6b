import type { ComponentChildren } from 'preact';

type Props = {
  /** Of the heading, which names the part. */
  id: string;
  title: string;
  class?: string;
  open?: boolean;
  /** Told when it is opened or folded. */
  onToggle?: (isOpen: boolean) => void;
  children: ComponentChildren;
};

/** A part of a page folded away under its heading: there when it is wanted. On paper it is open. */
export function Fold({ id, title, class: kind = '', open = false, onToggle, children }: Props) {
  return (
    <section class={kind} aria-labelledby={id}>
      <details
        class="fold"
        open={open}
        onToggle={onToggle && ((event) => onToggle(event.currentTarget.open))}
      >
        <summary>
          <h2 id={id}>{title}</h2>
        </summary>
        {children}
      </details>
    </section>
  );
}
