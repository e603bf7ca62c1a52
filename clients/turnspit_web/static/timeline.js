// Where a moment lies in a timetable, and how it is told. Plain functions; times in milliseconds since 1970.

const SOON_S = 600;
const DAY_MS = 86400000;

// Clock times are told in the plan's own offset: the screen on the wall may be set to any zone.
export function offsetMinutes(iso) {
  const found = /([+-])(\d\d):(\d\d)$/.exec(iso);
  return found ? (found[1] === "-" ? -1 : 1) * (60 * Number(found[2]) + Number(found[3])) : 0;
}

export function clock(ms, offset, habit) {
  const local = new Date(ms + offset * 60000);
  const hours = local.getUTCHours();
  const minutes = String(local.getUTCMinutes()).padStart(2, "0");
  if (habit === "24h") return `${String(hours).padStart(2, "0")}:${minutes}`;
  return `${hours % 12 || 12}:${minutes} ${hours < 12 ? "am" : "pm"}`;
}

// "Thu " where that is another day than now, "" today.
export function weekday(ms, nowMs, offset, language) {
  const day = (when) => Math.floor((when + offset * 60000) / DAY_MS);
  if (day(ms) === day(nowMs)) return "";
  const name = new Intl.DateTimeFormat(language, { weekday: "short", timeZone: "UTC" });
  return `${name.format(new Date(ms + offset * 60000))} `;
}

// How long: to the second in the last ten minutes, then to the minute, from two days on in days.
export function span(seconds, days) {
  const whole = Math.max(0, Math.floor(seconds));
  const minutes = Math.ceil(whole / 60);
  if (whole < SOON_S) return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
  if (minutes < 60) return `${minutes} min`;
  if (minutes < 2880) return `${Math.floor(minutes / 60)} h ${String(minutes % 60).padStart(2, "0")}`;
  return `${Math.round(minutes / 1440)} ${days}`;
}

// The line that leads: what hands are busy with, else what comes next, with what takes its time beside it.
export function leading(tasks, ms) {
  const running = tasks.filter((task) => task.startMs <= ms && ms < task.endMs);
  const next = tasks.filter((task) => task.startMs > ms);
  const busy = running.filter((task) => task.hands).at(-1);
  const waiting = running.filter((task) => !task.hands).at(-1);
  if (busy) return { lead: busy, runs: true, after: next };
  if (next.length > 0) return { lead: next[0], runs: false, waiting, after: next.slice(1) };
  return { lead: waiting, runs: true, after: [] };
}

// "Check from here on; done at 165 °F" leads with its first clause, the rest stands below it.
export function clauses(title) {
  const [, head, rest] = /^(.{4,}?)[:;] (.*)$/.exec(title) ?? [null, title, ""];
  return { head, rest };
}
