// Bytes written as letters: 13 bits in two of the 91 that neither HTML nor the program's own text minds, the lowest bits first; what is left,
// six bits or fewer, in one. In JavaScript as old as any browser that might open a page.
function bytesOfLetters(text) {
  var values = new Uint8Array(128);
  var letters = 0, code, at, held = 0, bits = 0, to = 0;
  var bytes = new Uint8Array(Math.floor((Math.floor(text.length / 2) * 13 + (text.length % 2) * 6) / 8));
  for (code = 33; code < 127; code += 1) {
    if (code !== 60 && code !== 64 && code !== 92) values[code] = letters++;  // < @ \
  }
  for (at = 0; at < text.length; at += 2) {
    if (at + 1 < text.length) {
      held |= (values[text.charCodeAt(at)] + letters * values[text.charCodeAt(at + 1)]) << bits;
      bits += 13;
    } else {
      held |= values[text.charCodeAt(at)] << bits;
      bits += 6;
    }
    for (; bits >= 8; bits -= 8) {
      bytes[to++] = held & 255;
      held >>>= 8;
    }
  }
  return bytes;
}
