/* The stop watch of each run: start, marks, stop; what it says goes into the fields, where it can be typed over. */
(() => {
  "use strict";

  const guided = window.guided;
  const {words} = guided;
  const OPERATORS = {"[psi]": "psi", "bar": "bar", "kPa": "kPa", "kgf/cm2": "kgf/cm²"};

  function keepRun(box) {
    const run = box.dataset.run;
    const path = "runs[" + run + "].";
    const part = (name) => box.querySelector(".timer [data-do='" + name + "']");
    const clock = box.querySelector(".timer .clock");
    const say = box.querySelector(".timer-say");
    const timer = new guided.Timer(guided.test.key + ":" + run);
    let ticking = null;
    let pressed = null;

    const value = (name) => guided.field(path + name).value.trim();
    const unit = () => {
      const chosen = guided.field(path + "startPressure.unit");
      return chosen.selectedOptions ? chosen.selectedOptions[0].textContent : OPERATORS[chosen.value];
    };

    /* The marks that are offered: halves of the band twice over, rounded to what a gauge shows. */
    function marks() {
      const from = Number(value("startPressure.number"));
      const to = Number(value("stopPressure.number"));
      if (!(to > from)) {
        return [];
      }
      const step = 10 ** Math.floor(Math.log10((to - from) / 2));
      const by = [5, 2, 1].map((n) => n * step).find((one) => (to - from) / one >= 3) || step;
      const all = [];
      for (let mark = (Math.floor(from / by) + 1) * by; mark < to - by / 10; mark += by) {
        all.push(String(Number(mark.toFixed(3))));
      }
      return all;
    }

    const nextMark = () => marks()[timer.state.laps.length];

    function laps() {
      return timer.laps().filter((lap) => lap.mark).map((lap) => lap.mark + " " + unit() + " @ "
        + lap.seconds.toFixed(2) + " s").join("; ");
    }

    function draw() {
      part("start").hidden = timer.running || timer.stopped;
      part("stop").hidden = !timer.running;
      part("lap").hidden = !timer.running || nextMark() === undefined;
      part("again").hidden = !timer.stopped;
      part("lap").textContent = guided.say(words.mark, (nextMark() || "") + " " + unit());
      clock.textContent = timer.running || timer.stopped ? timer.now().seconds.toFixed(1) : "0.0";
    }

    function tick() {
      clearInterval(ticking);
      if (timer.running) {
        ticking = setInterval(draw, 100);
      }
      draw();
    }

    const presses = {
      start(event) {
        timer.start(event);
        const at = timer.state.start.day;
        if (run === "0") {
          const site = guided.atSite(at);
          guided.set("date", site.date);
          guided.set("time", site.time);
        }
        guided.log("run " + (Number(run) + 1) + " start", at);
        say.textContent = words.running;
        guided.alert(1);
        guided.stayAwake();
      },
      lap(event) {
        timer.lap(event, nextMark());
        guided.set(path + "laps", laps());
      },
      stop(event) {
        timer.stop(event);
        finish();
        guided.log("run " + (Number(run) + 1) + " stop", timer.state.stop.day);
        guided.alert(2);
      },
      again() {
        guided.log("run " + (Number(run) + 1) + " timed again; was " + value("elapsed.number") + " s");
        timer.clear();
        guided.set(path + "elapsed.number", "");
        guided.set(path + "laps", "");
        say.textContent = "";
        say.classList.remove("warn");
      }
    };

    function finish() {
      const said = timer.now();
      say.classList.toggle("warn", said.jumped);
      if (said.jumped) {
        say.textContent = guided.say(words.jumped, said.byDay.toFixed(1), said.byPage === null ? "?" : said.byPage.toFixed(1));
        guided.set(path + "elapsed.number", "");
        guided.log("run " + (Number(run) + 1) + " clock jumped");
        return;
      }
      guided.set(path + "elapsed.unit", "s");
      guided.set(path + "elapsed.number", said.seconds.toFixed(2));
      say.textContent = guided.say(words.stopped, said.seconds.toFixed(2)) + (said.slept ? " " + words.slept : "");
      guided.form.dispatchEvent(new CustomEvent("guided-run"));
    }

    for (const [name, press] of Object.entries(presses)) {
      const button = part(name);
      button.addEventListener("pointerdown", (event) => {
        pressed = event;
      });
      button.addEventListener("click", (event) => {
        press(pressed && event.detail > 0 ? pressed : event);
        pressed = null;
        tick();
        const next = name === "start" ? part("stop") : name === "stop" ? part("again") : null;
        if (next) {
          next.focus();
        }
      });
    }
    document.addEventListener("visibilitychange", () => document.hidden && timer.hidden());
    document.addEventListener("freeze", () => timer.hidden());
    box.addEventListener("input", draw);
    if (timer.running) {
      say.textContent = words.running;
    }
    tick();
    return timer;
  }

  guided.timers = [...document.querySelectorAll("fieldset.run")].map(keepRun);
})();
