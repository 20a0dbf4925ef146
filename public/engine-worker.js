// The worker of the database: the engine's own script, and two signs of life that it lacks. An error that it drops (its
// WebAssembly file is missing or cut) reaches the page as an error of the worker, and a lock is held until the worker
// ends, so that the page hears of an end of which the browser tells nothing. A question that fails or is cancelled is
// answered to the page; the engine would print it as well, values of people included, so its log is kept silent.
(function () {
  var about = JSON.parse(self.name);
  self.addEventListener('unhandledrejection', function (event) {
    event.preventDefault();
    setTimeout(function () {
      throw event.reason;
    });
  });
  self.console.log = function () {};
  importScripts(about.script);
  if (!navigator.locks) {
    postMessage('ready');
    return;
  }
  void navigator.locks.request(about.lock, function () {
    postMessage('ready');
    return new Promise(function () {
      // Held until the worker ends.
    });
  });
})();
