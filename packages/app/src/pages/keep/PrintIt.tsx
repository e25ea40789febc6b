import { Fold } from '../../controls/Fold.tsx';
import { printSheet } from '../../device/printing.ts';
import { voice } from '../../state/settings.ts';

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
