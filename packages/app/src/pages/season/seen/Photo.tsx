import { useEffect, useRef, useState } from 'preact/hooks';
import { photographed, photoOf, removePhoto } from '../../../state/photos.ts';
import { voice } from '../../../state/settings.ts';

/** The photo of an entry: small beside it, large when it is pressed. */
export function Photo({ of, words }: { of: string; words: string }) {
  const { say } = voice.value;
  const [src, setSrc] = useState<string | null>(null);
  const large = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    let url: string | null = null;
    let isGone = false;
    photoOf(of).then(
      (photo) => {
        if (photo === null || isGone) return;
        url = URL.createObjectURL(photo);
        setSrc(url);
      },
      () => {},
    );
    return () => {
      isGone = true;
      if (url !== null) URL.revokeObjectURL(url);
    };
  }, [of, photographed.value]);
  if (src === null) return null;
  const name = say('app.seen.photo.of', { entry: words });
  return (
    <>
      <button type="button" class="photo" onClick={() => large.current?.showModal()}>
        <img src={src} alt={name} />
      </button>
      <dialog ref={large} aria-label={name} class="photo-large">
        <img src={src} alt={name} />
        <div class="row">
          <button type="button" onClick={() => large.current?.close()}>
            {say('app.seen.photo.close')}
          </button>
          <button type="button" onClick={() => void removePhoto(of)}>
            {say('app.seen.photo.remove')}
          </button>
        </div>
      </dialog>
    </>
  );
}
