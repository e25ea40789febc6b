import { togetherTable } from '@neckfall/answers';
import { Twin } from '../../controls/Twin.tsx';
import { voice } from '../../state/settings.ts';
import { type Compared, type Drawn, toldLines } from './drawn-lines.ts';

/** The numbers of all pictures. */
export function Numbers({ drawn, compared }: { drawn: Drawn; compared: Compared }) {
  const speaker = voice.value;
  return <Twin {...togetherTable(toldLines(drawn.lines, compared, speaker), compared, speaker)} />;
}
