// The page works without this. It only saves a little time.
"use strict";

// a form that must be put right: go to what is said about it
const complaints = document.getElementById("complaints");
if (complaints) {
    complaints.focus();
}

// files can be dropped anywhere on their field
for (const field of document.querySelectorAll(".drop")) {
    const input = field.querySelector("input[type=file]");
    field.addEventListener("dragover", event => {
        event.preventDefault();
        field.classList.add("over");
    });
    field.addEventListener("dragleave", () => field.classList.remove("over"));
    field.addEventListener("drop", event => {
        event.preventDefault();
        field.classList.remove("over");
        if (event.dataTransfer.files.length > 0) {
            input.files = event.dataTransfer.files;
            input.dispatchEvent(new Event("change", { bubbles: true }));
        }
    });
}

// a form is sent once, however often its button is pressed
for (const form of document.querySelectorAll("form[method=post]")) {
    form.addEventListener("submit", event => {
        if (form.dataset.sent) {
            event.preventDefault();
        }
        form.dataset.sent = "yes";
    });
}

// coming back with the browser's own button: forms may be sent again
window.addEventListener("pageshow", () => {
    for (const form of document.querySelectorAll("form[data-sent]")) {
        delete form.dataset.sent;
    }
});

// subjects that the words of a day suggest, offered while one types; none is ticked by itself
const offers = document.getElementById("offers");
const did = document.getElementById("did");
if (offers && did) {
    const boxes = () => document.querySelectorAll("input[name=subjects]");
    let waiting;
    let asked = 0;
    did.addEventListener("input", () => {
        clearTimeout(waiting);
        waiting = setTimeout(async () => {
            const query = new URLSearchParams({ did: did.value });
            for (const subject of new Set([...boxes()].filter(box => box.checked).map(box => box.value))) {
                query.append("subjects", subject);
            }
            const mine = ++asked;
            const answer = await fetch(offers.dataset.from + "?" + query, { headers: { Accept: "text/html" } });
            const words = await answer.text();
            if (answer.ok && mine === asked) {
                offers.innerHTML = words;
            }
        }, 250);
    });
    // a subject that is offered stands in the list of all subjects too: both say the same
    did.form.addEventListener("change", event => {
        if (event.target.name === "subjects") {
            for (const box of boxes()) {
                if (box.value === event.target.value) {
                    box.checked = event.target.checked;
                }
            }
        }
    });
    for (const hint of document.querySelectorAll(".without-script")) {
        hint.hidden = true;
    }
}
