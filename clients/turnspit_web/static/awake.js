// Keeps the screen on while a recipe is open, and says truly whether it does. Without the API nothing is promised.
const place = document.querySelector(".awake");
const button = document.querySelector("#awake");
const said = place.querySelector("[role=status]");
let wanted = true;
let lock = null;

function tell(state) {
  said.textContent = said.dataset[state];
  button.textContent = state === "on" ? button.dataset.end : button.dataset.ask;
  button.setAttribute("aria-pressed", String(state === "on"));
}

async function hold() {
  if (lock || !wanted || document.visibilityState !== "visible") return;
  try {
    const held = await navigator.wakeLock.request("screen");
    lock = held;
    held.addEventListener("release", () => {
      if (lock !== held) return;
      lock = null;
      tell("off");
    });
    tell("on");
  } catch {
    tell("refused");  // a low battery, or a setting of the phone
  }
}

async function toggle() {
  wanted = !lock;
  if (wanted) return hold();
  const held = lock;
  lock = null;
  await held.release();
  tell("off");
}

place.hidden = false;
if ("wakeLock" in navigator) {
  button.addEventListener("click", toggle);
  document.addEventListener("visibilitychange", hold);
  tell("off");
  await hold();
} else {
  button.hidden = true;
  tell("missing");
}
