"use strict";

// Messages in a bar above the navigation: the newest in sight, announced, and gone after a while unless it stays. One that stays
// comes back when a newer one has gone.

const messages = [];
const messageShownFor = 8000;  // ms

// `action` is {text, act}. What comes back takes the message away.
function notice(text, { stays = false, action = null } = {}) {
  for (const same of messages.filter((one) => one.text === text)) takeMessage(same);
  const message = { text, stays, action, timer: 0 };
  if (!stays) for (const older of messages.filter((one) => !one.stays)) takeMessage(older);
  messages.push(message);
  if (!stays) waitForMessage(message);
  showMessages();
  return () => takeMessage(message);
}

// What nobody could see, for the screen was dark, has its time from when somebody can.
function waitForMessage(message) {
  message.timer = setTimeout(() => {
    if (document.hidden) document.addEventListener("visibilitychange", () => waitForMessage(message), { once: true });
    else takeMessage(message);
  }, messageShownFor);
}

function takeMessage(message) {
  clearTimeout(message.timer);
  const at = messages.indexOf(message);
  if (at < 0) return;
  messages.splice(at, 1);
  showMessages();
}

function showMessages() {
  const bar = byId("notice");
  const message = messages[messages.length - 1];
  bar.hidden = !message;
  if (!message) {
    bar.replaceChildren();
    return;
  }
  const act = message.action && button(message.action.text, () => {
    takeMessage(message);
    message.action.act();
  });
  const close = make("button", { type: "button", class: "quiet close", "aria-label": "Close this message", click: () => takeMessage(message) }, "\u00d7");
  bar.replaceChildren(make("p", {}, message.text), make("div", { class: "ways-out" }, act, close));
}
