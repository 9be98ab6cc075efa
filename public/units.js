// The reader's choice of units: kept on this device, applied before the page is painted. Loaded in the head, so that
// nothing jumps; without it, both editions are shown and there is no switch.
(() => {
  const KEY = 'units';
  const CHOICES = ['inch', 'metric', 'both'];
  const root = document.documentElement;

  /** Storage may be switched off, full or forbidden: the switch then works for this page alone. */
  function remembered() {
    try {
      return localStorage.getItem(KEY);
    } catch {
      return null;
    }
  }

  function remember(choice) {
    try {
      localStorage.setItem(KEY, choice);
    } catch {
      // Nothing is lost but the memory.
    }
  }

  function show(choice) {
    root.dataset.units = CHOICES.includes(choice) ? choice : 'both';
    for (const radio of document.querySelectorAll('input[name="units"]')) {
      radio.checked = radio.value === root.dataset.units;
    }
  }

  show(remembered());
  document.addEventListener('DOMContentLoaded', () => show(root.dataset.units));
  document.addEventListener('change', ({ target }) => {
    if (!(target instanceof HTMLInputElement) || target.name !== 'units') return;
    show(target.value);
    remember(target.value);
  });
  // A page brought back whole from the browser's history, or open in another tab, may hold an older choice.
  window.addEventListener('pageshow', ({ persisted }) => {
    if (persisted) show(remembered() ?? root.dataset.units);
  });
  window.addEventListener('storage', ({ key, newValue }) => {
    if (key === KEY) show(newValue);
  });
})();
