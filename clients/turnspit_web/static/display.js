// The kitchen display: which line of the timetable leads now, and how long until it does. Nobody touches it.
import { clauses, clock, leading, offsetMinutes, span, weekday } from "./timeline.js";

const REFRESH_S = 20;
const LARGEST_VW = 8.8;
const SMALLEST_VW = 4.4;

const texts = document.body.dataset;
const at = (selector) => document.querySelector(selector);
let plan = null;

function timed(given) {
  const tasks = given.tasks.map((task) => ({ ...task, startMs: Date.parse(task.start), endMs: Date.parse(task.end) }));
  return { ...given, tasks: tasks.sort((a, b) => a.startMs - b.startMs), offset: offsetMinutes(given.serve_at) };
}

function show() {
  const ms = Date.now();
  const offset = plan?.offset ?? -new Date(ms).getTimezoneOffset();
  const hour = (when) => clock(when, offset, texts.clock);
  const dated = (when) => weekday(when, ms, offset, document.documentElement.lang) + hour(when);
  set("#clock", hour(ms));
  set("#serve", plan ? `${texts.dinner} ${dated(Date.parse(plan.serve_at))}` : "");
  const { lead, runs, waiting, after } = plan ? leading(plan.tasks, ms) : { after: [] };
  const inOven = showProbe(ms);
  set("#waiting", waiting ? `${texts.now}: ${waiting.title}` : "");
  showAfter(after.slice(0, inOven || waiting ? 1 : 2), dated);
  if (!lead) return say({ title: plan ? texts.done : texts.empty }, "", ["", ""]);
  const left = (lead.startMs - ms) / 1000;
  return runs
    ? say(lead, texts.now, [texts.until, dated(lead.endMs)])
    : say(lead, dated(lead.startMs), [texts.in, span(left, texts.days)]);
}

// The line itself, in the largest letters in which it fits.
function say(task, when, [word, figure]) {
  set("#at", when);
  set("#word", word);
  set("#figure", figure);
  const { head, rest } = clauses(task.title);
  const main = at("main");
  const shown = `${head}|${rest}|${main.clientHeight}|${main.clientWidth}`;
  if (main.dataset.shown === shown) return;
  main.dataset.shown = shown;
  set("h1", head);
  set("#rest", rest);
  for (let size = LARGEST_VW; size >= SMALLEST_VW; size -= 0.4) {
    at("h1").style.fontSize = `${size}vw`;
    if (main.scrollHeight <= main.clientHeight) return;
  }
  set("#rest", "");
}

// Unchanged text is left alone, so that it is not read out each second.
function set(selector, text) {
  if (at(selector).textContent !== text) at(selector).textContent = text;
}

function showAfter(tasks, dated) {
  const lines = tasks.map((task) => {
    const [line, when, title] = ["li", "time", "span"].map((name) => document.createElement(name));
    [when.textContent, title.textContent] = [dated(task.startMs), task.title];
    line.append(when, title);
    return line;
  });
  at("#after").replaceChildren(...lines);
}

// While the roast is in the oven the screen says where to probe: the places that were computed for this roast.
function showProbe(ms) {
  const out = plan?.tasks.find((task) => task.id === "check")?.endMs;
  const inOven = Boolean(out && plan.oven_in_at && Date.parse(plan.oven_in_at) <= ms && ms < out);
  at("#probe").hidden = !inOven;
  const computed = plan?.curve[0] ?? {};
  const places = "stuffing_c" in computed ? "probeStuffed" : "breast_c" in computed ? "probeBird" : "probeMeat";
  set("#probe", texts[places]);
  return inOven;
}

async function refresh() {
  try {
    const response = await fetch(texts.source, { headers: { accept: "application/json" } });
    if (response.ok) plan = timed(await response.json());
    else if (response.status === 404) plan = null;
  } catch {
    // The kitchen goes on with the plan it has; the next refresh tries again.
  }
  show();
}

await refresh();
setInterval(show, 1000);
setInterval(refresh, REFRESH_S * 1000);
