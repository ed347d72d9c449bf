/* Keeps the guided test on this device at each change, and now and then a copy on the server. */
(() => {
  "use strict";

  const guided = window.guided;
  const {form, store, words} = guided;
  const EVERY_MS = 10000;
  const asked = new URLSearchParams(location.search);
  const data = form.dataset;

  function blank(key) {
    return {key, person: data.username, machine: data.machine, tag: data.tag, page: "/guided/" + data.machine,
      state: "open", version: 0, begun: Date.now(), saved: Date.now(), content: "", copied: ""};
  }

  /* Which test this page shows: what the server answered or offered, what waits here, or a new one. */
  function choose() {
    const named = asked.get("draft");
    const fromServer = {...blank(guided.field("submission").value), version: Number(data.version)};
    if (data.answered === "true") {
      const known = store.get(fromServer.key);
      return {test: {...fromServer, ...known, state: "open"}, restore: false};
    }
    const here = named ? store.get(named)
      : store.of(data.username).find((one) => one.machine === data.machine && one.state === "open");
    const newer = here && Number(data.version) > here.version && here.content === here.copied;
    if (here && !newer && !asked.has("chosen")) {
      return {test: {...here, state: here.state === "sent" ? "sent" : "open"}, restore: true};
    }
    if (named && fromServer.version > 0) {
      return {test: fromServer, restore: false};
    }
    return {test: blank(guided.newKey()), restore: false};
  }

  const chosen = choose();
  guided.test = chosen.test;
  if (chosen.restore) {
    guided.fill(guided.test.content);
    guided.show(guided.say(words.goingOn, guided.time(guided.test.begun)));
  } else if (guided.test.version > 0) {
    guided.show(guided.say(words.serverForm, guided.time(Date.now())));
  }
  guided.field("submission").value = guided.test.key;
  if (asked.has("tag")) {
    guided.field("tagRead").value = asked.get("tag");
  }

  if (!chosen.restore && guided.test.version > 0) {
    Object.assign(guided.test, {content: guided.content(), copied: guided.content()});
    store.put(guided.test);
  }

  guided.keep = () => {
    const content = guided.content();
    if (content === guided.test.content) {
      return true;
    }
    Object.assign(guided.test, {content, saved: Date.now()});
    const room = store.put(guided.test);
    if (!room) {
      guided.show(words.full);
    }
    return room;
  };

  let later = null;
  function changed() {
    clearTimeout(later);
    later = setTimeout(guided.keep, 150);
  }
  form.addEventListener("input", changed);
  form.addEventListener("change", changed);
  window.addEventListener("pagehide", guided.keep);
  document.addEventListener("visibilitychange", guided.keep);

  /* A copy on the server; what was made from an older version stands beside there, and a person chooses. */
  async function copyNow() {
    const test = guided.test;
    guided.keep();
    if (test.content === test.copied || test.state !== "open" || test.content === "" || !navigator.onLine) {
      return;
    }
    const content = test.content;
    try {
      const token = await guided.token();
      if (token.username !== test.person) {
        return;
      }
      const answer = await guided.postJson(test.page + "/draft", content, guided.ofSending(test, token));
      if (answer.state === "FITS" && test.state === "open") {
        Object.assign(test, {version: answer.version, copied: content});
        store.put(test);
        guided.show(guided.say(words.saved, guided.time(Date.now())));
      } else if (answer.state === "CLASHES") {
        Object.assign(test, {state: "clash", href: answer.href});
        store.put(test);
        guided.show(words.clash, answer.href, words.compare);
      }
    } catch (noSignal) {
      guided.show(words.noSignal);
    }
  }

  /* One copy after the other. */
  let copying = Promise.resolve();
  guided.copy = () => {
    copying = copying.then(copyNow);
    return copying;
  };
  setInterval(guided.copy, EVERY_MS);
  window.addEventListener("offline", () => guided.show(words.noSignal));

  document.getElementById("begin-anew").addEventListener("click", () => {
    if (guided.test.state === "open" && guided.test.content !== "") {
      guided.keep();
      store.change(guided.test.key, {state: "left"});
    }
    location.assign("/guided/" + data.machine);
  });

  guided.copied = () => copying;
})();
