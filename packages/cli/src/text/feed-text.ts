import {
  feedBesidesSentences,
  feedCautions,
  feedHeadline,
  feedNeedSentences,
  feedRows,
  feedStopSentences,
  limeSentence,
  productName,
} from '@neckfall/answers';
import type { ToldFeed } from '../documents/feed-document.ts';
import { howWeKnow } from './how-we-know.ts';
import { table } from './table.ts';
import { wrap } from './wrap.ts';

export function feedText({ planting, crop, feed, frame }: ToldFeed): string {
  const { speaker } = frame;
  const { plan, ground } = crop;
  const { say } = speaker;
  const rows = feedRows(feed, plan, speaker);
  const hasBed = rows.some(({ bed }) => bed !== null);
  const titles = [
    { title: say('feed.column.stage') },
    { title: say('feed.column.date') },
    { title: say('feed.column.nitrogen'), right: true },
    { title: say('feed.column.rate', { product: productName(feed.product, speaker) }), right: true },
    ...(hasBed ? [{ title: say('feed.column.bed'), right: true }] : []),
  ];
  const cells = rows.map(({ stage, date, nitrogen, rate, bed }) => [
    stage,
    date,
    nitrogen,
    rate,
    ...(hasBed ? [bed ?? say('none')] : []),
  ]);
  const lime = limeSentence(feed, ground.soilPh, speaker);
  const sections = [
    wrap(feedHeadline(feed, plan, planting?.name ?? frame.label, speaker)),
    ...(rows.length > 0 ? [`${say('feed.table')}\n${table(titles, cells)}`] : []),
    wrap(feedNeedSentences(feed, speaker).join(' ')),
    wrap(feedStopSentences(feed, speaker).join(' ')),
    [...feedBesidesSentences(feed, plan, speaker), ...(lime === null ? [] : [lime])]
      .map((sentence) => wrap(sentence))
      .join('\n'),
    [say('feed.cautions'), ...feedCautions(feed, speaker).map((line) => `  ${wrap(line, 2)}`)].join('\n'),
    howWeKnow(frame, plan, null),
  ];
  return `${sections.join('\n\n')}\n`;
}
