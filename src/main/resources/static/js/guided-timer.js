/*
 * A stop watch that keeps true time: it counts nothing, it remembers when it was pressed. Two clocks are noted at each
 * press, that of the day (goes on while the device sleeps or the page is loaded anew) and that of this page (nobody can
 * set it). Where they disagree, somebody set the clock, or the device slept; then it says so.
 */
(() => {
  "use strict";

  const guided = window.guided;
  const PREFIX = "guided-timer:";
  const AGREE_MS = 100;

  /* When an input happened, by both clocks: a busy browser calls the script later than that. */
  function moment(event) {
    const now = performance.now();
    const late = event && event.timeStamp > 0 && event.timeStamp <= now ? now - event.timeStamp : 0;
    return {day: Date.now() - late, page: now - late, load: performance.timeOrigin};
  }

  class Timer {
    constructor(name) {
      this.name = PREFIX + name;
      const kept = localStorage.getItem(this.name);
      this.state = kept === null ? {start: null, stop: null, laps: [], slept: false} : JSON.parse(kept);
    }

    keep() {
      localStorage.setItem(this.name, JSON.stringify(this.state));
    }

    get running() {
      return this.state.start !== null && this.state.stop === null;
    }

    get stopped() {
      return this.state.stop !== null;
    }

    start(event) {
      this.state = {start: moment(event), stop: null, laps: [], slept: false};
      this.keep();
    }

    stop(event) {
      this.state.stop = moment(event);
      this.keep();
    }

    lap(event, mark) {
      this.state.laps.push({at: moment(event), mark});
      this.keep();
    }

    clear() {
      localStorage.removeItem(this.name);
      this.state = {start: null, stop: null, laps: [], slept: false};
    }

    /* The page could not be seen for a while: a sleeping device may have stopped the clock of the page. */
    hidden() {
      if (this.running) {
        this.state.slept = true;
        this.keep();
      }
    }

    /* Seconds from the start to a moment, and whether they can be trusted. */
    since(at) {
      const start = this.state.start;
      const byDay = (at.day - start.day) / 1000;
      if (at.load !== start.load) {
        return {seconds: byDay, byDay, byPage: null, jumped: byDay < 0, slept: true};
      }
      const byPage = (at.page - start.page) / 1000;
      const apart = (byDay - byPage) * 1000;
      if (Math.abs(apart) <= AGREE_MS) {
        return {seconds: byPage, byDay, byPage, jumped: false, slept: false};
      }
      const slept = apart > 0 && this.state.slept;
      return {seconds: slept ? byDay : byPage, byDay, byPage, jumped: !slept, slept};
    }

    now() {
      return this.since(this.state.stop || moment(null));
    }

    laps() {
      return this.state.laps.map((lap) => ({mark: lap.mark, ...this.since(lap.at)}));
    }
  }

  guided.Timer = Timer;
})();
