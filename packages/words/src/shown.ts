/** Controls, line breaks and whatever else is drawn as nothing or turns the text round it: Unicode's own classes. */
const unseen = /[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\p{Default_Ignorable_Code_Point}\ufff9-\ufffb]/gu;
/** Joins the letters of some scripts, and pictures; chooses between forms of one character. */
const joiner = /[\p{Join_Control}\p{Variation_Selector}]/u;
const joinable = /[\p{Lo}\p{M}\p{Emoji}]$/u;

/**
 * Text as it may be shown on one line: what cannot be seen, or would steer the screen, is spelt out as `\u{1b}`.
 * @param spelt how a character is spelt out
 */
export function shown(text: string, spelt: (character: string) => string = inBraces): string {
  return text.replace(unseen, (character: string, at: number) =>
    joiner.test(character) && joinable.test(text.slice(Math.max(0, at - 2), at))
      ? character
      : spelt(character),
  );
}

function inBraces(character: string): string {
  return `\\u{${character.codePointAt(0)?.toString(16)}}`;
}
