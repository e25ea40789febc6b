import { townLabel } from '@neckfall/answers';
import type { Town } from '@neckfall/data';
import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { ask, askGround, askLong } from '../ask/ask.ts';
import { askAhead } from '../state/ahead.ts';
import { voice } from '../state/settings.ts';
import type { TownOffers } from '../worker/towns.ts';

type Props = { onTown: (town: Town) => void; autoFocus?: boolean };

type Shown = TownOffers & { query: string; isWhole: boolean };

const nothing: Shown = { query: '', offers: [], isPostcode: false, isWhole: true };

/**
 * A text field that offers towns while one types (the combobox of the ARIA authoring practices): arrows move, Enter
 * takes the marked town or the likeliest, Escape closes.
 */
export function TownSearch({ onTown, autoFocus = false }: Props) {
  const { say } = voice.value;
  const id = useId();
  const [query, setQuery] = useState('');
  const [shown, setShown] = useState<Shown>(nothing);
  const [marked, mark] = useState(-1);
  const [isOpen, setOpen] = useState(false);
  const [failed, setFailed] = useState<string | null>(null);
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (autoFocus) input.current?.focus();
    void askGround('prepareGround', null);
    void ask('prepare', null).then(() => askLong('prepare', null));
  }, [autoFocus]);
  const latest = useRef('');
  const isEntered = useRef(false);

  function type(text: string): void {
    setQuery(text);
    mark(-1);
    setOpen(true);
    setFailed(null);
    latest.current = text;
    isEntered.current = false;
    if (text.trim() === '') {
      setShown(nothing);
      return;
    }
    const show = (found: TownOffers, isWhole: boolean) => {
      if (latest.current !== text) return;
      setShown({ query: text, ...found, isWhole });
      if (isEntered.current && found.offers.length > 0) take(found.offers[0].town);
    };
    askGround('findTowns', { query: text }, { part: (part) => show(part, false) }).then((reply) => {
      if (reply.state === 'done') show(reply.answer, true);
      if (reply.state === 'failed' && latest.current === text) setFailed(reply.message);
    });
  }

  function take(town: Town): void {
    isEntered.current = false;
    latest.current = '';
    setQuery('');
    setShown(nothing);
    setOpen(false);
    onTown(town);
  }

  function press(event: KeyboardEvent): void {
    const count = isOpen ? shown.offers.length : 0;
    if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
      event.preventDefault();
      setOpen(true);
      const step = event.key === 'ArrowDown' ? 1 : -1;
      if (count > 0) mark((at) => (at < 0 && step < 0 ? count - 1 : (at + step + count) % count));
    } else if (event.key === 'Enter') {
      event.preventDefault();
      if (count > 0 && shown.query === query) take(shown.offers[Math.max(0, marked)].town);
      else isEntered.current = true;
    } else if (event.key === 'Escape') {
      if (isOpen) setOpen(false);
      else type('');
    }
  }

  const isListed = isOpen && shown.offers.length > 0;
  const likely = isListed ? shown.offers[Math.max(0, marked)]?.town : undefined;
  useEffect(
    () => (likely ? askAhead(likely) : undefined),
    [likely?.name, likely?.latitudeDeg, likely?.longitudeDeg],
  );
  const isNone = isOpen && shown.isWhole && shown.query !== '' && shown.offers.length === 0;
  return (
    <div class="search">
      <label for={`${id}-input`}>{say('app.town')}</label>
      <input
        id={`${id}-input`}
        type="text"
        role="combobox"
        autocomplete="off"
        autocapitalize="words"
        spellcheck={false}
        enterkeyhint="go"
        aria-autocomplete="list"
        aria-expanded={isListed}
        aria-controls={`${id}-list`}
        aria-activedescendant={isListed && marked >= 0 ? `${id}-${marked}` : undefined}
        aria-describedby={`${id}-hint`}
        value={query}
        ref={input}
        onInput={(event) => type(event.currentTarget.value)}
        onKeyDown={press}
        onBlur={() => setOpen(false)}
      />
      <div id={`${id}-list`} role="listbox" aria-label={say('app.town')} class="offers" hidden={!isListed}>
        {shown.offers.map(({ town, near }, at) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: keys are heard by the field, as the pattern asks
          <div
            key={`${town.name} ${town.latitudeDeg} ${town.longitudeDeg}`}
            id={`${id}-${at}`}
            role="option"
            tabIndex={-1}
            aria-selected={at === marked}
            // before the field loses its focus
            onPointerDown={(event) => event.preventDefault()}
            onClick={() => take(town)}
          >
            {townLabel(town, voice.value)}
            {near !== null && <span class="hint"> {say('app.town.near', { town: near })}</span>}
          </div>
        ))}
      </div>
      <p id={`${id}-hint`} class="hint">
        {say('app.town.hint')}
      </p>
      <p role="status" class={isNone || failed !== null ? '' : 'unseen'}>
        {failed !== null
          ? say('app.place.failed', { reason: failed })
          : isNone
            ? say(shown.isPostcode ? 'app.town.postcode' : 'app.town.none', { query: shown.query })
            : isOpen && shown.query !== ''
              ? shown.isWhole
                ? say('app.town.offers', { count: shown.offers.length })
                : say('app.town.smaller')
              : ''}
      </p>
    </div>
  );
}
