import { join } from 'node:path';
import * as esbuild from 'esbuild';
import { root } from './steps.mjs';

/** What the element says: test/app/element.test.ts shows that no other message is asked for. */
const said = [
  /^element\./,
  /^picture\.(source|mark\.|year\.|days-|sun-)/,
  /^picture\.(needs|today|longest|shortest|frost|heat|rain-key|leaves)$/,
  /^class\./,
  /^source\.(chelsa|cru|geonames)$/,
  /^place\.(latitude|longitude)$/,
  /^(unit\.day-length|date\.range-over-new-year|none)$/,
];

const words = join(root, 'packages', 'words', 'src');

/** Puts in place of all messages those that the element says, in every language, so that they are one file with it. */
export function elementWords() {
  return {
    name: 'element-words',
    setup(build) {
      build.onLoad({ filter: /words[\\/]src[\\/]messages\.ts$/ }, async () => ({
        contents: moduleOf(await messagesOf()),
        loader: 'js',
      }));
    },
  };
}

async function messagesOf() {
  const { outputFiles } = await esbuild.build({
    stdin: {
      contents: "export { allMessages, languages, usEnglish } from './messages.ts';",
      resolveDir: words,
      loader: 'ts',
    },
    bundle: true,
    format: 'esm',
    write: false,
  });
  const source = Buffer.from(outputFiles[0].contents).toString('base64');
  const { allMessages, languages, usEnglish } = await import(`data:text/javascript;base64,${source}`);
  const picked = {};
  for (const language of languages) picked[language] = pick(await allMessages(language));
  return { languages, known: { ...picked, 'en-US': pick(await usEnglish()) } };
}

function pick(messages) {
  return Object.fromEntries(Object.entries(messages).filter(([key]) => said.some((one) => one.test(key))));
}

/** The doors of messages.ts that the element goes through; the others are there for those who import them by name. */
function moduleOf({ languages, known }) {
  return `
const known = ${JSON.stringify(known)};
export const languages = ${JSON.stringify(languages)};
export function findMessage(key, locale) {
  return known[locale]?.[key] ?? known.en[key];
}
export function spokenOf(wanted) {
  const codes = wanted.map((tag) => tag.split(/[-_.@]/)[0].toLowerCase());
  return codes.find((code) => languages.includes(code)) ?? 'en';
}
export const [allMessages, loadLanguage, loadLater, usEnglish] = [];
`;
}
