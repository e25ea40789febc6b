export { type AskAnswer, type AskRefusal, askWeather } from './ask-weather.ts';
export { type AnswerRefusal, checkAnswer } from './check-answer.ts';
export { type AskedPoint, roundedPoint, weatherHost, weatherRequest } from './weather-request.ts';
