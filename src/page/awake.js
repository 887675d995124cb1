"use strict";

// Keeps the screen awake while something runs, where the browser can. A browser lets go whenever the page is out of sight, and is asked
// again when it comes back; one that cannot, or will not, says nothing.

const awake = { wanted: false, lock: null, asking: false };

function keepAwake(wanted) {
  if (wanted === awake.wanted) return;
  awake.wanted = wanted;
  if (wanted) askAwake();
  else letSleep();
}

async function askAwake() {
  if (awake.lock || awake.asking || document.hidden || !navigator.wakeLock) return;
  awake.asking = true;
  try {
    const lock = await navigator.wakeLock.request("screen");
    awake.lock = lock;
    lock.addEventListener("release", () => { if (awake.lock === lock) awake.lock = null; });
    if (!awake.wanted) letSleep();
  } catch {
    awake.lock = null;
  }
  awake.asking = false;
}

function letSleep() {
  const lock = awake.lock;
  awake.lock = null;
  if (lock) lock.release().catch(() => {});
}

document.addEventListener("visibilitychange", () => { if (awake.wanted) askAwake(); });
