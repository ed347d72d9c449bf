/*
 * Draws what flow-data.js reads into each <figure data-chart-for="id of the table of tests">.
 * Without script, or for a screen reader, nothing is missing: the tables have every figure.
 */
(() => {
  "use strict";

  const NAME = "flow-chart";
  const NARROW = 480;
  const MANY = 120;

  function band(line, forecast) {
    const rows = line.filter((day) => day.forecast === forecast);
    const name = forecast ? "-forecast" : "";
    const at = {x: "date", z: "piece"};
    return [
      Plot.areaY(rows, {...at, y1: "low", y2: "high", fillOpacity: forecast ? 0.08 : 0.16, className: "band" + name}),
      Plot.line(rows, {...at, y: "flow", strokeWidth: 1.5, strokeDasharray: forecast ? "3,4" : null,
        className: "fitted" + name})
    ];
  }

  function levelMarks(levels, narrow) {
    const own = (level) => level.code === "BASELINE";
    const text = {y: "flow", text: narrow ? "percent" : "word", frameAnchor: "right", textAnchor: "start", dx: 6};
    return [
      Plot.ruleY(levels.filter(own), {y: "flow", strokeWidth: 1, className: "baseline"}),
      Plot.ruleY(levels.filter((level) => !own(level)), {y: "flow", strokeDasharray: "9,5", className: "limits"}),
      Plot.text(levels, {...text, className: "level-names"})
    ];
  }

  /* A letter that would touch the one before goes one row up. */
  function letters(events, span) {
    let last = null;
    return events.map((event) => {
      const close = last !== null && !last.up && event.date - last.date < span / 25;
      last = {...event, up: close};
      return last;
    });
  }

  function eventMarks(events, span) {
    const named = letters(events, span);
    const row = (up) => Plot.text(named.filter((event) => event.up === up),
      {x: "date", text: "mark", frameAnchor: "top", dy: up ? -25 : -12, className: "event-names"});
    return [
      Plot.ruleX(events.filter((event) => event.step), {x: "date", strokeWidth: 1.25, className: "events"}),
      Plot.ruleX(events.filter((event) => !event.step),
        {x: "date", strokeWidth: 1, strokeDasharray: "1,4", className: "events-no-step"}),
      row(false),
      row(true)
    ];
  }

  function testMarks(tests) {
    const many = tests.length > MANY;
    const barred = tests.filter((test) => test.low !== null);
    const bar = {x: "date", y1: "low", y2: "high", strokeWidth: many ? 0.75 : 1.5};
    const dot = {x: "date", y: "flow", r: many ? 2.25 : 4.5, fillOpacity: many ? 0.45 : 1};
    return [
      Plot.ruleX(barred.filter((test) => test.counted), {...bar, strokeOpacity: many ? 0.4 : 1, className: "bars"}),
      Plot.ruleX(barred.filter((test) => !test.counted), {...bar, strokeDasharray: "2,3", className: "bars-left-out"}),
      Plot.dot(tests.filter((test) => test.counted), {...dot, className: "counted"}),
      Plot.dot(tests.filter((test) => !test.counted), {...dot, strokeWidth: 1.5, className: "left-out"}),
      Plot.tip(tests, Plot.pointer({x: "date", y: "flow", title: "title", maxRadius: 40}))
    ];
  }

  function draw(data, table, width) {
    const narrow = width < NARROW;
    const days = [...data.tests, ...data.line, ...data.events].map((one) => one.date.getTime());
    const span = Math.max(...days) - Math.min(...days);
    const svg = Plot.plot({
      className: NAME,
      width,
      height: narrow ? 320 : 420,
      marginLeft: 52,
      marginRight: data.levels.length === 0 ? 20 : narrow ? 48 : 138,
      marginTop: 48,
      marginBottom: 36,
      insetLeft: 16,
      insetRight: 16,
      style: {fontSize: "13px"},
      x: {type: "utc", label: null, ticks: Math.max(4, Math.floor(width / 110))},
      y: {label: table.dataset.yLabel || table.dataset.unit, nice: true, labelArrow: "none", ticks: 6},
      marks: [
        Plot.gridY({ticks: 6, strokeOpacity: 0.12}),
        ...band(data.line, false),
        ...band(data.line, true),
        ...levelMarks(data.levels, narrow),
        ...eventMarks(data.events, span),
        ...testMarks(data.tests)
      ]
    });
    svg.querySelectorAll("style").forEach((style) => style.remove());
    svg.querySelectorAll("[aria-label]").forEach((group) => group.removeAttribute("aria-label"));
    svg.setAttribute("role", "img");
    return svg;
  }

  /* A click opens the test under the pointer; with a finger the first tap shows its figures, the second opens it. */
  function openOnClick(svg) {
    let shown = null;
    svg.addEventListener("click", (event) => {
      const chosen = svg.value;
      const go = chosen && chosen.href && (event.pointerType === "mouse" || chosen === shown);
      shown = chosen;
      if (go) {
        window.location.assign(chosen.href);
      }
    });
  }

  function keepDrawn(figure, table) {
    const data = window.flowData(figure);
    const caption = figure.querySelector("figcaption");
    let drawn = null;
    let width = 0;
    if (data.tests.length === 0) {
      return;
    }
    const redraw = () => {
      const space = Math.floor(figure.clientWidth);
      if (space === 0 || space === width) {
        return;
      }
      width = space;
      const svg = draw(data, table, width);
      svg.setAttribute("aria-label", figure.dataset.summary || (caption ? caption.textContent.trim() : ""));
      openOnClick(svg);
      if (drawn) {
        drawn.replaceWith(svg);
      } else {
        figure.prepend(svg);
      }
      drawn = svg;
    };
    new ResizeObserver(redraw).observe(figure);
    redraw();
  }

  document.querySelectorAll("figure[data-chart-for]").forEach((figure) => {
    const table = document.getElementById(figure.dataset.chartFor);
    if (table && table.dataset.chart === "flow" && window.Plot && window.flowData) {
      keepDrawn(figure, table);
    }
  });
})();
