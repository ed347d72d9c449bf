/* Waits by the clock: five minutes of static hold, ten of settling. The time waited goes into its field. */
(() => {
  "use strict";

  const guided = window.guided;
  const {words} = guided;

  function minutes(seconds) {
    const whole = Math.max(0, Math.ceil(seconds));
    return Math.floor(whole / 60) + ":" + String(whole % 60).padStart(2, "0");
  }

  function keepWait(box, number) {
    const kind = box.dataset.wait;
    const whole = Number(box.dataset.minutes) * 60;
    const run = box.closest("fieldset.run");
    const path = kind === "hold" ? "checks.hold" : "runs[" + run.dataset.run + "].settled";
    const timer = new guided.Timer(guided.test.key + ":" + kind + number);
    const clock = box.querySelector(".clock");
    const say = box.querySelector(".wait-say");
    const on = kind === "hold" ? words.holdOn : words.settleOn;
    const over = kind === "hold" ? words.holdOver : words.settleOver;
    let told = false;

    function draw() {
      if (!timer.running) {
        return;
      }
      const left = whole - timer.now().seconds;
      clock.textContent = minutes(left);
      say.textContent = left > 0 ? on : over;
      if (left <= 0 && !told) {
        told = true;
        guided.alert(3);
      }
    }

    box.querySelector("[data-do='start']").addEventListener("click", (event) => {
      timer.start(event);
      told = false;
      guided.log(kind === "hold" ? "hold start" : "run " + (Number(run.dataset.run) + 1) + " settling", timer.state.start.day);
      guided.alert(1);
      draw();
    });

    /* The second reading ends the wait; the time is that of its first digit. */
    const last = guided.field(kind === "hold" ? "checks.holdEnd.number" : path + "Pressure.number");
    last.addEventListener("input", (event) => {
      if (timer.running && event.isTrusted) {
        timer.stop(event);
        guided.set(path + "Wait.unit", "min");
        guided.set(path + "Wait.number", (timer.now().seconds / 60).toFixed(2));
        guided.log(kind === "hold" ? "hold end" : "run " + (Number(run.dataset.run) + 1) + " settled", timer.state.stop.day);
      }
    });
    document.addEventListener("visibilitychange", () => document.hidden && timer.hidden());
    setInterval(draw, 500);
    draw();
  }

  document.querySelectorAll(".wait").forEach(keepWait);
})();
