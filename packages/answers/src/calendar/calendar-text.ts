import type { DayNumber, Job, SeasonSummary } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import ical, { ICalEventStatus, ICalEventTransparency } from 'ical-generator';
import { cautionSentence, jobName, jobSentence, jobSourceName, openSentence } from '../sentences/index.ts';

/** The work on a crop as a calendar is to have it. */
export type CropJobs = {
  /** Its id names its events: those of the same crop replace each other whenever they are read in. */
  id: string;
  name: string;
  summary: SeasonSummary;
  jobs: readonly Job[];
};

export type CalendarStamp = {
  today: DayNumber;
  /** Grows from one calendar to the next, so that a later one holds (RFC 5545, 3.8.7.4). See {@link sequenceOf}. */
  sequence: number;
};

const msPerDay = 86_400_000;
/** In UTC, as the library reads dates that have no time: the calendar is the same in every time zone. */
const dateOf = (day: DayNumber) => new Date(day * msPerDay);

/**
 * Work as a calendar (iCalendar, RFC 5545): a job an all-day event on its best day. What was left out is cancelled, what
 * was done stays, what has gone by is left as it was.
 */
export function calendarText(crops: readonly CropJobs[], stamp: CalendarStamp, speaker: Speaker): string {
  const calendar = ical({ prodId: { company: 'Neckfall', product: 'jobs', language: 'EN' } });
  for (const { id, name, summary, jobs } of crops)
    for (const job of jobs) {
      if (job.state === 'gone-by') continue;
      const isLeftOut = job.state === 'left-out';
      calendar.createEvent({
        id: `${id}-${job.id}@neckfall`,
        sequence: stamp.sequence,
        stamp: dateOf(stamp.today),
        start: dateOf(job.best),
        allDay: true,
        summary: speaker.say('job.event', { job: jobName(job, speaker), crop: name }),
        description: described(job, summary, speaker),
        status: isLeftOut ? ICalEventStatus.CANCELLED : ICalEventStatus.CONFIRMED,
        // a day with work is no busy day
        transparency: ICalEventTransparency.TRANSPARENT,
      });
    }
  return `${calendar.toString().trimEnd()}\r\n`;
}

function described(job: Job, summary: SeasonSummary, speaker: Speaker): string {
  const { say } = speaker;
  const isOpen = job.state === 'now' || job.state === 'coming';
  return [
    // a calendar is looked at on other days than today
    isOpen ? openSentence({ ...job, state: 'coming' }, summary, speaker) : jobSentence(job, summary, speaker),
    ...job.cautions.map((caution) => cautionSentence(caution, speaker)),
    say('job.source', { source: jobSourceName(job.source, speaker) }),
  ].join('\n');
}
