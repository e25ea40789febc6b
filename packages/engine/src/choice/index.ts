export { type PlaceAnswer, type SurveyOptions, surveyPlace } from './survey.ts';
export { type OpenPlan, tryStarts } from './try-starts.ts';
export { typeForClass } from './type-for-class.ts';
export { weekStarts } from './week-starts.ts';
export { weekRuns } from './windows.ts';
export { worth } from './worth.ts';
