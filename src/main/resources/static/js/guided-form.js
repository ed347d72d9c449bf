/* The fields of the guided test as one text, and back. */
(() => {
  "use strict";

  const guided = window.guided;
  const form = guided.form = document.getElementById("guide");
  const OF_SENDING = ["_csrf", "action", "confirmed", "draftVersion", "device", "writer", "deviceRecordedAt", "deviceOffsetMs"];

  guided.field = (name) => form.elements[name];

  guided.set = (name, value) => {
    const control = guided.field(name);
    if (control && control.value !== value) {
      control.value = value;
      control.dispatchEvent(new Event("input", {bubbles: true}));
    }
  };

  guided.content = () => {
    const fields = new URLSearchParams();
    for (const [name, value] of new FormData(form)) {
      if (!OF_SENDING.includes(name)) {
        fields.append(name, value);
      }
    }
    return fields.toString();
  };

  guided.fill = (content) => {
    const fields = new URLSearchParams(content);
    for (const control of form.elements) {
      if (!control.name || OF_SENDING.includes(control.name) || control.type === "submit") {
        continue;
      }
      if (control.type === "checkbox" || control.type === "radio") {
        control.checked = fields.getAll(control.name).includes(control.value);
      } else if (fields.has(control.name)) {
        offer(control, fields.get(control.name));
        control.value = fields.get(control.name);
      }
    }
  };

  /* What was chosen from a longer list, or is not offered any more, stays chosen. */
  function offer(control, value) {
    if (control.options && value !== "" && ![...control.options].some((one) => one.value === value)) {
      control.add(new Option(guided.words.chosenBefore, value));
    }
  }

  guided.show = (text, href, link) => {
    const place = document.getElementById("guide-state");
    place.hidden = false;
    place.textContent = text + " ";
    if (href) {
      const anchor = document.createElement("a");
      anchor.href = href;
      anchor.textContent = link;
      place.append(anchor);
    }
  };

  /* A line of the log: when, by the clock of this device, and what. */
  guided.log = (what, at) => {
    const steps = guided.field("steps");
    const line = new Date(at === undefined ? Date.now() : at).toISOString() + " " + what;
    const lines = steps.value === "" ? line : steps.value + "\n" + line;
    if (lines.length < 6800) {
      steps.value = lines;
      form.dispatchEvent(new Event("input"));
    }
  };

  /* Day and time at the site. */
  guided.atSite = (ms) => {
    const parts = new Intl.DateTimeFormat("en-CA", {timeZone: form.dataset.zone, hourCycle: "h23", year: "numeric",
      month: "2-digit", day: "2-digit", hour: "2-digit", minute: "2-digit"}).formatToParts(new Date(ms));
    const part = (type) => parts.find((one) => one.type === type).value;
    return {date: part("year") + "-" + part("month") + "-" + part("day"), time: part("hour") + ":" + part("minute")};
  };
})();
