/* Sends tests that wait on this device: each once, by the person who made it, whenever there is a signal. */
(() => {
  "use strict";

  const guided = window.guided;
  const JSON_ONLY = {headers: {Accept: "application/json"}, redirect: "manual", cache: "no-store"};

  const PATIENCE_MS = 20000;

  class SignedOut extends Error {}

  async function json(answer) {
    const isJson = (answer.headers.get("Content-Type") || "").includes("json");
    if (answer.type === "opaqueredirect" || answer.status === 401 || answer.status === 403) {
      throw new SignedOut();
    }
    if (!answer.ok || !isJson) {
      throw new Error("answer " + answer.status);
    }
    return answer.json();
  }

  /* A fresh token, who is signed in, and by how much the server's clock is ahead. */
  guided.token = async () => {
    const before = Date.now();
    const said = await json(await fetch("/guided/token", {...JSON_ONLY, signal: AbortSignal.timeout(PATIENCE_MS)}));
    return {...said, offset: Math.round(said.now - (before + Date.now()) / 2)};
  };

  guided.post = async (path, content, more) => {
    const body = new URLSearchParams(content);
    Object.entries(more).forEach(([name, value]) => body.set(name, value));
    return fetch(path, {...JSON_ONLY, method: "POST", body, signal: AbortSignal.timeout(PATIENCE_MS)});
  };

  guided.postJson = async (path, content, more) => json(await guided.post(path, content, more));

  guided.ofSending = (test, token) => ({
    _csrf: token.token,
    confirmed: test.confirmed || "",
    draftVersion: test.version,
    device: guided.device(),
    writer: guided.writer(),
    deviceRecordedAt: new Date(test.finished || Date.now()).toISOString(),
    deviceOffsetMs: token.offset
  });

  const AFTER = {RECORDED: "sent", CLASH: "clash", QUESTIONS: "questions"};

  async function sendNow(key) {
    const test = guided.store.get(key);
    if (test === null || !["queued", "signin"].includes(test.state)) {
      return test;
    }
    const token = await guided.token();
    if (token.username !== test.person) {
      return test;
    }
    const answer = await guided.postJson(test.page + "/send", test.content, guided.ofSending(test, token));
    const done = answer.state === "RECORDED" ? {content: "", copied: "", confirmed: ""} : {};
    guided.store.change(key, {...done, state: AFTER[answer.state], href: answer.href});
    return guided.store.get(key);
  }

  /* One sender at a time, over all windows. Gives the test as it then stands. */
  guided.send = async (key) => {
    const once = () => sendNow(key).catch((failed) => {
      guided.store.change(key, {state: failed instanceof SignedOut ? "signin" : "queued"});
      return guided.store.get(key);
    });
    return navigator.locks ? navigator.locks.request("guided-send", once) : once();
  };

  guided.sendAll = async (person) => {
    for (const test of guided.store.of(person).filter((one) => ["queued", "signin"].includes(one.state)).reverse()) {
      await guided.send(test.key);
    }
  };
})();
