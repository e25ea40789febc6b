import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { paperColours } from '../../src/drawing/paper-colours.ts';
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

  test('has its head above the picture, wrapped, and grows by it', () => {
    const sized = (head: string) => {
      const svg = svgText(picture('Ailsa'), { colours: everyInk, title: 'x', head });
      return {
        svg,
        height: Number(
          / height="([\d.]+)" viewBox/.exec(svg)?.[1] ?? /viewBox="0 0 300 ([\d.]+)"/.exec(svg)?.[1],
        ),
      };
    };
    const plain = sized('');
    const one = sized('An onion');
    const two = sized('An onion of the far north that was sown in spring');
    expect(one.height).toBe(plain.height + 27);
    expect(two.height).toBe(plain.height + 48);
    expect(one.svg).toContain('>An onion</text>');
    expect(plain.svg).not.toContain('translate(0 ');
  });

  test('shows hostile words as words', () => {
    const svg = svgText(picture('"><script>alert(1)</script>'), { colours: everyInk, title: '</title><b>' });
    expect(svg).not.toMatch(/<script|<b>/);
    expect(svg).toContain('&lt;script&gt;');
  });

  test('leaves out what no XML may hold, and takes no word for a colour', () => {
    const svg = svgText(picture('a\u0000b\ud800c var(--nothing)'), { colours: everyInk, title: 'x\u0008' });
    expect(svg).toContain('>abc var(--nothing)<');
    expect(svg).toContain('<title>x</title>');
  });

  test('a caption stands under it, wrapped to its width, and is kept whole as metadata', () => {
    const source = 'Neckfall 0.1.0 · Lyon, 45.76° N, 4.84° E · thirty years of weather · made 3 May 2027';
    const plain = svgText(picture('Ailsa'), { colours: everyInk, title: 'x' });
    const svg = svgText(picture('Ailsa'), {
      colours: everyInk,
      title: 'x',
      description: 'A & B',
      caption: [source],
    });
    const heightOf = (text: string) => Number(/ height="([\d.]+)"/.exec(text)?.[1]);
    const added = heightOf(svg) - heightOf(plain);
    expect(svg).toContain(`viewBox="0 0 300 ${heightOf(svg)}"`);
    expect(svg).toContain('<desc>A &amp; B</desc>');
    expect(svg).toContain(`<metadata>${source}</metadata>`);
    const lines = [...svg.matchAll(/<text x="6" y="([\d.]+)">([^<]*)</g)];
    expect(lines.length).toBeGreaterThan(1);
    expect(lines.map(([, , line]) => line).join(' ')).toBe(source);
    for (const [, y] of lines) {
      expect(Number(y)).toBeGreaterThan(heightOf(plain));
      expect(Number(y)).toBeLessThan(heightOf(plain) + added);
    }
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

test('the colours of paper are the light ones of the look', () => {
  const look = readFileSync(new URL('../../../app/src/look/colours.css', import.meta.url), 'utf8');
  const light = /:root \{([^}]*)\}/.exec(look)?.[1] ?? '';
  const named = [...light.matchAll(/--([\w-]+): (#\w+);/g)].map(([, name, colour]) => [name, colour]);
  expect(named.length).toBeGreaterThan(8);
  expect(Object.entries(paperColours)).toEqual(named);
});
