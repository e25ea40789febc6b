export type { MessageValues } from './message.ts';
export {
  allMessages,
  type Language,
  type Locale,
  languages,
  loadLanguage,
  loadLater,
  type MessageKey,
  spokenOf,
  usEnglish,
} from './messages.ts';
export type { Quantity, Units } from './quantities.ts';
export { shown } from './shown.ts';
export type { Say } from './speaker.ts';
export { languageName, type Speaker, speaker } from './voice.ts';
