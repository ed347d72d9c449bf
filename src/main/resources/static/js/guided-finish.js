/* The end of a guided test: from the last press on it is the queue's. */
(() => {
  "use strict";

  const guided = window.guided;
  const {form, store, words} = guided;

  form.addEventListener("submit", async (event) => {
    event.preventDefault();
    guided.log("finished");
    guided.keep();
    const tick = document.getElementById("confirmed");
    Object.assign(guided.test, {state: "queued", finished: Date.now(), content: guided.content(),
      confirmed: tick && tick.checked ? tick.value : ""});
    if (!store.put(guided.test)) {
      guided.show(words.full);
      guided.test.state = "open";
      return;
    }
    guided.show(words.sending);
    await guided.copied();
    const test = await guided.send(guided.test.key);
    Object.assign(guided.test, test);
    if (test.state === "questions") {
      await guided.ask(test).catch(() => location.assign("/guided"));
    } else {
      location.assign(test.state === "sent" || test.state === "clash" ? test.href : "/guided");
    }
  });

  /* What is wrong or unusual is shown by the page that the server makes of the form. */
  guided.ask = async (test) => {
    Object.entries(guided.ofSending(test, await guided.token())).forEach(([name, value]) => {
      if (guided.field(name) && name !== "confirmed") {
        guided.field(name).value = value;
      }
    });
    store.change(test.key, {state: "open"});
    HTMLFormElement.prototype.submit.call(form);
  };
})();
