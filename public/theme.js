// Runs before the first paint, so that a chosen theme never flashes. The choice is kept by the settings screen.
(function () {
  try {
    var theme = localStorage.getItem('driftline-theme');
    if (theme === 'light' || theme === 'dark') document.documentElement.dataset.theme = theme;
  } catch {
    // Storage is blocked: the system's theme stands.
  }
})();
