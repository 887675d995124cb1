"use strict";

// A question put to the engine, and its answer on the screen.

// Flags without a value are left out, so that the engine's own defaults hold.
function flagsOf(values) {
    const flags = {};
    for (const [flag, value] of Object.entries(values)) {
        const texts = (Array.isArray(value) ? value : [value]).filter((text) => text !== "" && text !== null && text !== undefined);
        if (texts.length) flags[flag] = texts.map(String);
    }
    return flags;
}

function askEngine(question) {
    try {
        return bank.ask(question);
    } catch (mishap) {
        return { errors: [{ code: "engine", message: `this could not be worked out (${mishap.message})`, hint: "close the page and open it again" }] };
    }
}

// "--depth: no number" belongs to the field that gave --depth, and is shown there without the flag.
function placeFaults(errors, fields) {
    for (const field of new Set(Object.values(fields))) field.fault(null);
    const homeless = [];
    for (const error of errors) {
        const found = /^(--[a-z-]+):? */.exec(error.message);
        const field = found && fields[found[1]];
        if (field) field.fault({ message: error.message.slice(found[0].length), hint: error.hint });
        else homeless.push(error);
    }
    return homeless;
}

// The last good answer stays, greyed, while the question has faults.
function answerBox({ fields = {}, first = "" } = {}) {
    const faults = make("div", { class: "faults", hidden: true });
    const told = toldView(first);
    const node = make("div", { class: "answer" }, faults, told.node);
    function show(reply) {
        const homeless = placeFaults(reply.errors || [], fields);
        faults.hidden = !homeless.length;
        faults.replaceChildren(...homeless.map((error) => make("p", { class: "fault" }, error.hint ? `${error.message}. ${error.hint}` : error.message)));
        node.classList.toggle("stale", Boolean(reply.errors));
        if (reply.errors) {
            announce(reply.errors[0].message);
            return false;
        }
        told.tell(reply.told);
        announce(spokenOf(reply.told));
        return true;
    }
    function clear() {
        placeFaults([], fields);
        faults.hidden = true;
        node.classList.remove("stale");
        told.tell([]);
    }
    return { node, show, clear };
}
