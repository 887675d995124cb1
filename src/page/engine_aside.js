// Stands in the page as it is, behind the bridge: has the other scripts unpacked, and the engine opened aside, in a worker, while the file is
// still being read and the scripts come up.

const longestAside = 10000;  // ms; after that the page opens the engine by itself

// A worker out of the bridge's own text. `found` gives what its engine knows once it has been sent what stands in the page, or null.
function startAside(bridge) {
  let worker = null, give = () => {}, silence = 0;
  const found = new Promise((done) => { give = done; });
  function end() {
    clearTimeout(silence);
    if (worker) worker.terminate();
    worker = null;
    give(null);
  }
  try {
    const source = URL.createObjectURL(new Blob([bridge, "\nworkAside();"], { type: "text/javascript" }));
    worker = new Worker(source);
    worker.onmessage = ({ data }) => {
      URL.revokeObjectURL(source);
      clearTimeout(silence);
      if (data) give(data);
      else end();
    };
    worker.onmessageerror = end;
    worker.onerror = (event) => {
      event.preventDefault();
      end();
    };
  } catch {
    end();
  }
  function send(message) {
    if (!worker) return;
    worker.postMessage(message);
    silence = setTimeout(end, longestAside);
  }
  return { found, send, attempt: (questions) => worker && worker.postMessage({ questions }) };
}

function textOfElement(id) {
  return document.getElementById(id).textContent;
}

// The day where the phone is, as YYYY-MM-DD.
function dateOf(moment) {
  const date = new Date(moment), digits = (number, many) => String(number).padStart(many, "0");
  return `${digits(date.getFullYear(), 4)}-${digits(date.getMonth() + 1, 2)}-${digits(date.getDate(), 2)}`;
}

function openRequest({ currency, units, made_on, have }) {
  return { ask: "open", currency, units: units || "", today: dateOf(Date.now()), made_on, have: have || [] };
}

// What the worker is sent as it is, and the page reads only where the worker failed.
function carriedByPage() {
  const data = JSON.parse(textOfElement("bank-data"));
  return { packed: textOfElement("packed-engine"), carried: textOfElement("packed-library"), request: openRequest(data), strategy: data.strategies[0] };
}

let engineAside = null;
if (window.unpackScripts) {
  window.unpackScripts();
  const text = document.currentScript.textContent;
  engineAside = startAside(text.slice(0, text.indexOf("/* page")));
  document.addEventListener("DOMContentLoaded", () => engineAside.send(carriedByPage()));
}
