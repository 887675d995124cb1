// Stands in for parts of a phone, and counts what the page does with them.

/** Sounds: the pitch of every beep, in hertz. */
export const withSounds = (page) => page.addInitScript(() => {
  window.beeps = [];
  const ramp = { setValueAtTime() {}, exponentialRampToValueAtTime() {} };
  window.AudioContext = class {
    state = "suspended";
    currentTime = 0;
    destination = {};
    resume() {
      this.state = "running";
      return Promise.resolve();
    }
    createOscillator() {
      const tone = { frequency: { value: 0 }, connect: (to) => to, start: () => window.beeps.push(tone.frequency.value), stop() {} };
      return tone;
    }
    createGain() {
      return { gain: ramp, connect: (to) => to };
    }
  };
});

export const beeps = (page) => page.evaluate(() => window.beeps.splice(0));

/** The lock that keeps a screen awake: how often it was asked for, and whether one is held. */
export const withWakeLock = (page) => page.addInitScript(() => {
  window.locks = { asked: 0, held: 0 };
  const wakeLock = {
    request(kind) {
      if (kind !== "screen") throw new TypeError(kind);
      window.locks.asked += 1;
      window.locks.held += 1;
      const lock = new EventTarget();
      lock.release = () => {
        if (!lock.released) window.locks.held -= 1;
        lock.released = true;
        lock.dispatchEvent(new Event("release"));
        return Promise.resolve();
      };
      window.locks.last = lock;
      return Promise.resolve(lock);
    },
  };
  Object.defineProperty(navigator, "wakeLock", { value: wakeLock, configurable: true });
});

export const locks = (page) => page.evaluate(() => ({ asked: window.locks.asked, held: window.locks.held }));

/** Away and back again: a phone that is put in a pocket. A browser lets go of the lock meanwhile. */
export const putAway = (page) => page.evaluate(() => {
  Object.defineProperty(document, "hidden", { value: true, configurable: true });
  if (window.locks && window.locks.last) window.locks.last.release();
  document.dispatchEvent(new Event("visibilitychange"));
});

export const takeOut = (page) => page.evaluate(() => {
  Object.defineProperty(document, "hidden", { value: false, configurable: true });
  document.dispatchEvent(new Event("visibilitychange"));
});
