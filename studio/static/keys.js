// "/" leads to the search for a client from every page, unless one is writing. Without this all works as well.
document.addEventListener("keydown", (event) => {
  if (event.key !== "/" || event.ctrlKey || event.altKey || event.metaKey) return;
  if (event.target.closest("input:not([type=checkbox], [type=radio]), textarea, select, [contenteditable]")) return;
  const field = [...document.querySelectorAll("main input[type=search], .find input")].find((one) => one.checkVisibility());
  const more = document.querySelector(".bar details");
  event.preventDefault();
  if (field) {
    field.focus();
    field.select();
  } else if (more) {
    more.open = true;
    more.querySelector("input[type=search]")?.focus();
  }
});
