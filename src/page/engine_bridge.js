/* The engine, WebAssembly that wants next to nothing of its surroundings: of WASI (preview 1), an environment, which is empty, and
   an end, which never comes. The page runs this script, and makes a worker of the same text. */

function unpackedOf(letters, format) {
  const packed = new ReadableStream({
    start(stream) {
      stream.enqueue(bytesOfLetters(letters));
      stream.close();
    },
  });
  return new Response(packed.pipeThrough(new DecompressionStream(format)));
}

/* The engine as the page carries it. Compiled. */
async function engineModule(letters) {
  return WebAssembly.compile(await unpackedOf(letters, "gzip").arrayBuffer());
}

/* The request that opens the engine on the library that the page carries, which is text all the way. */
async function openingText(request, letters) {
  const carried = await unpackedOf(letters, "deflate").text();
  return `${JSON.stringify(request).slice(0, -1)},${carried.slice(1)}`;
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

/* Starts an engine. `ask` takes a request, a plain object or its text, and gives the reply. All that an engine has been told is in
   its memory, whose `state` (as far as it is not zero) makes another engine of the same module know as much. */
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
      const text = encoder.encode(typeof request === "string" ? request : JSON.stringify(request));
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

/* What the first place asks when it opens. */
function firstQuestions({ mixes, strategies }, name) {
  const strategy = strategies.find((one) => one.name === name);
  const [mix] = strategy && strategy.mixes.length ? strategy.mixes : mixes.map(({ name }) => name);
  return [
    ...(strategy ? [{ ask: "plan", words: [strategy.name], give: ["json"] }] : []),
    ...(mix ? [{ ask: "mix", words: [mix], flags: { "--dry-mass": ["1 kg"], "--state": ["cupped"] }, give: ["told", "json"] }] : []),
  ];
}

/* In a worker: opens an engine while the screen stays free, and sends what it then knows, or null where that fails. What is asked first
   is tried before, and what is likely to come next when the page bids it, so that the browser has compiled what they take. */
function workAside() {
  let engine = null;
  async function open({ packed, carried, request, strategy }) {
    const [module, text] = await Promise.all([engineModule(packed), openingText(request, carried)]);
    engine = await startEngine(module);
    const contents = engine.ask(text);
    const state = engine.state();
    if (!contents.errors) firstQuestions(contents, strategy).forEach(engine.ask);
    globalThis.postMessage({ contents, state, module }, [state.used]);
  }
  function attempt(questions) {
    for (const question of questions) engine.ask(question);
    globalThis.close();
  }
  globalThis.onmessage = ({ data }) => {
    if (data.questions) attempt(data.questions);
    else open(data).catch(() => globalThis.postMessage(null));
  };
}
