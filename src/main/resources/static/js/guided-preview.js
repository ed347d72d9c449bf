/* Asks the server what the runs so far, or the static hold, come to. Nothing is worked out here. */
(() => {
  "use strict";

  const guided = window.guided;
  const ASKED = {
    hold: {path: "/tests/hold", places: ["hold-answer"]},
    runs: {path: "/tests/preview", places: ["runs-answer", "result-answer"]}
  };

  function put(places, ...nodes) {
    places.forEach((id) => {
      const copies = nodes.map((node) => typeof node === "string" ? node : document.importNode(node, true));
      document.getElementById(id).replaceChildren(...copies);
    });
  }

  guided.preview = async (what) => {
    const {path, places} = ASKED[what];
    try {
      const token = await guided.token();
      const answer = await guided.post("/compressors/" + guided.test.machine + path, guided.content(), {_csrf: token.token});
      if (!answer.ok) {
        throw new Error("answer " + answer.status);
      }
      const page = new DOMParser().parseFromString(await answer.text(), "text/html");
      put(places, ...page.body.children);
    } catch (noSignal) {
      put(places, guided.words.noPreview);
    }
  };

  guided.form.addEventListener("guided-run", () => guided.preview("runs"));
  document.querySelectorAll("[data-ask]").forEach((button) => {
    button.addEventListener("click", () => guided.preview(button.dataset.ask));
  });
})();
