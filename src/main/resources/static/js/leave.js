/* A page that shows nobody signed in takes away the pages that were kept on this device for no signal. */
(() => {
  "use strict";
  const signedIn = document.querySelector("form[action$='/logout']") !== null;
  if (!signedIn && document.querySelector("form[action$='/login']") && window.caches) {
    caches.delete("guided-pages");
  }
})();
