// Copies a text. Without this the text can be selected and copied by hand.
"use strict";

for (const button of document.querySelectorAll("button.copy")) {
    const text = document.getElementById(button.dataset.copies);
    button.hidden = false;
    text.addEventListener("focus", () => text.select());
    button.addEventListener("click", async () => {
        text.focus();
        try {
            await navigator.clipboard.writeText(text.value);
        } catch {
            document.execCommand("copy");
        }
        document.getElementById("copied").textContent = "The text is copied.";
    });
}
