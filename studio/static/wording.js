// The editor of a wording: fields put in by a click, and a preview as she types. Without this file both work by buttons.
"use strict";
{
  const form = document.getElementById("editor");
  const preview = document.getElementById("preview");
  const list = document.getElementById("puts");
  let writing = form.elements.added || form.elements.body;
  let asked = null;
  let waits = 0;

  const look = async () => {
    asked?.abort();
    asked = new AbortController();
    try {
      const answer = await fetch(form.dataset.preview, { method: "POST", body: new FormData(form), signal: asked.signal });
      if (!answer.ok || answer.redirected) return;
      preview.innerHTML = await answer.text();
      takeUp();
    } catch (error) {
      if (error.name !== "AbortError") throw error;
    }
  };
  // What is wrong stands once: where the save was refused, on top of the page.
  const takeUp = () => {
    const refused = document.getElementById("refused");
    const found = preview.querySelector(".wrong");
    if (!refused) return;
    refused.setAttribute("role", "status");
    if (found) refused.replaceChildren(...found.childNodes);
    else refused.remove();
    found?.remove();
  };
  const soon = () => {
    clearTimeout(waits);
    waits = setTimeout(look, 400);
  };

  const group = (name) => {
    const chips = document.createElement("div");
    chips.className = "chips";
    chips.setAttribute("role", "group");
    chips.setAttribute("aria-label", name);
    return chips;
  };
  const [often, seldom] = [group(list.dataset.name), group(list.dataset.more)];
  for (const code of list.querySelectorAll("[data-put]")) {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = code.dataset.name;
    button.title = `${code.textContent} ${code.closest("div").querySelector("dd").textContent.trim().replace(/\s+/g, " ")}`;
    button.addEventListener("click", () => {
      writing.focus();
      writing.setRangeText(code.dataset.put, writing.selectionStart, writing.selectionEnd, "end");
      writing.dispatchEvent(new Event("input", { bubbles: true }));
    });
    (code.dataset.often ? often : seldom).append(button);
  }
  const more = document.createElement("details");
  more.className = "more";
  more.append(Object.assign(document.createElement("summary"), { textContent: list.dataset.more }), seldom);
  list.before(...(often.childElementCount ? [often] : []), more);

  form.addEventListener("focusin", (event) => {
    if (event.target.matches("textarea, [name=subject]")) writing = event.target;
  });
  // The place of a problem, selected in what was typed.
  document.addEventListener("click", (event) => {
    const { line, column, length } = event.target.closest(".wrong a")?.dataset ?? {};
    const field = line && document.querySelector(event.target.closest("a").getAttribute("href"));
    if (!field) return;
    event.preventDefault();
    const start = field.value.split("\n").slice(0, line - 1).reduce((sum, one) => sum + one.length + 1, 0) + Number(column) - 1;
    field.focus();
    field.setSelectionRange(start, start + Number(length));
  });
  // Whoever leaves what is typed and not saved is asked by the browser, in its own words.
  let sending = false;
  const isChanged = (one) =>
    one.matches("textarea, input:not([type=hidden], [type=search])") &&
    (one.type === "checkbox" ? one.checked !== one.defaultChecked : one.value !== one.defaultValue);
  form.addEventListener("submit", () => (sending = true));
  addEventListener("pageshow", () => (sending = false));
  addEventListener("beforeunload", (event) => {
    if (!sending && (form.dataset.unsaved || [...form.elements].some(isChanged))) event.preventDefault();
  });

  // A browser that comes back to the page keeps what was typed, and shows the preview of before.
  addEventListener("pageshow", look);
  form.addEventListener("input", (event) => {
    if (event.target.matches("textarea, [name=subject], [name=who]")) soon();
  });
}
