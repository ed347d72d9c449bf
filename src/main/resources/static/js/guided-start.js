/* The list of guided tests on this device: what waits, and for what. */
(() => {
  "use strict";

  const guided = window.guided;
  const {words, store} = guided;
  const main = document.getElementById("guided-start");
  const person = main.dataset.username;

  function button(text, press) {
    const made = document.createElement("button");
    made.type = "button";
    made.className = "secondary";
    made.textContent = text;
    made.addEventListener("click", () => press(made));
    return made;
  }

  function link(text, href) {
    const made = document.createElement("a");
    made.setAttribute("role", "button");
    made.href = href;
    made.textContent = text;
    return made;
  }

  function forget(test) {
    return button(words.forget, (pressed) => {
      if (pressed.textContent !== words.sure) {
        pressed.textContent = words.sure;
        return;
      }
      store.remove(test.key);
      Object.keys(localStorage).filter((name) => name.startsWith("guided-timer:" + test.key)
        || name === "guided-step:" + test.key).forEach((name) => localStorage.removeItem(name));
      draw();
    });
  }

  const GO_ON = (test) => link(words.goOn, test.page + "?draft=" + test.key);
  const ACTIONS = {
    open: (test) => [GO_ON(test), forget(test)],
    left: (test) => [GO_ON(test), forget(test)],
    queued: () => [],
    signin: () => [link(words.signIn, "/guided")],
    clash: (test) => [link(words.compare, test.href)],
    questions: (test) => [link(words.answer, test.page + "?draft=" + test.key)],
    sent: (test) => [link(words.show, test.href), forget(test)]
  };

  function line(test) {
    const item = document.createElement("li");
    item.dataset.key = test.key;
    item.dataset.state = test.state;
    const tag = document.createElement("strong");
    tag.textContent = test.tag;
    const state = document.createElement("span");
    const day = new Date(test.begun);
    state.textContent = day.toLocaleDateString("sv") + " " + guided.time(test.begun) + " – "
      + words[test.state === "left" ? "open" : test.state];
    item.append(tag, state, ...ACTIONS[test.state](test));
    return item;
  }

  function draw() {
    const mine = store.of(person);
    const others = store.all().filter((test) => test.person !== person && test.state !== "sent").length;
    document.getElementById("queue").replaceChildren(...mine.map(line));
    document.getElementById("phone-none").hidden = mine.length > 0;
    document.getElementById("others").textContent = others > 0 ? guided.say(words.others, others) : "";
    document.getElementById("send-all").hidden = !mine.some((test) => ["queued", "signin"].includes(test.state));
  }

  async function send() {
    await guided.sendAll(person);
    draw();
  }

  const list = document.getElementById("machines");

  async function keep(item) {
    const said = item.querySelector(".kept");
    const kept = await guided.keepPage(item.dataset.page).catch(() => false);
    said.textContent = kept ? words.kept : words.notKept;
  }

  /* The list shows only some of many machines; those whose pages are kept here are always on it. */
  async function addKept() {
    const listed = [...list.children].map((item) => item.dataset.page);
    (await guided.kept()).filter((machine) => !listed.includes(machine.page)).forEach((machine) => {
      const item = document.createElement("li");
      const said = document.createElement("span");
      said.className = "kept quiet";
      said.textContent = words.kept;
      item.append(link(machine.tag + ", " + machine.site, machine.page), said);
      list.prepend(item);
    });
  }

  document.getElementById("send-all").addEventListener("click", send);
  window.addEventListener("online", send);
  document.querySelectorAll("#machines > li").forEach(async (item) => {
    item.querySelector(".keep").addEventListener("click", () => keep(item));
    if (await guided.isKept(item.dataset.page)) {
      item.querySelector(".kept").textContent = words.kept;
    }
  });

  /* A label was read without a signal: the list leads on as the server would, where it is whole. */
  function followLabel() {
    const tag = new URLSearchParams(location.search).get("tag");
    const named = [...list.children].filter((item) => tag && item.dataset.tag.toLowerCase() === tag.trim().toLowerCase());
    if (named.length === 1 && list.children.length > 1) {
      location.replace(named[0].dataset.page);
    }
  }

  if (list.dataset.part === "false") {
    followLabel();
  } else if (window.caches) {
    addKept();
  }
  draw();
  send();
})();
