// Who measures is asked once on each phone.
const KEY = "who";
for (const who of document.querySelectorAll("input[name=who]")) {
  who.value ||= localStorage.getItem(KEY) ?? "";
  who.form.addEventListener("submit", () => localStorage.setItem(KEY, who.value.trim()));
}
