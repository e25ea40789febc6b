import { describe, expect, test } from 'vitest';
import { svgText } from '../../src/drawing/svg-text.ts';
import { SectionRow } from '../../src/section/index.ts';
import { everyInk } from '../scenes.ts';

const onion = {
  form: 'bulb',
  colour: 'red',
  shape: 'globe',
  acrossMm: 60,
  ringLeaves: [2, 3],
  skins: 1,
} as const;
const picture = (words: string) => (
  <SectionRow width={300} summary="one onion" onions={[{ onion, lines: [words] }]} discText={null} />
);

describe('a picture as a file', () => {
  test('stands alone: a namespace, a title, paper behind, no colour left to a page', () => {
    const svg = svgText(picture('Ailsa'), {
      colours: { ...everyInk, paper: '#fffdf6' },
      title: 'Bank & bed',
    });
    expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
    expect(svg).toContain('<title>Bank &amp; bed</title><rect width="100%" height="100%" fill="#fffdf6"/>');
    expect(svg).not.toMatch(/var\(|class=/);
  });

  test('shows hostile words as words', () => {
    const svg = svgText(picture('"><script>alert(1)</script>'), { colours: everyInk, title: '</title><b>' });
    expect(svg).not.toMatch(/<script|<b>/);
    expect(svg).toContain('&lt;script&gt;');
  });

  test('names a colour that is missing', () => {
    const { earth, ...others } = everyInk;
    expect(earth).toBeDefined();
    expect(() => svgText(picture('x'), { colours: others, title: 'x' })).toThrow('--earth');
  });

  test('takes nothing but a picture', () => {
    expect(() => svgText(<p>no</p>, { colours: everyInk, title: 'x' })).toThrow('expected a picture');
  });
});
