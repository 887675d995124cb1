"use strict";

// Keeps the page of its folder for where there is no signal. It is another whenever anything of the page is another (`version`): then the
// new one is fetched whole beside the old one, and takes its place once all of it is there.

const version = "@VERSION@";
const files = ["./", @FILES@];
const ofThisFolder = `bank page of ${self.registration.scope}, `;
const shelf = ofThisFolder + version;

self.addEventListener("install", (event) => event.waitUntil(keepAll()));
self.addEventListener("activate", (event) => event.waitUntil(takeOver()));

self.addEventListener("fetch", (event) => {
  const file = fileOf(event.request);
  if (file) event.respondWith(answer(file, event.request));
});

async function keepAll() {
  const cache = await caches.open(shelf);
  try {
    await Promise.all(files.map((file) => keep(cache, file)));
  } catch (mishap) {
    await caches.delete(shelf);
    throw mishap;
  }
  await self.skipWaiting();
}

// Asked of the host itself, whatever a cache on the way holds. A reply that went round a corner is put down as a plain one, for a browser
// takes no other for a page.
async function keep(cache, file) {
  const reply = await fetch(file, { cache: "reload" });
  if (!reply.ok) throw new Error(`${file}: ${reply.status}`);
  const body = await reply.blob();
  if (file === "./" && !(await body.text()).includes(`content="${version}"`)) throw new Error("the host still gives another page");
  await cache.put(file, new Response(body, { headers: { "Content-Type": reply.headers.get("Content-Type") || body.type } }));
}

async function takeOver() {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith(ofThisFolder) && name !== shelf).map((name) => caches.delete(name)));
  await self.clients.claim();
}

// Which of our files is asked for; empty where it is none of them.
function fileOf(request) {
  const path = new URL(request.url).pathname;
  const folder = new URL(self.registration.scope).pathname;
  if (request.method !== "GET" || !request.url.startsWith(self.registration.scope)) return "";
  const name = path.slice(folder.length);
  if (name === "" || name === "index.html") return "./";
  return files.includes(name) ? name : "";
}

async function answer(file, request) {
  const kept = await (await caches.open(shelf)).match(file);
  return kept || fetch(request);
}
