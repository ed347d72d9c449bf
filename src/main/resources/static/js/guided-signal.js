/* Tells somebody with ear protection and eyes on a gauge: shakes, flashes and beeps where the device can. */
(() => {
  "use strict";

  let sound = null;

  function beep(times) {
    sound = sound || new (window.AudioContext || window.webkitAudioContext)();
    for (let i = 0; i < times; i++) {
      const tone = sound.createOscillator();
      tone.frequency.value = 880;
      tone.connect(sound.destination);
      tone.start(sound.currentTime + i * 0.35);
      tone.stop(sound.currentTime + i * 0.35 + 0.2);
    }
  }

  window.guided.alert = (times) => {
    document.body.classList.add("flash");
    setTimeout(() => document.body.classList.remove("flash"), 400 * times);
    try {
      if (navigator.vibrate) {
        navigator.vibrate(Array(times).fill([250, 150]).flat());
      }
      beep(times);
    } catch (silent) {
      // a device that can neither shake nor beep still flashes
    }
  };

  /* Keeps the screen on while the clock runs; the time is true without it. */
  window.guided.stayAwake = async () => {
    try {
      return navigator.wakeLock ? await navigator.wakeLock.request("screen") : null;
    } catch (refused) {
      return null;
    }
  };
})();
