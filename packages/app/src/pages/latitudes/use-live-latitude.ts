import type { LatitudeClimates } from '@neckfall/engine';
import { useEffect, useState } from 'preact/hooks';
import { ask } from '../../ask/ask.ts';
import type { LatitudeReply } from '../../worker/latitude-season.ts';
import type { Setting } from './setting.ts';

type Live = { reply: LatitudeReply | null; isFresh: boolean; failed: string | null };

/** What comes of a setting that is being moved: every answer is shown as it comes, although a newer setting may wait. */
export function useLiveLatitude(climates: LatitudeClimates, setting: Setting): Live {
  const key = JSON.stringify(setting);
  const [held, hold] = useState<{ key: string; reply: LatitudeReply } | null>(null);
  const [failed, setFailed] = useState<string | null>(null);
  useEffect(() => {
    ask('latitudeSeason', { climates, ...setting }, { live: true }).then((answered) => {
      if (answered.state === 'failed') setFailed(answered.message);
      if (answered.state === 'done') {
        hold({ key, reply: answered.answer });
        setFailed(null);
      }
    });
  }, [key]);
  return { reply: held?.reply ?? null, isFresh: held?.key === key, failed };
}
