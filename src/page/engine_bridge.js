"use strict";
/* The engine, WebAssembly that wants next to nothing of its surroundings: of WASI (preview 1), an environment, which is empty, and
   an end, which never comes. The page runs this script, and makes a worker of the same text. */

function bytesOf(base64) {
  if (Uint8Array.fromBase64) return Uint8Array.fromBase64(base64);
  const letters = atob(base64);
  const bytes = new Uint8Array(letters.length);
  for (let at = 0; at < letters.length; at += 1) bytes[at] = letters.charCodeAt(at);
  return bytes;
}

/* The engine as the page carries it, but for the base64: gzip. Compiled. */
async function engineModule(packed) {
  if (!globalThis.DecompressionStream) throw new Error("This browser cannot unpack the page. Chrome from 80, Firefox from 113 and Safari from 16.4 can.");
  if (!globalThis.WebAssembly) throw new Error("This browser has WebAssembly switched off, which the page reckons with.");
  const bytes = new Response(packed).body.pipeThrough(new DecompressionStream("gzip"));
  return WebAssembly.compile(await new Response(bytes).arrayBuffer());
}

function surroundings(memory) {
  const noEnvironment = (...places) => {
    for (const at of places) new DataView(memory().buffer).setUint32(at, 0, true);
    return 0;
  };
  const end = (code) => {
    throw new Error(`the engine ended with ${code}`);
  };
  return {
    env: { emscripten_notify_memory_growth: () => {} },
    wasi_snapshot_preview1: { environ_sizes_get: noEnvironment, environ_get: () => 0, proc_exit: end },
  };
}

/* Starts an engine. `ask` takes a request and gives the reply, both plain objects. All that an engine has been told is in its
   memory, whose `state` (as far as it is not zero) makes another engine of the same module know as much. */
async function startEngine(module, state = null) {
  const { exports } = await WebAssembly.instantiate(module, surroundings(() => exports.memory));
  const encoder = new TextEncoder(), decoder = new TextDecoder();
  const bytes = () => new Uint8Array(exports.memory.buffer);
  if (state) {
    const page = 65536;
    exports.memory.grow((state.size - bytes().length) / page);
    bytes().set(new Uint8Array(state.used));
  } else {
    exports._initialize();
  }
  return {
    ask(request) {
      const text = encoder.encode(JSON.stringify(request));
      const at = exports.malloc(text.length + 1);
      bytes().set(text, at);
      bytes()[at + text.length] = 0;
      const reply = exports.baitwright_ask(at);
      exports.free(at);
      const memory = bytes();
      return JSON.parse(decoder.decode(memory.subarray(reply, memory.indexOf(0, reply))));
    },
    state() {
      const memory = bytes();
      let end = memory.length;
      while (end > 0 && memory[end - 1] === 0) end -= 1;
      return { size: memory.length, used: memory.slice(0, end).buffer };
    },
  };
}

/* In a worker: opens an engine while the screen stays free. Of each request it is sent, what the engine then knows is sent back, or
   null where that fails. Last, questions are tried, so that the browser has compiled what they take before a person asks them. */
function workAside() {
  let module = null, engine = null;
  async function work({ packed, request, questions = [] }) {
    if (packed) {
      module = await engineModule(packed);
      engine = await startEngine(module);
    }
    if (request) {
      const contents = engine.ask(request);
      const state = engine.state();
      globalThis.postMessage({ contents, state, module }, [state.used]);
    }
    for (const question of questions) engine.ask(question);
    if (questions.length) globalThis.close();
  }
  globalThis.onmessage = ({ data }) => work(data).catch(() => globalThis.postMessage(null));
}
