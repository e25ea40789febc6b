import { loadLater } from '@neckfall/words';
import { useState } from 'preact/hooks';
import { voice } from '../state/settings.ts';
import { Later } from './Later.tsx';
import type { PictureToTake } from './PictureCopies.tsx';

const loadCopies = async () => {
  const [{ PictureCopies }] = await Promise.all([import('./PictureCopies.tsx'), loadLater()]);
  return PictureCopies;
};

type Props = PictureToTake & {
  /** What it is opened by, where several stand together. */
  opener?: string;
};

/** Under every picture: what it is kept as to be taken along. Fetched when it is opened. */
export function TakePicture({ opener, ...own }: Props) {
  const [isOpened, setOpened] = useState(false);
  return (
    <details class="take" onToggle={({ currentTarget }) => currentTarget.open && setOpened(true)}>
      <summary>{opener ?? voice.value.say('app.take')}</summary>
      {isOpened && <Later load={loadCopies} own={own} />}
    </details>
  );
}
