import {
  feedBesidesSentences,
  feedCautions,
  feedNeedSentences,
  feedStopSentences,
  limeSentence,
} from '@neckfall/answers';
import { type FeedAnswer, formatDay, type TendedCrop } from '@neckfall/engine';
import type { Frame } from '../frame/frame.ts';
import { documentHead } from './document-head.ts';
import type { FeedDocument } from './feed-schema.ts';
import { round } from './values.ts';

/** A crop with how it is to be fed. */
export type ToldFeed = {
  planting: { id: string; name: string } | null;
  crop: TendedCrop;
  feed: FeedAnswer;
  frame: Frame;
};

export function feedDocument({ planting, crop, feed, frame }: ToldFeed): FeedDocument {
  const { speaker } = frame;
  const { fromBed, besides, givenGPerM2 } = feed;
  const { areaM2, soilPh } = crop.ground;
  const lime = limeSentence(feed, soilPh, speaker);
  return {
    schema: 'neckfall/feed@1',
    ...documentHead(frame),
    planting,
    feeds: feedRowsOf(feed),
    nitrogenGPerM2: round(feed.nitrogenGPerM2),
    fromSoilGPerM2: round(feed.fromSoilGPerM2),
    stopBy: feed.stopBy === null ? null : formatDay(feed.stopBy),
    why: [...feedNeedSentences(feed, speaker), ...feedStopSentences(feed, speaker)].join(' '),
    aimKgPerM2: round(feed.aimKgPerM2),
    takenGPerM2: round(feed.takenGPerM2),
    fertility: feed.fertility,
    fromBed: {
      soilGPerM2: round(fromBed.soil),
      compostGPerM2: round(fromBed.compost),
      legumeGPerM2: round(fromBed.legume),
    },
    toGiveGPerM2: round(feed.toGiveGPerM2),
    leftOutGPerM2: round(feed.leftOutGPerM2),
    givenGPerM2: givenGPerM2 === null ? null : round(givenGPerM2),
    besides: besides && {
      phosphateGPerM2: round(besides.phosphateGPerM2),
      potashGPerM2: round(besides.potashGPerM2),
    },
    bedM2: areaM2 === null ? null : round(areaM2),
    soilPh,
    lime: feed.lime,
    advice: [...feedBesidesSentences(feed, crop.plan, speaker), ...(lime === null ? [] : [lime])],
    cautions: feedCautions(feed, speaker),
  };
}

/** A row a feed. */
export function feedRowsOf({ feeds, product }: FeedAnswer): FeedDocument['feeds'] {
  return feeds.map(({ stage, day, nGPerM2, gramsPerM2, gramsForBed }) => ({
    stage,
    date: formatDay(day),
    nGPerM2: round(nGPerM2),
    product,
    gramsPerM2: round(gramsPerM2, 1),
    gramsForBed: gramsForBed === null ? null : round(gramsForBed, 1),
  }));
}
