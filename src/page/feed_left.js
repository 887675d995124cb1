"use strict";

// What is left, how they bite, and how the engine would spread it over the rest of the session.

function leftPart(session) {
    const kept = bank.kept.feed;
    const fields = make("div", { class: "rows" });
    const bites = stripField({
        label: "Bites", choices: ["steady", "slow", "none"].map((word) => ({ value: word, text: word })), value: kept.bites,
        changed: () => {
            kept.bites = bites.text();
            keepSoon();
        },
    });
    const box = answerBox({ fields: { "--bites": bites } });
    const ask = button("How to spread it", () => box.show(askEngine(leftQuestion(kept))), "main");
    let names = "";
    function fill() {
        const feeds = session.plan ? [...new Set(session.plan.feeds.map((feed) => feed.of))] : [];
        if (feeds.join("\n") === names) return;
        names = feeds.join("\n");
        fields.replaceChildren(...feeds.map((of) => leftField(kept, of).node));
    }
    return { node: make("div", { class: "part" }, make("h3", {}, "What is left?"), make("div", { class: "question" }, fields, bites.node, ask), box.node), fill };
}

function leftField(kept, of) {
    const field = amountField({
        label: of, text: Object.hasOwn(kept.left, of) ? kept.left[of] : "", unit: "l", step: 0.25, fresh: "1 l",
        changed: () => {
            kept.left = { ...kept.left, [of]: field.text() };
            keepSoon();
        },
    });
    return field;
}

function leftQuestion(kept) {
    const left = Object.entries(kept.left).filter(([, amount]) => amount).map(([of, amount]) => `${amount} ${of}`);
    return {
        ask: "plan", words: [bank.strategy.name],
        flags: flagsOf({ "--start": clockOf(kept.start), "--now": clockOf(Date.now()), "--left": left, "--bites": kept.bites, "--people": kept.people }),
    };
}
