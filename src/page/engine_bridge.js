"use strict";
/* Opens the engine: bytes of WebAssembly in, a function out that takes a request and gives the reply, both plain objects.
   `makeEngine` is Emscripten's loader, which stands in front of this file. */
async function openEngine(wasmBytes) {
  const engine = await makeEngine({ wasmBinary: wasmBytes });
  const encoder = new TextEncoder(), decoder = new TextDecoder();
  return function ask(request) {
    const text = encoder.encode(JSON.stringify(request));
    const at = engine._malloc(text.length + 1);
    engine.HEAPU8.set(text, at);
    engine.HEAPU8[at + text.length] = 0;
    const reply = engine._baitwright_ask(at);
    engine._free(at);
    const memory = engine.HEAPU8;
    return JSON.parse(decoder.decode(memory.subarray(reply, memory.indexOf(0, reply))));
  };
}
