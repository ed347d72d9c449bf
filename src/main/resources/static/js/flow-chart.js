/*
 * Draws each <table data-chart="flow"> into <figure data-chart-for="id of the table">.
 * Rows: data-date, data-flow, data-u (half length of the bar), data-line (fitted flow), data-href, data-included and,
 * where that is false, data-left-out (why it is not in the line). Table: data-unit, data-basis, data-y-label.
 * The table stays the source: without script, or for a screen reader, nothing is missing.
 */
(() => {
  "use strict";

  const NAME = "flow-chart";
  const NARROW = 480;

  function number(text) {
    return text === undefined || text.trim() === "" ? null : Number(text);
  }

  function point(row, table) {
    const {date, flow, u, line, included, leftOut, href} = row.dataset;
    const counted = included !== "false";
    const half = number(u);
    const text = flow + (half === null ? "" : " ± " + u) + " " + (table.dataset.unit || "");
    return {
      date: new Date(date + "T00:00:00Z"),
      flow: number(flow),
      low: half === null ? null : number(flow) - half,
      high: half === null ? null : number(flow) + half,
      line: number(line),
      counted,
      href,
      title: [date, text, table.dataset.basis, counted ? "" : leftOut].filter(Boolean).join("\n")
    };
  }

  function points(table) {
    return [...table.querySelectorAll("tr[data-date][data-flow]")]
      .map((row) => point(row, table))
      .filter((p) => Number.isFinite(p.flow) && !Number.isNaN(p.date.getTime()))
      .sort((a, b) => a.date - b.date);
  }

  function marks(all) {
    const barred = all.filter((p) => p.low !== null);
    const bar = {x: "date", y1: "low", y2: "high", className: "bars"};
    return [
      Plot.gridY({strokeOpacity: 0.12}),
      Plot.line(all.filter((p) => p.line !== null), {x: "date", y: "line", strokeWidth: 1.5, className: "fitted"}),
      Plot.ruleX(barred.filter((p) => p.counted), {...bar, strokeWidth: 1.5}),
      Plot.ruleX(barred.filter((p) => !p.counted), {...bar, strokeDasharray: "2,3", className: "bars-left-out"}),
      Plot.dot(all.filter((p) => p.counted), {x: "date", y: "flow", r: 4.5, className: "counted"}),
      Plot.dot(all.filter((p) => !p.counted), {x: "date", y: "flow", r: 4.5, strokeWidth: 1.5, className: "left-out"}),
      Plot.tip(all, Plot.pointer({x: "date", y: "flow", title: "title", maxRadius: 40}))
    ];
  }

  function draw(all, table, width) {
    const svg = Plot.plot({
      className: NAME,
      width,
      height: width < NARROW ? 260 : 360,
      marginLeft: 52,
      marginTop: 28,
      marginBottom: 36,
      insetLeft: 16,
      insetRight: 16,
      style: {fontSize: "13px"},
      x: {type: "utc", label: null, ticks: Math.max(2, Math.floor(width / 110))},
      y: {label: table.dataset.yLabel || table.dataset.unit, nice: true, labelArrow: "none", ticks: 6},
      marks: marks(all)
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
    const all = points(table);
    const caption = figure.querySelector("figcaption");
    let drawn = null;
    let width = 0;
    if (all.length === 0) {
      return;
    }
    const redraw = () => {
      const space = Math.floor(figure.clientWidth);
      if (space === 0 || space === width) {
        return;
      }
      width = space;
      const svg = draw(all, table, width);
      svg.setAttribute("aria-label", caption ? caption.textContent.trim() : table.dataset.yLabel || "");
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
    if (table && table.dataset.chart === "flow" && window.Plot) {
      keepDrawn(figure, table);
    }
  });
})();
