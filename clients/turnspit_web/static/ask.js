// Asks without leaving the page. Without this script the same form and the same links do the same.
const form = document.querySelector("#ask");
const busy = document.querySelector("#busy");
let latest = 0;

function settleZone() {
  const zone = form.elements.timezone;
  zone.value ||= Intl.DateTimeFormat().resolvedOptions().timeZone || "";
}

function address(text) {
  const asked = new URLSearchParams(new FormData(form));
  asked.set("text", text);
  for (const [name, value] of [...asked]) if (value === "" && name !== "text") asked.delete(name);
  return `/?${asked}`;
}

async function load(url) {
  const mine = ++latest;
  busy.textContent = busy.dataset.text;
  try {
    const page = new DOMParser().parseFromString(await (await fetch(url)).text(), "text/html");
    if (mine !== latest) return;
    document.title = page.title;
    document.querySelector("#answer").replaceWith(page.querySelector("#answer"));
    document.querySelector(".asking").className = page.querySelector(".asking").className;
    const [label, input] = [form.querySelector("label"), form.elements.text];
    label.textContent = page.querySelector("#ask label").textContent;
    input.placeholder = page.querySelector("#text").placeholder;
    input.value = "";
    input.blur();
    form.elements.conversation.value = page.querySelector("#ask").elements.conversation.value;
    busy.textContent = "";
    document.querySelector("#headline")?.focus({ preventScroll: true });
    window.scrollTo(0, 0);
  } catch {
    if (mine === latest) busy.textContent = busy.dataset.trouble;
  }
}

function ask(text) {
  const url = address(text);
  history.pushState(null, "", url);
  return load(url);
}

form.addEventListener("submit", (event) => {
  event.preventDefault();
  ask(form.elements.text.value);
});
document.addEventListener("click", (event) => {
  const chip = event.target.closest(".chip");
  if (!chip || event.metaKey || event.ctrlKey) return;
  event.preventDefault();
  ask(chip.dataset.text);
});
window.addEventListener("popstate", () => load(location.href));
settleZone();
