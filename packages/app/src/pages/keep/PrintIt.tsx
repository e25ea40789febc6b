import { Fold } from '../../controls/Fold.tsx';
import { voice } from '../../state/settings.ts';
import { printSheet } from '../season/printing.ts';

export function PrintIt() {
  const { say } = voice.value;
  return (
    <Fold id="print" title={say('app.keep.print')}>
      <div class="row">
        <button type="button" onClick={printSheet}>
          {say('app.keep.print.do')}
        </button>
      </div>
    </Fold>
  );
}
