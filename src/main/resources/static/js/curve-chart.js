/*
 * Draws flow against pressure into <figure data-curve-for="id of the table of flows" data-marks="id of the table of marks">.
 * Flows: rows with data-name, data-pressure, data-flow, data-u. Marks: rows with data-kind (TEST or RATING), data-pressure,
 * data-flow, data-u, data-word. Without script nothing is missing: the tables have every figure.
 */
(() => {
  "use strict";

  const NARROW = 480;
  const SYMBOLS = ["circle", "triangle", "diamond", "star", "wye", "cross"];

  function number(text) {
    return text === undefined || text.trim() === "" ? null : Number(text);
  }

  function read(row) {
    const {name, kind, word, pressure, flow, u} = row.dataset;
    const half = number(u);
    const value = number(flow);
    return {
      name,
      kind,
      word,
      pressure: number(pressure),
      flow: value,
      low: half === null ? null : value - half,
      high: half === null ? null : value + half,
      title: [name || word, pressure, value === null ? "" : flow + (half === null ? "" : " ± " + u)]
        .filter(Boolean).join("\n")
    };
  }

  function rows(id) {
    const table = document.getElementById(id);
    return table ? [...table.querySelectorAll("tr[data-pressure]")].map(read)
      .filter((one) => Number.isFinite(one.pressure)) : [];
  }

  function draw(flows, marks, table, width) {
    const at = {x: "pressure", y: "flow"};
    const bar = {x: "pressure", y1: "low", y2: "high", strokeWidth: 1.5};
    const names = [...new Set(flows.map((one) => one.name))];
    const told = marks.filter((one) => one.flow !== null);
    const test = told.filter((one) => one.kind === "TEST");
    const rating = told.filter((one) => one.kind === "RATING");
    const svg = Plot.plot({
      className: "curve-chart",
      width,
      height: width < NARROW ? 300 : 400,
      marginLeft: 56,
      marginTop: 32,
      marginBottom: 44,
      inset: 18,
      style: {fontSize: "13px"},
      x: {label: table.dataset.xLabel, labelArrow: "none", ticks: Math.max(4, Math.floor(width / 110))},
      y: {label: table.dataset.yLabel, nice: true, labelArrow: "none", ticks: 6},
      symbol: {domain: names, range: SYMBOLS.slice(0, names.length), legend: false},
      marks: [
        Plot.gridY({ticks: 6, strokeOpacity: 0.12}),
        Plot.ruleX(marks.filter((one) => one.kind === "RATING"),
          {x: "pressure", strokeDasharray: "4,4", className: "rating-at"}),
        Plot.line(flows, {...at, z: "name", strokeWidth: 1.25, className: "line"}),
        Plot.ruleX(flows.filter((one) => one.low !== null), {...bar, className: "bars"}),
        Plot.dot(flows, {...at, symbol: "name", r: 4.5, className: "flows"}),
        Plot.ruleX(test.filter((one) => one.low !== null), {...bar, className: "test-bars"}),
        Plot.dot(test, {...at, symbol: "square", r: 6, className: "test"}),
        Plot.dot(rating, {...at, symbol: "square", r: 6, strokeWidth: 2, className: "rating"}),
        Plot.text(told, {...at, text: "word", dy: -16, className: "names"}),
        Plot.tip([...flows, ...told], Plot.pointer({...at, title: "title", maxRadius: 40}))
      ]
    });
    svg.querySelectorAll("style").forEach((style) => style.remove());
    svg.querySelectorAll("[aria-label]").forEach((group) => group.removeAttribute("aria-label"));
    svg.setAttribute("role", "img");
    return svg;
  }

  document.querySelectorAll("figure[data-curve-for]").forEach((figure) => {
    const table = document.getElementById(figure.dataset.curveFor);
    const flows = rows(figure.dataset.curveFor).filter((one) => Number.isFinite(one.flow) && one.flow !== null);
    if (!table || !window.Plot || flows.length === 0) {
      return;
    }
    const marks = rows(figure.dataset.marks);
    let drawn = null;
    let width = 0;
    const redraw = () => {
      const space = Math.floor(figure.clientWidth);
      if (space === 0 || space === width) {
        return;
      }
      width = space;
      const svg = draw(flows, marks, table, width);
      svg.setAttribute("aria-label", figure.dataset.summary);
      if (drawn) {
        drawn.replaceWith(svg);
      } else {
        figure.prepend(svg);
      }
      drawn = svg;
    };
    new ResizeObserver(redraw).observe(figure);
    redraw();
  });
})();
