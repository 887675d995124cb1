"use strict";

// The sound and the buzz at the end of a timer. A browser lets a page sound only after a tap, so the tap that starts a timer
// arms it.

let sounder = null;

function armAlarm() {
  const Context = window.AudioContext || window.webkitAudioContext;
  if (!Context) return;
  try {
    sounder = sounder || new Context();
    if (sounder.state === "suspended") sounder.resume().catch(() => {});
  } catch {
    sounder = null;
  }
}

function beep(at) {
  const tone = sounder.createOscillator();
  const loudness = sounder.createGain();
  tone.type = "triangle";
  tone.frequency.value = 880;
  loudness.gain.setValueAtTime(0.0001, at);
  loudness.gain.exponentialRampToValueAtTime(0.5, at + 0.03);
  loudness.gain.exponentialRampToValueAtTime(0.0001, at + 0.45);
  tone.connect(loudness).connect(sounder.destination);
  tone.start(at);
  tone.stop(at + 0.5);
}

function ring() {
  if (sounder && sounder.state === "running") for (let count = 0; count < 4; count += 1) beep(sounder.currentTime + count * 0.6);
  // A browser refuses to buzz, and says so in its log, before the page was ever touched.
  const touched = !navigator.userActivation || navigator.userActivation.hasBeenActive;
  if (touched && navigator.vibrate) navigator.vibrate([400, 200, 400, 200, 400]);
}
