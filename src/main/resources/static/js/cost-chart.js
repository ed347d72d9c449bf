/*
 * Draws the bars of <figure data-cost-of="id of a table"> from its rows with data-name and data-bar; the table stays the
 * source, and without script nothing is missing.
 */
(() => {
  "use strict";

  const ROW = 34;
  const NARROW = 480;

  function rows(table) {
    return [...table.querySelectorAll("tr[data-bar]")]
      .map((row) => ({name: row.dataset.name, value: Number(row.dataset.bar)}))
      .filter((row) => Number.isFinite(row.value));
  }

  function draw(bars, unit, width) {
    const narrow = width < NARROW;
    const svg = Plot.plot({
      width,
      height: 40 + ROW * bars.length * (narrow ? 1.6 : 1),
      marginLeft: narrow ? 8 : 190,
      marginRight: 96,
      marginTop: 8,
      marginBottom: 32,
      style: {fontSize: "13px"},
      x: {label: null, ticks: Math.max(3, Math.floor(width / 160)), nice: true, zero: true},
      y: {label: null, axis: narrow ? null : "left", domain: bars.map((bar) => bar.name), padding: narrow ? 0.55 : 0.35},
      marks: [
        Plot.gridX({strokeOpacity: 0.12}),
        Plot.barX(bars, {x: "value", y: "name", fillOpacity: 0.75}),
        Plot.text(bars, {x: "value", y: "name", text: (bar) => Math.round(bar.value) + " " + unit, textAnchor: "start", dx: 6}),
        narrow ? Plot.text(bars, {y: "name", text: "name", frameAnchor: "left", textAnchor: "start", dy: -19}) : null,
        Plot.ruleX([0])
      ]
    });
    svg.querySelectorAll("style").forEach((style) => style.remove());
    svg.querySelectorAll("[aria-label]").forEach((group) => group.removeAttribute("aria-label"));
    svg.setAttribute("role", "img");
    return svg;
  }

  document.querySelectorAll("figure[data-cost-of]").forEach((figure) => {
    const table = document.getElementById(figure.dataset.costOf);
    const bars = table ? rows(table) : [];
    let drawn = null;
    let width = 0;
    if (bars.length === 0 || !window.Plot) {
      figure.hidden = true;
      return;
    }
    const redraw = () => {
      const space = Math.floor(figure.clientWidth);
      if (space === 0 || space === width) {
        return;
      }
      width = space;
      const svg = draw(bars, table.dataset.unit, width);
      svg.setAttribute("aria-label", figure.querySelector("figcaption").textContent.trim());
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
