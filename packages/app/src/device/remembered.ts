/** What this browser keeps of ours: settings and the last place. Everything works where it refuses. */

const prefix = 'neckfall.';

export function remembered(key: string): string | null {
  try {
    return localStorage.getItem(prefix + key);
  } catch {
    return null;
  }
}

/** False where the browser does not keep it. */
export function remember(key: string, value: string | null): boolean {
  try {
    if (value === null) localStorage.removeItem(prefix + key);
    else localStorage.setItem(prefix + key, value);
    return true;
  } catch {
    return false;
  }
}

/** Calls back when another tab changes what is kept. */
export function onRememberedElsewhere(key: string, changed: (value: string | null) => void): void {
  addEventListener('storage', (event) => {
    if (event.key === prefix + key) changed(event.newValue);
  });
}

export const canRemember: boolean = remember('try', '1') && remember('try', null);
