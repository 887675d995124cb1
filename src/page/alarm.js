"use strict";

// The sounds and the buzz of the page: one at the end of a timer, and a shorter, lower one for a feed that is due. A browser lets a
// page sound only after a tap, so every tap arms it while there is something to wait for.

let sounder = null;

function armAlarm() {
  const Context = window.AudioContext || window.webkitAudioContext;
  if (!Context) return;
  try {
    sounder = sounder || new Context();
    if (sounder.state !== "running") sounder.resume().catch(() => {});
  } catch {
    sounder = null;
  }
}

function beep(at, tune) {
  const tone = sounder.createOscillator();
  const loudness = sounder.createGain();
  tone.type = "triangle";
  tone.frequency.value = tune.hertz;
  loudness.gain.setValueAtTime(0.0001, at);
  loudness.gain.exponentialRampToValueAtTime(0.5, at + 0.03);
  loudness.gain.exponentialRampToValueAtTime(0.0001, at + tune.length);
  tone.connect(loudness).connect(sounder.destination);
  tone.start(at);
  tone.stop(at + tune.length + 0.05);
}

const tunes = {
  timer: { hertz: 880, beeps: 4, length: 0.45, every: 0.6, buzz: [400, 200, 400, 200, 400] },
  feed: { hertz: 587, beeps: 2, length: 0.2, every: 0.3, buzz: [150, 100, 150] },
};

function ring(tune) {
  if (sounder && sounder.state === "running") for (let count = 0; count < tune.beeps; count += 1) beep(sounder.currentTime + count * tune.every, tune);
  // A browser refuses to buzz, and says so in its log, before the page was ever touched.
  const touched = !navigator.userActivation || navigator.userActivation.hasBeenActive;
  if (touched && navigator.vibrate) navigator.vibrate(tune.buzz);
}
