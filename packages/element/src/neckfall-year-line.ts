import { elementSpeaker } from './element-speaker.ts';
import { nodesOf } from './nodes-of.ts';
import { problemWords } from './problem.ts';
import { attributeNames, readAttributes } from './read-attributes.ts';
import { readYear, type YearDocument } from './read-year.ts';
import { sheet } from './sheet.ts';
import { shownOf } from './shown-of.tsx';

/** `<neckfall-year-line>`: the year of a place as a line, drawn in the page's own document; see docs/element.md. */
class NeckfallYearLine extends HTMLElement {
  static readonly observedAttributes = attributeNames;

  readonly #root = this.attachShadow({ mode: 'open' });
  readonly #resized = new ResizeObserver(() => this.#later());
  #width = 0;
  #isWaiting = false;
  /** What `data` named last: asked for once, and again only where it changes. */
  #asked: string | null = null;
  #data: YearDocument | { problem: string } | null = null;

  connectedCallback(): void {
    this.#root.adoptedStyleSheets = [sheet()];
    this.#resized.observe(this);
    this.#later();
  }

  disconnectedCallback(): void {
    this.#resized.disconnect();
  }

  attributeChangedCallback(): void {
    this.#later();
  }

  /** Several attributes set in one go are one picture. */
  #later(): void {
    if (this.#isWaiting || !this.isConnected) return;
    this.#isWaiting = true;
    queueMicrotask(() => {
      this.#isWaiting = false;
      if (this.isConnected) this.#draw();
    });
  }

  #draw(): void {
    const asked = readAttributes((name) => this.getAttribute(name), this.ownerDocument.documentElement.lang);
    this.#ask(asked.data);
    const found = Math.floor(this.getBoundingClientRect().width);
    // hidden for now: drawn as on a narrow page, and again when it is shown
    this.#width = Math.max(leastWidth, found);
    const speaker = elementSpeaker(asked);
    const shown = shownOf(asked, this.#data, this.#width, speaker, (problem) =>
      problemWords(problem, speaker),
    );
    this.#root.replaceChildren(...nodesOf(shown, this.ownerDocument));
  }

  /** The one request of the element, for the document that the page names; without `data` there is none. */
  #ask(url: string | null): void {
    if (url === this.#asked) return;
    this.#asked = url;
    this.#data = null;
    if (url === null) return;
    const isCurrent = () => this.#asked === url;
    fetchYear(new URL(url, this.ownerDocument.baseURI)).then((data) => {
      if (!isCurrent()) return;
      this.#data = data;
      this.#later();
    });
  }
}

/** No page leaves a picture less, px. */
const leastWidth = 280;

async function fetchYear(url: URL): Promise<YearDocument | { problem: string }> {
  try {
    const response = await fetch(url, { credentials: 'same-origin' });
    if (!response.ok) return { problem: `${response.status} ${response.statusText}`.trim() };
    return readYear(await response.json());
  } catch (error) {
    return { problem: (error as Error).message };
  }
}

if (!customElements.get('neckfall-year-line')) customElements.define('neckfall-year-line', NeckfallYearLine);
