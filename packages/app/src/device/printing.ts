import { signal } from '@preact/signals';

/** Whether the page is being put on paper: pictures are drawn for the sheet, not for the screen. */
export const isPrinting = signal(false);

addEventListener('beforeprint', () => {
  isPrinting.value = true;
});
addEventListener('afterprint', () => {
  isPrinting.value = false;
});

/** Prints once the pictures are drawn for paper. */
export function printSheet(): void {
  isPrinting.value = true;
  requestAnimationFrame(() => setTimeout(() => print()));
}
