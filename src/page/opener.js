// The first script of the page, which any browser understands: says what this one lacks, or unpacks the others and lets them run. Until
// they have taken over, and where they cannot, what the program wrote in plain words stays in sight.
(function () {
  var line = document.getElementById("opening");
  var planned = "Below are the amounts of the plan, worked out when this page was made.";

  function say(words) {
    line.textContent = words;
  }

  // The smallest module that catches what it throws.
  function catches() {
    return WebAssembly.validate(new Uint8Array([0, 97, 115, 109, 1, 0, 0, 0, 1, 4, 1, 96, 0, 0, 3, 2, 1, 0, 13, 3, 1, 0, 0, 10, 8, 1, 6, 0, 6, 64, 25, 11, 11]));
  }

  function lacking() {
    if (typeof WebAssembly !== "object" || !WebAssembly || typeof Uint8Array !== "function") return "WebAssembly, which may be switched off";
    if (!catches()) return "WebAssembly with exceptions";
    if (typeof DecompressionStream !== "function") return "the means to unpack it";
    if (typeof Object.hasOwn !== "function" || !Array.prototype.findLast || !Array.prototype.at || !String.prototype.replaceAll) return "newer JavaScript";
    return "";
  }

  function fail(why) {
    say(planned + " That can be read here, but nothing more can be worked out: " + why);
  }

  // As `fail`, for the scripts.
  window.openingFailed = fail;

  function run(text) {
    var script = document.createElement("script");
    script.textContent = text;
    document.body.appendChild(script);
  }

  function unpack() {
    unpackedOf(document.getElementById("packed-scripts").textContent, "gzip").text().then(run).then(null, function (mishap) {
      fail(mishap.message);
    });
  }

  function begun() {
    return document.documentElement.hasAttribute("data-begun");
  }

  var lacks = lacking();
  if (lacks) {
    fail("this browser lacks " + lacks + ". A browser of 2023 or newer does it.");
    return;
  }
  say("Opening. " + planned);
  window.addEventListener("error", function (event) {
    if (!begun()) fail(event.message || "a script failed.");
  });
  // Called as soon as the packed scripts are there: the engine, ten times as long, comes after them.
  window.unpackScripts = unpack;
})();
