export { type CalendarStamp, type CropJobs, calendarText } from './calendar-text.ts';
export { renewed, sequenceOf } from './renewed.ts';
