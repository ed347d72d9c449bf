/*
 * What a guided test keeps on this device, in localStorage: one entry a test, under the key that the test will have on
 * the server. Written at each change, so that a reload, a lock or an empty battery loses nothing.
 */
(() => {
  "use strict";

  const PREFIX = "guided-test:";
  const guided = window.guided = {};

  guided.words = document.getElementById("guide-words").dataset;

  guided.say = (text, ...values) => values.reduce((all, value, i) => all.replace("{" + i + "}", value), text);

  guided.newKey = () => {
    if (window.crypto.randomUUID) {
      return crypto.randomUUID();
    }
    const bytes = crypto.getRandomValues(new Uint8Array(16));
    bytes[6] = bytes[6] & 0x0f | 0x40;
    bytes[8] = bytes[8] & 0x3f | 0x80;
    const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
    return hex.replace(/(.{8})(.{4})(.{4})(.{4})(.{12})/, "$1-$2-$3-$4-$5");
  };

  guided.store = {
    get(key) {
      const text = localStorage.getItem(PREFIX + key);
      return text === null ? null : JSON.parse(text);
    },

    /* False when the device has no room. */
    put(test) {
      try {
        localStorage.setItem(PREFIX + test.key, JSON.stringify(test));
        return true;
      } catch (full) {
        return false;
      }
    },

    change(key, changes) {
      const test = this.get(key);
      return test !== null && this.put({...test, ...changes});
    },

    remove(key) {
      localStorage.removeItem(PREFIX + key);
    },

    all() {
      return Object.keys(localStorage)
        .filter((name) => name.startsWith(PREFIX))
        .map((name) => JSON.parse(localStorage.getItem(name)))
        .sort((one, other) => other.saved - one.saved);
    },

    of(person) {
      return this.all().filter((test) => test.person === person);
    }
  };

  /* The browser, in short, so that a person can tell a phone from a desk. */
  guided.device = () => {
    const agent = navigator.userAgent;
    const name = (/(Firefox|Edg|Chrome|Safari)\//.exec(agent) || ["", "browser"])[1].replace("Edg", "Edge");
    const system = (/Android|iPhone|iPad|Windows|Mac OS|Linux/.exec(agent) || ["device"])[0];
    return name + ", " + system + ", " + screen.width + "×" + screen.height;
  };

  /* A key of this browser, so that the server tells its own late copy from that of another device. */
  guided.writer = () => {
    const known = localStorage.getItem("guided-device");
    if (known === null) {
      localStorage.setItem("guided-device", guided.newKey());
    }
    return known || localStorage.getItem("guided-device");
  };

  guided.time = (ms) => new Date(ms).toTimeString().slice(0, 5);

  const PAGES = "guided-pages";
  const person = document.querySelector("[data-username]").dataset.username;

  /* Keeps a page for no signal; false when it cannot be had. */
  guided.keepPage = async (path) => {
    const answer = await fetch(path, {cache: "no-store"});
    const isOwn = answer.ok && !answer.redirected;
    if (isOwn) {
      await (await caches.open(PAGES)).put(path, answer);
    }
    return isOwn;
  };

  guided.isKept = async (path) => window.caches !== undefined && await (await caches.open(PAGES)).match(path) !== undefined;

  /* The machines whose pages are kept here, as those pages name them. */
  guided.kept = async () => {
    const pages = await caches.open(PAGES);
    const machines = (await pages.keys()).map(async (request) => {
      const text = await (await pages.match(request)).text();
      const form = new DOMParser().parseFromString(text, "text/html").getElementById("guide");
      return form && {page: new URL(request.url).pathname, tag: form.dataset.tag, site: form.dataset.site};
    });
    return (await Promise.all(machines)).filter((machine) => machine !== null);
  };

  /* What somebody else had kept on this device goes; this page and the list stay. */
  async function keepOwn() {
    if (localStorage.getItem("guided-pages-of") !== person) {
      await caches.delete(PAGES);
      localStorage.setItem("guided-pages-of", person);
    }
    for (const path of ["/guided", location.pathname]) {
      if (!await guided.isKept(path)) {
        await guided.keepPage(path);
      }
    }
  }

  if (navigator.serviceWorker && window.caches) {
    navigator.serviceWorker.register("/sw.js", {scope: "/guided"}).catch(() => {});
    navigator.serviceWorker.ready.then(keepOwn).catch(() => {});
  }
  document.querySelectorAll(".needs-script").forEach((part) => {
    part.hidden = false;
  });
})();
