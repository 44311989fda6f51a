// Without this the browser's own menu prints.
"use strict";

for (const button of document.querySelectorAll("button.print")) {
    button.hidden = false;
    button.addEventListener("click", () => window.print());
}
