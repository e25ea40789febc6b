import type { Face, Measure } from '@neckfall/pictures';
import { useEffect, useState } from 'preact/hooks';

/** The size at which words are measured, px: large enough for small differences to show. */
const measuredPx = 100;

const fonts: Record<Face, string> = {
  answers: `600 ${measuredPx}px Answers, Georgia, serif`,
  text: `400 ${measuredPx}px Plain, Arial, sans-serif`,
  bold: `600 ${measuredPx}px Plain, Arial, sans-serif`,
};

/** How wide words are in the faces of the page; null until these are there. */
export function useFaces(): Measure | null {
  const [measure, setMeasure] = useState<Measure | null>(null);
  useEffect(() => {
    let isWanted = true;
    // a face that can't be had is stood in for, and measured as what stands in
    const loads = Object.values(fonts).map((font) => document.fonts.load(font, 'aą').catch(() => []));
    void Promise.all(loads).then(() => isWanted && setMeasure(() => measureByCanvas()));
    return () => {
      isWanted = false;
    };
  }, []);
  return measure;
}

function measureByCanvas(): Measure | null {
  const canvas = document.createElement('canvas').getContext('2d');
  if (canvas === null) return null;
  const known = new Map<string, number>();
  return (word, face) => {
    const key = `${face} ${word}`;
    let width = known.get(key);
    if (width === undefined) {
      canvas.font = fonts[face];
      width = canvas.measureText(word).width / measuredPx;
      known.set(key, width);
    }
    return width;
  };
}
