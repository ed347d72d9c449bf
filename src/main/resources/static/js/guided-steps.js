/* Shows one step after the other, and what keeps a step from going on. Without this script the page is one long form. */
(() => {
  "use strict";

  const guided = window.guided;
  const {form, words} = guided;
  const steps = [...form.querySelectorAll(".step")];
  const links = [...document.querySelectorAll("#steps [data-go]")];
  const nameOf = (step) => step.dataset.step;

  const chosen = (name) => [...form.querySelectorAll("[name='" + name + "']:checked")].map((box) => box.value);
  const notes = [...form.querySelectorAll(".stop[data-receiver], [data-instrument]")];
  const isUsed = (note) => note.dataset.receiver ? chosen("receivers").includes(note.dataset.receiver)
    : ["gauge", "timer", "thermometer", "barometerUsed"]
      .some((name) => guided.field(name) && guided.field(name).value === note.dataset.instrument);
  const isStopped = () => notes.some((note) => note.dataset.receiver && isUsed(note));
  const isPastDate = () => notes.some((note) => note.dataset.instrument && isUsed(note));
  /* What is not used in this test needs no note. */
  const showNotes = () => notes.forEach((note) => {
    note.hidden = !isUsed(note);
  });
  const isMissingTicks = (name) => chosen(name).length < form.querySelectorAll("[name='" + name + "']").length;

  function tagProblem() {
    const read = guided.field("tagRead").value.trim();
    if (read === "") {
      return words.readTag;
    }
    const same = read.toLowerCase() === form.dataset.tag.toLowerCase();
    return same ? "" : guided.say(words.otherMachine, read, form.dataset.tag);
  }

  /* What speaks against leaving a step; empty when nothing does. */
  const PROBLEMS = {
    prepare() {
      if (tagProblem() !== "") {
        return tagProblem();
      }
      if (isStopped()) {
        return words.vessel;
      }
      if (form.dataset.automatic === "true" && guided.field("checks.speedHeld").value !== "YES") {
        return words.speed;
      }
      if (isPastDate() && guided.field("overrideReason").value.trim() === "") {
        return words.overdue;
      }
      return isMissingTicks("prepared") ? words.ticks : "";
    },
    hold() {
      return isMissingTicks("isolated") ? words.ticks : "";
    },
    back() {
      return isMissingTicks("putBack") ? words.ticks : "";
    }
  };

  const problemOf = (step) => PROBLEMS[nameOf(step)] ? PROBLEMS[nameOf(step)]() : "";
  const say = (step, text) => {
    step.querySelector(".step-say").textContent = text;
  };

  function go(index, focus) {
    showNotes();
    const barred = steps.slice(0, index).find((step) => problemOf(step) !== "");
    const step = barred || steps[index];
    steps.forEach((one) => one.classList.toggle("here", one === step));
    links.forEach((link) => {
      const here = link.dataset.go === nameOf(step);
      if (here) {
        link.setAttribute("aria-current", "step");
        link.scrollIntoView({block: "nearest", inline: "center"});
      } else {
        link.removeAttribute("aria-current");
      }
    });
    say(step, barred ? problemOf(barred) : "");
    localStorage.setItem("guided-step:" + guided.test.key, nameOf(step));
    if (focus) {
      step.querySelector("h2").focus();
    }
    if (barred) {
      step.querySelector(".step-say").scrollIntoView({block: "nearest"});
    } else if (nameOf(step) === "result") {
      guided.preview("runs");
    }
  }

  const at = (name) => Math.max(0, steps.findIndex((step) => nameOf(step) === name));

  form.addEventListener("click", (event) => {
    const move = event.target.closest("[data-move]");
    if (move) {
      const index = steps.indexOf(move.closest(".step"));
      const next = index + (move.dataset.move === "next" ? 1 : -1);
      if (next > index && problemOf(steps[index]) === "") {
        guided.log("step " + nameOf(steps[next]));
        guided.copy();
      }
      go(Math.max(0, next), true);
    }
  });
  links.forEach((link) => link.addEventListener("click", () => go(at(link.dataset.go), true)));

  form.addEventListener("change", (event) => {
    showNotes();
    const box = event.target;
    if (["prepared", "isolated", "putBack"].includes(box.name)) {
      guided.log((box.checked ? "ticked " : "unticked ") + box.value);
    }
  });

  /* Before anything else hears of it. */
  form.addEventListener("submit", (event) => {
    const barred = steps.findIndex((step) => problemOf(step) !== "");
    if (barred >= 0) {
      event.preventDefault();
      event.stopImmediatePropagation();
      go(steps.length - 1, false);
    }
  }, true);

  /* A field that is pointed at from the list of errors is shown. */
  function reveal() {
    const field = document.getElementById(location.hash.slice(1))
      || document.getElementById(location.hash.slice(1) + ".number");
    const step = field && field.closest(".step");
    if (step) {
      steps.forEach((one) => one.classList.toggle("here", one === step));
      field.focus();
    }
  }
  window.addEventListener("hashchange", reveal);

  form.classList.add("one-by-one");
  const wrong = form.querySelector(".step [aria-invalid='true']");
  const first = wrong ? nameOf(wrong.closest(".step"))
    : form.dataset.answered === "true" ? "back" : localStorage.getItem("guided-step:" + guided.test.key) || "prepare";
  go(at(first), false);
  if (wrong) {
    wrong.focus();
  }
})();
