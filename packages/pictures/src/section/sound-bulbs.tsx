import type { Speaker } from '@neckfall/words';
import { ink } from '../drawing/ink.ts';
import { px } from '../drawing/path.ts';
import { Label, lineHeight, Picture } from '../drawing/picture.tsx';

type Props = {
  /** Of ten, still sound with a cause at work, and without it. */
  withIt: number;
  without: number;
  speaker: Speaker;
};

const bulbPx = 24;
const width = 10 * bulbPx + 4;
const rowPx = lineHeight + bulbPx + 14;

/** What is left of ten bulbs in store: the spoilt ones are crossed out. */
export function SoundBulbs({ withIt, without, speaker: { say } }: Props) {
  const rows = [
    { name: say('app.why.with'), sound: withIt },
    { name: say('app.why.without'), sound: without },
  ];
  return (
    <Picture
      name="sound-bulbs"
      width={width}
      height={2 * rowPx}
      summary={say('app.why.picture.store', { with: withIt, without })}
    >
      {rows.map(({ name, sound }, row) => (
        <g key={name} transform={`translate(2 ${px(row * rowPx)})`}>
          <Label x={0} y={lineHeight - 3} bold>
            {name}
          </Label>
          <Label x={width - 4} y={lineHeight - 3} anchor="end" small fill={ink.ink2}>
            {say('app.why.picture.sound', { count: sound })}
          </Label>
          {Array.from({ length: 10 }, (_, at) => (
            <Bulb key={px(at * bulbPx)} x={at * bulbPx} isSound={at < sound} />
          ))}
        </g>
      ))}
    </Picture>
  );
}

function Bulb({ x, isSound }: { x: number; isSound: boolean }) {
  return (
    <g
      transform={`translate(${px(x)} ${lineHeight + 2})`}
      stroke={isSound ? ink.ink : ink.ink2}
      stroke-width={1.4}
      stroke-linecap="round"
      stroke-linejoin="round"
    >
      <path
        d="M10 2C10 5 3 7 3 13C3 18 7 21 11 21C15 21 19 18 19 13C19 7 12 5 12 2Z"
        fill={isSound ? ink.skin2 : 'none'}
        stroke-dasharray={isSound ? undefined : '2.5 2.5'}
      />
      {!isSound && <path d="M6 9L16 19M16 9L6 19" fill="none" stroke={ink.alarm} />}
    </g>
  );
}
