import { pageRule, papers, type Sheet, sheetBody, sheetCss } from '@neckfall/pictures';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { voice } from '../../state/settings.ts';

const pxPerPt = 96 / 72;
/** Narrower than this the page is too small to be read, and stands below once more for the screen. */
const narrow = matchMedia('(max-width: 56em)');

/** The sheet as it prints, as wide as there is room; on a phone it is told below once more, to be read. */
export function SheetPreview({ sheet }: { sheet: Sheet }) {
  const { say } = voice.value;
  const [isNarrow, setNarrow] = useState(narrow.matches);
  useEffect(() => {
    const look = () => setNarrow(narrow.matches);
    narrow.addEventListener('change', look);
    return () => narrow.removeEventListener('change', look);
  }, []);
  return (
    <section class="sheet-shown" aria-labelledby="sheet-shown">
      <h2 id="sheet-shown">{say('app.sheet.preview')}</h2>
      {sheet.leftOut > 0 && <p class="hint">{say('app.sheet.larger')}</p>}
      <Page sheet={sheet} isHidden={isNarrow} />
      {isNarrow && <Apart class="sheet-read" body={sheetBody(sheet, 2)} css={sheetCss(sheet, 'file')} />}
    </section>
  );
}

function Page({ sheet, isHidden }: { sheet: Sheet; isHidden: boolean }) {
  const box = useRef<HTMLDivElement>(null);
  const { widthPt, heightPt } = papers[sheet.paper];
  const [fit, setFit] = useState(0);
  useLayoutEffect(() => {
    const element = box.current;
    if (!element) return;
    const look = () => setFit(Math.min(1, element.clientWidth / (widthPt * pxPerPt)));
    const observer = new ResizeObserver(look);
    observer.observe(element);
    look();
    return () => observer.disconnect();
  }, [widthPt]);
  // the page it is printed on, for as long as it is shown
  useEffect(() => {
    const page = new CSSStyleSheet();
    page.replaceSync(pageRule(sheet).replace(/margin:[^;}]*/, 'margin:0'));
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, page];
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((other) => other !== page);
    };
  }, [sheet.paper]);
  const size = { '--fit': fit, '--wide': `${widthPt}pt`, '--high': `${heightPt}pt` };
  return (
    <div ref={box} class="sheet-page" style={size} aria-hidden={isHidden ? true : undefined}>
      <Apart class="sheet-paper" body={sheetBody(sheet, 2)} css={sheetCss(sheet, 'page')} />
    </div>
  );
}

/** Markup with a look of its own, which the page's does not reach. */
function Apart({ class: kind, body, css }: { class: string; body: string; css: string }) {
  const host = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const element = host.current;
    if (!element) return;
    const root = element.shadowRoot ?? element.attachShadow({ mode: 'open' });
    const look = new CSSStyleSheet();
    look.replaceSync(css);
    root.adoptedStyleSheets = [look];
    // all words in it are escaped where it is made
    root.innerHTML = body;
  }, [body, css]);
  return <div ref={host} class={kind} />;
}
