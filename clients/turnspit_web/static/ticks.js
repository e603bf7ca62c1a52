// What was ticked is still ticked when a phone loads the page again. Without this script ticks last as long as the page.
const KEY = `ticked ${location.pathname}${location.search}`;
const boxes = [...document.querySelectorAll(".ticks input[type=checkbox]")];
const name = (box) => box.closest("label").textContent.replace(/\s+/g, " ").trim();
const kept = new Set(JSON.parse(localStorage.getItem(KEY) ?? "[]"));

for (const box of boxes) {
  box.checked ||= kept.has(name(box));
  box.addEventListener("change", () => {
    const ticked = boxes.filter((one) => one.checked).map(name);
    if (ticked.length > 0) localStorage.setItem(KEY, JSON.stringify(ticked));
    else localStorage.removeItem(KEY);
  });
}
