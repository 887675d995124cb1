"use strict";

// How the page looks: by the phone, for bright sun, for night. It is set on the root, for the style sheet.

const looks = { phone: "By the phone", sun: "Bright sun", night: "Night" };

function wearLook(look) {
  if (look === "phone") delete document.documentElement.dataset.look;
  else document.documentElement.dataset.look = look;
}

function lookField() {
  const field = stripField({
    label: "How the page looks", choices: Object.entries(looks).map(([value, text]) => ({ value, text })), value: document.documentElement.dataset.look || "phone",
    changed: () => {
      wearLook(field.text());
      bank.shared.look = field.text();
      keepNow();
    },
  });
  return field.node;
}
