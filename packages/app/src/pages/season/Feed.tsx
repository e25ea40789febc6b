import { useState } from 'preact/hooks';
import { Fold } from '../../controls/Fold.tsx';
import { Later } from '../../controls/Later.tsx';
import { voice } from '../../state/settings.ts';
import '../../look/feed.css';

const load = () => import('./FeedPlan.tsx').then(({ FeedPlan }) => FeedPlan);

/** How the crop is to be fed: fetched and worked out once it is looked into. */
export function Feed() {
  const [isOpen, open] = useState(false);
  return (
    <Fold
      class="feed"
      id="feed"
      title={voice.value.say('app.feed')}
      onToggle={(isOpen) => isOpen && open(true)}
    >
      {isOpen && <Later load={load} own={{}} />}
    </Fold>
  );
}
