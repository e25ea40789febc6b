import {
  feedAssumptions,
  feedBesidesSentences,
  feedCautions,
  feedHeadline,
  feedNeedSentences,
  feedSources,
  feedStopSentences,
  limeSentence,
} from '@neckfall/answers';
import { ask } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { Fault } from '../../controls/Fault.tsx';
import { Working } from '../../controls/Working.tsx';
import { cropAsked } from '../../state/crop-asked.ts';
import { ground } from '../../state/ground.ts';
import { grownSite, grownSiteKey } from '../../state/grown-site.ts';
import { placeName } from '../../state/place.ts';
import { planOptions } from '../../state/plan-asked.ts';
import { planting, seen } from '../../state/planting.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import type { FeedAhead } from '../../worker/feed-ahead.ts';
import { FeedTable } from './FeedTable.tsx';
import { ProductField } from './ProductField.tsx';

/** Feeds of the grower's own product by day, what the bed gives, when to stop, and what to take care of. */
export function FeedPlan() {
  const request = {
    ...cropAsked.value,
    options: planOptions.value,
    today: today.value,
    seen: [...seen.value].reverse(),
    ground: ground.value,
  };
  const site = grownSiteKey.value;
  const key = site && JSON.stringify([site, request]);
  const { answer, isFresh, failed } = useAnswer(key, () =>
    ask('feedAhead', { site: grownSite.value!, ...request }),
  );
  if (failed !== null) return <Fault reason={failed} />;
  return (
    <div class="feed-plan" data-waiting={isFresh ? undefined : true}>
      {answer ? <Told ahead={answer} /> : <Working />}
    </div>
  );
}

function Told({ ahead: { feed, plan } }: { ahead: FeedAhead }) {
  const speaker = voice.value;
  const { say, all } = speaker;
  const { soilPh, fertility } = ground.value;
  const lime = limeSentence(feed, soilPh, speaker);
  return (
    <>
      <p class="feed-lead">{feedHeadline(feed, plan, planting.value?.name ?? placeName.value, speaker)}</p>
      <ProductField product={feed.product} said={feed.productSaid} />
      {feed.feeds.length > 0 && <FeedTable feed={feed} plan={plan} />}
      <p>{feedNeedSentences(feed, speaker).join(' ')}</p>
      <p>{feedStopSentences(feed, speaker).join(' ')}</p>
      <p>{[...feedBesidesSentences(feed, plan, speaker), ...(lime === null ? [] : [lime])].join(' ')}</p>
      <Lines title={say('feed.cautions')} lines={feedCautions(feed, speaker)} />
      <Lines
        title={say('app.feed.grounds')}
        lines={[
          ...feedAssumptions(feed, fertility !== null, speaker),
          say('app.feed.sources', { sources: all(feedSources(speaker)) }),
        ]}
      />
    </>
  );
}

function Lines({ title, lines }: { title: string; lines: readonly string[] }) {
  return (
    <>
      <h3>{title}</h3>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </>
  );
}
