export type { MessageValues } from './message.ts';
export { allMessages, type MessageKey, usEnglish } from './messages.ts';
export type { Quantity, Units } from './quantities.ts';
export { type Locale, type Say, sayer } from './speaker.ts';
export { type Speaker, speaker } from './voice.ts';
