/*
 * Reads what the flow chart shows from the tables of the page; the tables stay the source.
 * Tests, <table data-chart="flow" data-unit data-basis data-y-label>: rows with data-date, data-flow, data-u (half length
 * of the bar), data-href, data-included and, where that is false, data-left-out (why it is not in the line).
 * The figure names the other tables by id. data-line: rows with data-date, data-piece, data-forecast, data-flow,
 * data-low, data-high. data-levels: rows with data-level, data-flow, data-word, data-percent. data-events: rows with data-date,
 * data-mark, data-step, data-word.
 */
(() => {
  "use strict";

  function number(text) {
    return text === undefined || text.trim() === "" ? null : Number(text);
  }

  function day(text) {
    return new Date(text + "T00:00:00Z");
  }

  function test(row, table) {
    const {date, flow, u, included, leftOut, href} = row.dataset;
    const counted = included !== "false";
    const half = number(u);
    const text = flow + (half === null ? "" : " ± " + u) + " " + (table.dataset.unit || "");
    return {
      date: day(date),
      flow: number(flow),
      low: half === null ? null : number(flow) - half,
      high: half === null ? null : number(flow) + half,
      counted,
      href,
      title: [date, text, table.dataset.basis, counted ? "" : leftOut].filter(Boolean).join("\n")
    };
  }

  function lineDay(row) {
    const {date, piece, forecast, flow, low, high} = row.dataset;
    return {
      date: day(date),
      piece,
      forecast: forecast === "true",
      flow: number(flow),
      low: number(low),
      high: number(high)
    };
  }

  function level(row) {
    const {level: code, flow, word, percent} = row.dataset;
    return {code, flow: number(flow), word, percent};
  }

  function event(row) {
    return {date: day(row.dataset.date), mark: row.dataset.mark, step: row.dataset.step === "true"};
  }

  function isDrawable(one) {
    return (one.flow === undefined || Number.isFinite(one.flow))
      && (one.date === undefined || !Number.isNaN(one.date.getTime()));
  }

  function rows(id, selector, read) {
    const table = id ? document.getElementById(id) : null;
    return table ? [...table.querySelectorAll(selector)].map((row) => read(row, table)).filter(isDrawable) : [];
  }

  /* All that a figure shows, oldest first. */
  window.flowData = (figure) => ({
    tests: rows(figure.dataset.chartFor, "tr[data-date][data-flow]", test).sort((a, b) => a.date - b.date),
    line: rows(figure.dataset.line, "tr[data-date][data-flow]", lineDay),
    levels: rows(figure.dataset.levels, "tr[data-level]", level),
    events: rows(figure.dataset.events, "tr[data-date][data-mark]", event).sort((a, b) => a.date - b.date)
  });
})();
