import type { PlaceFacts } from '@neckfall/answers';
import { type DateSpread, type FrostDate, formatDay, type PlaceAnswer } from '@neckfall/engine';
import type { Frame } from '../frame/frame.ts';
import { documentHead } from './document-head.ts';
import { monthDay, round } from './values.ts';
import type { WhereDocument } from './where-schema.ts';

/** 1 January of a year of 365 days. */
const commonYearStart = 20_819;

export function whereDocument(
  frame: Frame,
  facts: PlaceFacts,
  answer: PlaceAnswer,
  todaySentence: string,
): WhereDocument {
  const { climate, months, sunUpH, photoperiodH, year, frost } = facts;
  return {
    schema: 'neckfall/where@1',
    ...documentHead(frame),
    climate: {
      source: 'built-in',
      nearestNodeKm: round(frame.place.climate.nearestNodeKm, 1),
      warmerC: frame.warmerC,
      months: months.map((month) => ({
        month,
        tempMeanC: round(climate.tempMeanC[month - 1], 2),
        tempMinC: round(climate.tempMeanC[month - 1] - climate.tempRangeC[month - 1] / 2, 2),
        tempMaxC: round(climate.tempMeanC[month - 1] + climate.tempRangeC[month - 1] / 2, 2),
        rainMmPerMonth: round(climate.rainMm[month - 1], 1),
        wetDays: round(climate.wetDays[month - 1], 1),
        relativeHumidityPct: round(climate.relativeHumidityPct[month - 1], 1),
        sunshinePct: round(climate.sunshinePct[month - 1], 1),
        wind10mMs: round(climate.wind10mMs[month - 1], 2),
        frostNights: round(climate.frostNights[month - 1], 1),
        referenceEtMmPerDay: round(facts.referenceEtMm[month - 1], 2),
      })),
    },
    daylight: {
      year,
      convention: 'sun-up',
      longestH: round(Math.max(...sunUpH)),
      shortestH: round(Math.min(...sunUpH)),
      hoursByDay: Array.from(sunUpH, (hours) => round(hours)),
      photoperiodByDay: Array.from(photoperiodH, (hours) => round(hours)),
    },
    frost: {
      lastSpring: frostRange(frost.lastSpring),
      firstAutumn: frostRange(frost.firstAutumn),
      frostFreeDays: frost.frostFreeDays,
      meanAnnualMinimumC: round(frost.meanAnnualMinimumC, 2),
    },
    today: {
      date: formatDay(frame.options.today),
      sentence: todaySentence,
      starts: answer.today.map(({ start, class: dayLengthClass, stillGoodUntil, verdict, nextFrom }) => ({
        start,
        class: dayLengthClass,
        stillGoodUntil: stillGoodUntil === null ? null : formatDay(stillGoodUntil),
        verdict,
        nextFrom: nextFrom === null ? null : formatDay(nextFrom),
      })),
    },
    classes: answer.classes.map(({ class: dayLengthClass, verdict, gamble, bestStart, summary, reason }) => ({
      class: dayLengthClass,
      verdict,
      gamble,
      bestStart,
      bestDate: monthDay(summary.plan.startDay),
      onset: monthDayOrNull(summary.onset),
      neckFall: monthDayOrNull(summary.neckFall),
      reason: frame.speaker.reason(reason),
    })),
  };
}

function monthDayOrNull({ days }: DateSpread): string | null {
  return days && monthDay(days.p50);
}

function frostRange({ share, days }: FrostDate) {
  const date = (climateDay: number) => monthDay(commonYearStart + climateDay);
  return days
    ? { p10: date(days.p10), p50: date(days.p50), p90: date(days.p90), share }
    : { p10: null, p50: null, p90: null, share };
}
