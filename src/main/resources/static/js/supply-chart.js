/*
 * Draws supply beside demand from the two tables of the page, which have every figure; without script nothing is missing.
 * <figure data-supply-chart="id of the table of machines" data-supply-need="id of the table of items">
 * Rows of the first: data-part machine (data-label, data-flow, data-largest), leaks, net and lost (data-flow, data-u).
 * Rows of the second: data-part item (data-label, data-flow, data-need), need and worn (data-flow, data-u).
 */
(() => {
  "use strict";

  const NAME = "supply-chart";
  const NARROW = 480;
  const LETTER = 8;

  const rows = (table, part) => [...table.querySelectorAll(`tr[data-part="${part}"]`)].map((row) => ({
    label: row.dataset.label || "",
    flow: Number(row.dataset.flow),
    need: Number(row.dataset.need),
    u: Number(row.dataset.u),
    largest: row.dataset.largest === "true"
  })).filter((row) => Number.isFinite(row.flow));

  /* Puts segments side by side. */
  function stack(bar, parts, kind, from) {
    let x = from;
    return parts.filter((part) => part.flow > 0).map((part) => {
      const segment = {bar, kind, label: part.label, x1: x, x2: x + part.flow};
      x = segment.x2;
      return segment;
    });
  }

  function end(segments, from) {
    return segments.length === 0 ? from : segments[segments.length - 1].x2;
  }

  /* Leaks are taken from the right end of what the machines deliver. */
  function supplied(bar, machines, leak, label) {
    const segments = stack(bar, machines, "machine", 0);
    const right = end(segments, 0);
    const lost = leak > 0 ? [{bar, kind: "leaks", label, x1: Math.max(0, right - leak), x2: right}] : [];
    return [...segments, ...lost];
  }

  function read(figure) {
    const machines = document.getElementById(figure.dataset.supplyChart);
    const items = document.getElementById(figure.dataset.supplyNeed);
    const words = figure.dataset;
    const all = rows(machines, "machine");
    const leak = rows(machines, "leaks").map((row) => row.flow)[0] || 0;
    const used = rows(items, "item");
    const uses = stack(words.needWord, used, "item", 0);
    const from = end(uses, 0);
    const reserve = used.reduce((sum, item) => sum + item.need - item.flow, 0);
    const bars = [
      ...supplied(words.supplyWord, all, leak, words.leaksWord),
      ...(all.length > 1 ? supplied(words.lostWord, all.filter((one) => !one.largest), leak, words.leaksWord) : []),
      ...uses,
      ...stack(words.needWord, [{label: words.reserveWord, flow: reserve}], "reserve", from),
      ...rows(items, "worn").map((worn) => ({bar: words.wornWord, kind: "reserve", label: "", x1: 0, x2: worn.flow}))
    ];
    const ends = [
      ...rows(machines, "net").map((row) => ({...row, bar: words.supplyWord})),
      ...(all.length > 1 ? rows(machines, "lost").map((row) => ({...row, bar: words.lostWord})) : []),
      ...rows(items, "need").map((row) => ({...row, bar: words.needWord})),
      ...rows(items, "worn").map((row) => ({...row, bar: words.wornWord}))
    ].map((row) => ({bar: row.bar, x1: row.flow - row.u, x2: row.flow + row.u}));
    return {bars, ends, order: [...new Set(bars.map((bar) => bar.bar))], axis: words.axis};
  }

  function draw(data, width) {
    const narrow = width < NARROW;
    const left = narrow ? 96 : 150;
    const most = Math.max(...data.bars.map((bar) => bar.x2), ...data.ends.map((one) => one.x2));
    const perUnit = (width - left - 20) / most;
    const named = data.bars.filter((bar) => bar.label.length * LETTER < (bar.x2 - bar.x1) * perUnit);
    const bar = {x1: "x1", x2: "x2", y: "bar", insetTop: 6, insetBottom: 6};
    const word = {x: (one) => (one.x1 + one.x2) / 2, y: "bar", text: "label"};
    const of = (...kinds) => (one) => kinds.includes(one.kind);
    const svg = Plot.plot({
      className: NAME,
      width,
      height: 60 + 58 * data.order.length,
      marginLeft: left,
      marginRight: 20,
      marginBottom: 40,
      style: {fontSize: "13px"},
      x: {label: data.axis, labelArrow: "none", nice: true, domain: [0, most], ticks: narrow ? 4 : 8},
      y: {label: null, domain: data.order, tickSize: 0},
      marks: [
        Plot.gridX({ticks: narrow ? 4 : 8, strokeOpacity: 0.15}),
        ...["machine", "leaks", "item", "reserve"].map((kind) =>
          Plot.barX(data.bars.filter(of(kind)), {...bar, className: kind})),
        Plot.text(named.filter(of("machine")), {...word, className: "on-bar"}),
        Plot.text(named.filter(of("item")), {...word, className: "on-item"}),
        Plot.text(named.filter(of("leaks", "reserve")), {...word, className: "on-open"}),
        Plot.ruleY(data.ends, {x1: "x1", x2: "x2", y: "bar", className: "whisker"}),
        Plot.tickX(data.ends, {x: "x1", y: "bar", inset: 16, className: "whisker"}),
        Plot.tickX(data.ends, {x: "x2", y: "bar", inset: 16, className: "whisker"})
      ]
    });
    svg.querySelectorAll("style").forEach((style) => style.remove());
    svg.querySelectorAll("[aria-label]").forEach((group) => group.removeAttribute("aria-label"));
    svg.setAttribute("role", "img");
    return svg;
  }

  document.querySelectorAll("figure[data-supply-chart]").forEach((figure) => {
    const data = window.Plot ? read(figure) : null;
    let drawn = null;
    let width = 0;
    const redraw = () => {
      const space = Math.floor(figure.clientWidth);
      if (data === null || space === 0 || space === width) {
        return;
      }
      width = space;
      const svg = draw(data, width);
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
