"use strict";

// Where the page is served from a folder of its own (`page --site`): kept for where there is no signal, and how it goes on the home screen.
// A page that is a single file has no manifest, and does none of it.

const homeScreenSteps = [
  ["On an iPhone", "open the address in its own browser, tap the share sign (a square with an arrow up), then Add to Home Screen. The one on the home screen keeps notes of its own: use that one from then on."],
  ["On an Android phone", "open the address, tap the menu (three dots), then Add to home screen, or Install."],
];

let askedToInstall = null;  // the browser's own offer to put it there, where it makes one

function isOfSite() {
  return Boolean(document.querySelector("link[rel=manifest]")) && "serviceWorker" in navigator && window.isSecureContext;
}

function isOnHomeScreen() {
  return matchMedia("(display-mode: standalone)").matches || navigator.standalone === true;
}

// For More; nothing where it is on the home screen already, or can never be.
function homeScreenPart() {
  if (!isOfSite() || isOnHomeScreen()) return null;
  const steps = homeScreenSteps.map(([phone, what]) => make("p", { class: "line" }, make("b", {}, `${phone}:`), " ", make("span", {}, what)));
  const offer = askedToInstall && button("Put it on the home screen", () => askedToInstall.prompt());
  return make("div", { class: "part home-screen" }, make("h3", {}, "On the home screen"),
    make("p", { class: "hint" }, "It opens from there without a signal, like any other page on the phone."), offer, ...steps);
}

// Kept at the first visit; the page made anew is fetched while the old one is in use, and shown when the person says so.
async function keepForNoSignal() {
  const { serviceWorker } = navigator;
  let isKept = Boolean(serviceWorker.controller);
  serviceWorker.addEventListener("controllerchange", () => {
    if (isKept) notice("This page was made anew.", { stays: true, action: { text: "Show the new one", act: () => window.location.reload() } });
    else notice("From now on this page opens without a signal, too.");
    isKept = true;
  });
  const registered = await serviceWorker.register("service-worker.js", { updateViaCache: "none" });
  document.addEventListener("visibilitychange", () => {
    if (!document.hidden) registered.update().catch(() => {});  // there may be no signal now
  });
}

// What a browser refuses here, such as in a private window, is no loss but that of the signal.
function watchSite() {
  if (!isOfSite()) return;
  window.addEventListener("beforeinstallprompt", (event) => {
    event.preventDefault();
    askedToInstall = event;
  });
  const begin = () => keepForNoSignal().catch(() => {});
  if (document.readyState === "complete") begin();
  else window.addEventListener("load", begin);
}

watchSite();
